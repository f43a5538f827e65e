#pragma once

#include "core/loads/resolve.h"
#include "core/safety/day_limits.h"

#include <optional>
#include <span>

/// How hard a set of a card is, as core/safety asks.
namespace core {

/// The variation that the last reps of a line are done in; null where the catalogue lacks it.
[[nodiscard]] const Variation *restVariation(
    const SetLine &line, const Variation &variation, std::span<const Variation> catalogue);

/// Load of the line as a share of today's max, rested, of the card's variation, and of a lead-rep
/// set of whichever of the two it is more of; empty without a load or an estimate. In millionths,
/// so that 95 kg of 100 is 95 % whatever its way through logarithms.
/// @param estimate  of the variation's lift; null = none
[[nodiscard]] std::optional<double> shareOfMax(const ResolvedLine &line, const Variation &variation,
    QDate day, const LiftEstimate *estimate, std::span<const Variation> catalogue);

/// A load as a share of today's max, rested, of the variation; empty without an estimate of it
/// that loads may go by.
[[nodiscard]] std::optional<double> shareOfMax(
    double loadKg, VariationId variation, QDate day, const LiftEstimate *estimate);

/// What the line asks for by its words alone.
[[nodiscard]] SetEffort askedEffort(
    const SetLine &line, const Variation &variation, std::span<const Variation> catalogue);

/// What it asks for and what is expected at its load: the harder of the two. A set for as many as
/// possible with a cap is as hard as its capped reps would be.
[[nodiscard]] SetEffort effortOf(const ResolvedLine &line, const Variation &variation, QDate day,
    const LiftEstimate *estimate, std::span<const Variation> catalogue);

/// The line without maximal work, for those who get none: an effort or a share that is maximal
/// comes down to kMostRpeWithoutMaximal or kMostShareWithoutMaximal, a set for as many as possible
/// gets a cap. Lines that are not maximal by their words stay.
[[nodiscard]] SetLine withoutMaximal(const SetLine &line);

/// Why the program writes `now` in place of `was`, in a sentence.
[[nodiscard]] QString withoutMaximalWords(
    const DayLimits &limits, const QString &now, const QString &was);

/// In place of a maximal share, percent (common practice, no source: about three reps at RPE 9).
inline constexpr double kMostShareWithoutMaximal = 85.0;

} // namespace core
