#pragma once

#include "core/loads/lift_estimate.h"

namespace core {

/// The competition max that one set speaks for, kg: the load over the share of the max that the
/// lifter's own curve gives for the reps that were possible, over the variation's ratio, with the
/// rating habit and the fatigue of the sets before it taken out. A missed set tells the most that
/// it can be (one rep more was too much), an unrated one the least.
/// @param row  of the variation in the estimate
/// @param setsBefore  sets of the lift before it in the session
[[nodiscard]] double impliedMaxKg(
    const LiftEstimate &lift, const SetEntry &set, int row, int setsBefore);

/// Estimated competition max by which a day's loads are judged: what was known on the Sunday
/// before; in the first week what is known now. Empty without data.
[[nodiscard]] std::optional<double> knownMaxKg(const LiftEstimate &lift, QDate day);

} // namespace core
