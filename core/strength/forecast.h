#pragma once

#include "core/strength/score.h"
#include "core/strength/training_log.h"

#include <span>
#include <vector>

namespace strength {

/// Forecasts every set of the logs from what was known before its week began: the engine is run on
/// the logs up to each Sunday, and the sets of the next trained week are forecast. Sets before a
/// lifter's first estimate are left out, and lead-rep sets, whose parts are not planned apart.
///
/// A set counts as missed where a rep failed, or where it ended short of its plan. It is asked for
/// by the reps planned; where the log does not hold them, by those tried: those done, and one more
/// where that one was missed, which hides a part of the plan's boldness.
///
/// Cost: one fit of the roster a week, each over the log so far.
/// @throws std::invalid_argument as estimateRoster()
[[nodiscard]] std::vector<SetForecast> forecastWeeks(
    std::span<const LifterLog> logs, std::span<const VariationPrior> variations);

} // namespace strength
