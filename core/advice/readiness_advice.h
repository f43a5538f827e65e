#pragma once

#include "core/domain/card.h"
#include "core/domain/check_in.h"
#include "core/domain/lifter.h"
#include "core/domain/variation.h"
#include "core/loads/lift_estimate.h"
#include "core/safety/day_limits.h"
#include "core/strength/readiness_effect.h"

#include <QStringList>
#include <functional>
#include <map>
#include <optional>
#include <span>
#include <vector>

/// What a check-in changes about the day's plan.
namespace core {

/// Readiness before a session: the check-in of its day, else what stands with the session.
[[nodiscard]] std::optional<double> readinessOf(
    const LoggedSession &session, std::span<const CheckIn> checkIns);

/// The days on which the lifter said anything of it; a check-in goes before a session.
[[nodiscard]] std::map<QDate, double> readinessByDay(
    std::span<const LoggedSession> sessions, std::span<const CheckIn> checkIns);

/// Readings for strength::readinessEffects, of the sessions that have both a form and a readiness.
/// @param checkIns  of this lifter; others do no harm
[[nodiscard]] std::vector<strength::ReadinessReading> readinessReadings(
    const LiftEstimate &lift, std::span<const CheckIn> checkIns);

/// A card that asks for a sore area, and what spares it.
struct SoreSwap
{
    CardId card;
    VariationId spares; ///< works it less
    QString words;      ///< one sentence

    friend bool operator==(const SoreSwap &, const SoreSwap &) = default;
};

struct ReadinessAdvice
{
    /// On the day's loads; above 1 only as far as the data support it, at most kMostIncrease, and
    /// to be switched on by the coach.
    double loadFactor = 1.0;
    std::optional<strength::Interval> measured; ///< factor on the max; empty without a readiness
    bool stop = false;                          ///< pain: do not train what hurts; refer
    std::vector<SoreSwap> swaps;
    QStringList words; ///< most urgent first
};

/// Arithmetic, not medical advice. Lighter by the expected shift where its 90 % interval lies below
/// no change; heavier only by the end of the interval nearest to no change; else the loads
/// stay. Pain, whenever it was flagged, never yields anything heavier or maximal, and asks to stop
/// and refer; minors and novices get nothing heavier by readiness. A swap for a sore area works it
/// less, nothing that hurts, and has no higher ratio than what it stands in for.
/// @param checkIn  of the day; a blank one where nothing was said
/// @param limits   of the day
/// @param effect   null where nothing is known of the lifter
/// @param cards    of the day
/// @param isHeavier  whether the card would be loaded heavier in the variation; may be empty
[[nodiscard]] ReadinessAdvice adviseOnReadiness(const CheckIn &checkIn, const DayLimits &limits,
    const strength::ReadinessEffect *effect, const Lifter &lifter, std::span<const Card> cards,
    std::span<const Variation> catalogue,
    const std::function<bool(const Card &, VariationId)> &isHeavier = {});

/// Most that good readiness adds: less than a rep's worth (common practice, no source).
inline constexpr double kMostIncrease = 1.025;

} // namespace core
