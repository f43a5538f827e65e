#pragma once

#include "core/domain/given_day.h"
#include "core/domain/lifter.h"
#include "core/loads/lift_estimate.h"
#include "core/log/outcome.h"

#include <functional>

namespace core {

/// What all lifters are measured by at once. Copies, for any thread.
struct RosterDone
{
    std::vector<Lifter> lifters;
    std::vector<Variation> catalogue;
    std::vector<Card> cards;     ///< of all, each lifter's by day and position
    std::vector<GivenDay> given; ///< of all; days that are not of late do no harm, nor do cards
    /// The log of a lift, as its estimate has it; null where there is none.
    std::function<const LiftEstimate *(LifterId, Lift)> estimateOf;
    QDate today;
};

/// Adherence of late of every lifter. A lift whose log no estimate has is left out, and so is a
/// lifter without any.
[[nodiscard]] std::map<LifterId, Adherence> adherenceOfAll(const RosterDone &roster);

} // namespace core
