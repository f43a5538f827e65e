#pragma once

#include "core/domain/block.h"
#include "core/domain/lifter.h"
#include "core/domain/training_history.h"
#include "ui/charts/season.h"
#include "ui/charts/time_span.h"
#include "ui/review/strength_series.h"

#include <span>

/// What all charts of the review share, before anything is drawn.
namespace ui {

/// The lifter's blocks and the meet.
[[nodiscard]] Season seasonOf(const core::Lifter &lifter, std::span<const core::Block> blocks);

/// From the first to the last day worth showing, with a few free days at both ends. A meet ahead is
/// worth it unless it is so far off that it would squeeze the log.
/// @pre a week in `series` or `work`
[[nodiscard]] TimeSpan boundsOf(
    const StrengthSeries &series, std::span<const core::WeekLoad> work, const Season &season);

} // namespace ui
