#pragma once

#include "core/loads/lift_estimate.h"
#include "core/strength/carry_over.h"

#include <QString>
#include <span>
#include <vector>

/// What carried over to the competition lift, from the log to words.
namespace core {

/// A set counts as hard from this share of its variation's max of the day on (common practice, no
/// source).
inline constexpr double kHardShare = 0.70;

/// The weeks of one lifter for strength::carryOver. A week's reading is the mean over its rated
/// competition sets; what ratios were learned from other variations stays out of it, or a ratio
/// that is off would look like a gain.
[[nodiscard]] strength::CarryLog carryLog(const LiftEstimate &lift);

/// What carried over in the roster, one row a variation but the competition lift.
struct CarryOverRow
{
    VariationId variation;
    strength::CarryOver effect;
};

/// Greatest gain first; those with not enough to say come last, and unused ones are left out.
/// @param logs  of the same lift, one a lifter
/// @param variations  of each column of the logs
[[nodiscard]] std::vector<CarryOverRow> whatCarriedOver(
    std::span<const strength::CarryLog> logs, const std::vector<VariationId> &variations);

/// "+0.4 % (+0.1 to +0.7)", or "not enough to say".
[[nodiscard]] QString effectWords(const strength::CarryOver &effect);
/// What it rests on and what follows from it, one sentence or two.
[[nodiscard]] QString meaningWords(const strength::CarryOver &effect);
/// What such a table can and cannot show.
[[nodiscard]] QString carryOverCaution();

} // namespace core
