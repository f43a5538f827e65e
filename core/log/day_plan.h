#pragma once

#include "core/loads/given_loads.h"
#include "core/log/session_rows.h"
#include "core/safety/day_limits.h"

#include <functional>

namespace core {

/// All that the plan of one lifter's day depends on.
struct DayInputs
{
    const Lifter &lifter;
    QDate day;
    std::span<const Variation> catalogue;
    std::span<const Card> cards;          ///< of the day
    std::span<const GivenDay> given;      ///< of the lifter
    QDate today;                          ///< by the clock; `day` may be another
    std::span<const SetEntry> done;       ///< logged on it, in order
    const std::vector<CheckIn> &checkIns; ///< of the lifter, see PlanSources::checkIns
    std::function<const LiftEstimate *(Lift)> estimateOf; ///< null where there is none yet
    const strength::ReadinessEffect *readiness = nullptr; ///< null where nothing is known
    /// Whether loads are shifted by readiness; unless the coach has said so, down only.
    std::optional<bool> shiftLoads = {};
};

/// The day as it is to be trained and logged.
struct DayPlan
{
    std::vector<ResolvedCard> cards; ///< as planned or given, without what the day makes of them
    std::vector<DaySet> planned;
    std::vector<SessionRow> rows; ///< the planned sets beside the logged ones
    QStringList unreadable;       ///< cards whose set line cannot be read, by name
    DayLimits limits;
    ReadinessAdvice advice;   ///< says nothing where nothing was said
    bool shiftsLoads = false; ///< `planned` is shifted by the advice
};

/// After a miss on the day, loads of the lift come down to this share of what was planned, and of
/// what was missed, once for every miss: about two reps' worth, where a missed rep says that there
/// was none left (common practice, no source; in step with what a rep costs in the middle of the
/// handbook chart, about 2.5 %).
inline constexpr double kAfterMiss = 0.95;

/// The plan of a day never holds a load above the planned one unless the coach has switched on the
/// increase by readiness. Sets that are not done yet come down after a miss (kAfterMiss), rounded
/// down to the plates.
[[nodiscard]] DayPlan dayPlan(const DayInputs &day);

/// What becomes a fact when a set of the day is logged, see give(). Of a day that is given already
/// as it stands nothing.
[[nodiscard]] std::vector<GivenDay> giveDay(
    const DayInputs &day, const DayPlan &plan, const Giving &giving);

/// The planned set as it would be in another variation, with its load; of a lead-rep set without
/// one. Where something hurts, is sore or was missed, no heavier than planned.
/// @param planned  index into the sets that dayPlan() has for the day
[[nodiscard]] DaySet swapped(
    const DayInputs &day, const DayPlan &plan, size_t planned, VariationId variation);

/// A load for one more set of the variation: brought down by the misses of the day as dayPlan()
/// does with planned ones.
[[nodiscard]] double easedKg(const DayInputs &day, VariationId variation, double loadKg);

/// Why nothing is suggested for such an extra set on that day; empty when something may be.
[[nodiscard]] QString whyWithheld(const DayInputs &day, const DayPlan &plan, const SetEntry &extra);

} // namespace core
