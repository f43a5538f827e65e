#pragma once

#include "core/strength/score.h"
#include "core/strength/training_log.h"

#include <span>
#include <vector>

namespace strength {

/// Forecasts every set of the logs from what was known before its session began. A lifter's first
/// session is left out, as nothing was known then.
///
/// One pass of the filter over a lifter's log goes from session to session. What lifters have in
/// common is learned anew every thirteen weeks, from the logs as they stood then, and the passes
/// start over with it; so no forecast knows of a later day.
///
/// A set counts as missed where a rep failed, or where it ended short of its plan. It is asked for
/// by the reps planned; where the log does not hold them, by those tried: those done, and one more
/// where that one was missed, which hides a part of the plan's boldness.
///
/// @return by quarter, then by lifter, then by day
/// @throws std::invalid_argument as estimateRoster()
[[nodiscard]] std::vector<SetForecast> forecastSessions(
    std::span<const LifterLog> logs, std::span<const VariationPrior> variations);

} // namespace strength
