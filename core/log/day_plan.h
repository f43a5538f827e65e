#pragma once

#include "core/loads/given_loads.h"
#include "core/log/session_rows.h"

#include <functional>

namespace core {

/// All that the plan of one lifter's day depends on.
struct DayInputs
{
    const Lifter &lifter;
    std::span<const Variation> catalogue;
    std::span<const Card> cards;                          ///< of the day
    std::span<const GivenDay> given;                      ///< of the lifter
    QDate today;
    std::span<const SetEntry> done;                       ///< logged on it, in order
    CheckIn checkIn;                                      ///< without an id: nothing was said
    std::function<const LiftEstimate *(Lift)> estimateOf; ///< null where there is none yet
    const strength::ReadinessEffect *readiness = nullptr; ///< null where nothing is known
    bool shiftLoads = true;                               ///< by readiness
};

/// The day as it is to be trained and logged.
struct DayPlan
{
    std::vector<ResolvedCard> cards; ///< as planned or given, without what the day makes of them
    std::vector<DaySet> planned;
    std::vector<SessionRow> rows; ///< the planned sets beside the logged ones
    QStringList unreadable;       ///< cards whose set line cannot be read, by name
    ReadinessAdvice advice;       ///< says nothing where nothing was said
};

[[nodiscard]] DayPlan dayPlan(const DayInputs &day);

/// What becomes a fact when a set of the day is logged, see give(). Of a day that is given already
/// as it stands nothing.
[[nodiscard]] std::vector<GivenDay> giveDay(
    const DayInputs &day, const DayPlan &plan, const Giving &giving);

/// The planned set as it would be in another variation, with its load; of a lead-rep set without
/// one.
/// @param planned  index into the sets that dayPlan() has for the day
[[nodiscard]] DaySet swapped(
    const DayInputs &day, const DayPlan &plan, size_t planned, VariationId variation);

/// Why nothing is suggested for such an extra set on that day; empty when something may be.
[[nodiscard]] QString whyWithheld(const DayInputs &day, const DayPlan &plan, const SetEntry &extra);

} // namespace core
