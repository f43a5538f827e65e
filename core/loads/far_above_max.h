#pragma once

#include "core/loads/resolved_cards.h"

#include <QString>

namespace core {

/// A load above the heaviest that the lifter may be good for, times this, asks for a second look: a
/// slip of the keys more often than a record (common practice, no source).
inline constexpr double kFarAboveMax = 1.1;

/// More than this is unlikely of a lifter of whom no set is known: so many times the bodyweight,
/// fewer for minors and novices; for a bodyweight that is not known a light one stands in (common
/// practice, no source). It only makes the program ask.
[[nodiscard]] double likelyAtMostKg(const Lifter &lifter, Lift lift, QDate day);

/// Says that a load, planned or logged, is far above what the lifter is good for on the day: above
/// kFarAboveMax times the upper end of the 90 % interval for the reps. Empty where it is not.
/// Without an estimate that carries loads the heaviest ever done in the variation stands in for it,
/// and where there is none either, likelyAtMostKg().
/// @param reps      >= 1
/// @param estimate  of the variation's lift; null = none
[[nodiscard]] QString whyFarAboveMax(double loadKg, int reps, const Variation &variation, QDate day,
    const LiftEstimate *estimate, const Lifter &lifter);

/// The same of a set that was done; one of which no rep was made counts as a single.
[[nodiscard]] QString whyFarAboveMax(const SetEntry &set, const Variation &variation, QDate day,
    const LiftEstimate *estimate, const Lifter &lifter);

/// The same of the first line of a card that is; of a lead-rep set both of its parts count.
[[nodiscard]] QString whyFarAboveMax(const ResolvedCard &card, const PlanSources &sources);

} // namespace core
