#pragma once

#include "core/domain/card.h"
#include "core/domain/check_in.h"
#include "core/domain/lifter.h"
#include "core/domain/variation.h"
#include "core/loads/lift_estimate.h"
#include "core/strength/readiness_effect.h"

#include <QStringList>
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
    VariationId spares;
    QString words; ///< one sentence

    friend bool operator==(const SoreSwap &, const SoreSwap &) = default;
};

struct ReadinessAdvice
{
    double loadFactor = 1.0; ///< on the day's loads; above 1 only as far as the data support it
    std::optional<strength::Interval> measured; ///< factor on the max; empty without a readiness
    bool mayGoMaximal = true; ///< false: no attempt at a max, whatever was planned
    bool stop = false;        ///< pain: do not train what hurts; refer
    std::vector<SoreSwap> swaps;
    QStringList words; ///< most urgent first
};

/// Arithmetic, not medical advice. Lighter by the expected shift where its 90 % interval lies below
/// no change; heavier only by the end of the interval nearest to no change; else the loads
/// stay. Pain never yields anything heavier or maximal, and asks to stop and refer.
/// @param effect  null where nothing is known of the lifter
/// @param cards   of the day
[[nodiscard]] ReadinessAdvice adviseOnReadiness(const CheckIn &checkIn,
    const strength::ReadinessEffect *effect, const Lifter &lifter, std::span<const Card> cards,
    std::span<const Variation> catalogue);

} // namespace core
