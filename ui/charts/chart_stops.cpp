#include "ui/charts/chart_stops.h"

#include "ui/charts/thin.h"

#include <cmath>

namespace ui {

namespace {
constexpr double kMarkReach = 10.0; ///< a mark nearer than this is read before the line, px
} // namespace

std::optional<size_t> stopNear(
    const std::vector<Stop> &stops, const std::vector<QPointF> &pixels, const QPointF &mouse)
{
    if (const auto near = nearestPoint(pixels, mouse, kMarkReach))
        return size_t(*near);
    std::vector<QPointF> onLine;
    std::vector<size_t> lineStops;
    for (size_t i = 0; i < stops.size(); ++i)
        if (stops[i].onLine) {
            onLine.push_back(pixels[i]);
            lineStops.push_back(i);
        }
    const auto inTime = nearestInTime(onLine, mouse.x());
    return inTime ? std::optional(lineStops[size_t(*inTime)]) : std::nullopt;
}

std::optional<size_t> stopBeside(
    const std::vector<Stop> &stops, std::optional<size_t> here, int direction)
{
    const double from = here ? stops[*here].day : direction > 0 ? -HUGE_VAL : HUGE_VAL;
    std::optional<size_t> next;
    for (size_t i = 0; i < stops.size(); ++i)
        if (stops[i].onLine && (stops[i].day - from) * direction > 0
            && (!next || (stops[i].day - stops[*next].day) * direction < 0))
            next = i;
    return next;
}

} // namespace ui
