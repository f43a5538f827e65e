#include "ui/review/work_series.h"

#include "core/domain/week.h"
#include "core/loads/lift_estimate.h"

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr double kNarrow = 5.0;   ///< a bar of less has no gap, px
constexpr double kGapShare = 0.1; ///< of a bar's width, on each side

} // namespace

double axisTonnage(double kg, core::Unit unit)
{
    return core::fromKg(kg, unit) / 1000.0;
}

std::vector<QRectF> barsOf(
    std::span<const core::WeekLoad> weeks, core::Unit unit, const PlotMap &map)
{
    std::vector<QRectF> bars;
    for (const core::WeekLoad &week : weeks) {
        const double from = core::engineDay(week.monday);
        const double to = from + core::kWeekDays;
        const double height = axisTonnage(week.tonnageKg, unit);
        if (height <= 0.0 || from >= map.time.to || to <= map.time.from)
            continue;
        const double left = std::round(map.xOf(from));
        const double width = std::round(map.xOf(to)) - left;
        const double gap = width < kNarrow ? 0.0 : std::round(width * kGapShare);
        const double top = std::round(map.yOf(height));
        bars.emplace_back(
            left + gap, top, std::max(1.0, width - 2.0 * gap), std::round(map.plot.bottom()) - top);
    }
    return bars;
}

} // namespace ui
