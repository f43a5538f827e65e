#pragma once

#include "ui/charts/chart_overlay.h"
#include "ui/charts/plot_map.h"
#include "ui/charts/season.h"

namespace ui {

/// The blocks as bands over the whole height of the plot, cut off at its sides.
[[nodiscard]] std::vector<QRectF> blockBands(const Season &season, const PlotMap &pixels);

/// A line where a block begins and at each meet, of those within the span.
[[nodiscard]] std::vector<DayLine> seasonLines(const Season &season, const PlotMap &pixels);

} // namespace ui
