#include "ui/charts/season_overlay.h"

#include <algorithm>

namespace ui {

std::vector<QRectF> blockBands(const Season &season, const PlotMap &pixels)
{
    std::vector<QRectF> bands;
    for (const Season::Stretch &block : season.blocks) {
        const double left = std::max(pixels.xOf(block.from), pixels.plot.left());
        const double right = std::min(pixels.xOf(block.to), pixels.plot.right());
        if (left < right)
            bands.emplace_back(
                QPointF(left, pixels.plot.top()), QPointF(right, pixels.plot.bottom()));
    }
    return bands;
}

std::vector<DayLine> seasonLines(const Season &season, const PlotMap &pixels)
{
    std::vector<DayLine> lines;
    for (const Season::Stretch &block : season.blocks)
        if (pixels.time.contains(block.from))
            lines.push_back({pixels.xOf(block.from), block.name});
    for (const Season::Day &meet : season.meets)
        if (pixels.time.contains(meet.day))
            lines.push_back({pixels.xOf(meet.day), meet.name});
    return lines;
}

} // namespace ui
