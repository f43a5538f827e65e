#pragma once

#include <QPointF>
#include <optional>
#include <vector>

namespace ui {

/// Of the value axes of a chart.
enum class Side { left, right };

/// A point of a chart whose values can be read.
struct Stop
{
    double day = 0.0;
    double value = 0.0;
    Side side = Side::left;
    bool onLine = true; ///< the arrow keys stop here; the mouse stops everywhere
    int index = 0;      ///< for the chart that made it
};

/// What the mouse reads: a point right under it, otherwise the one on the line that is nearest in
/// time.
/// @param pixels  where each of `stops` stands
/// @return index into `stops`
[[nodiscard]] std::optional<size_t> stopNear(
    const std::vector<Stop> &stops, const std::vector<QPointF> &pixels, const QPointF &mouse);

/// What the arrow keys read: the next stop on the line from `here`, from the end where nothing is
/// read yet; empty behind the last one.
/// @param direction  1 for later, -1 for earlier
[[nodiscard]] std::optional<size_t> stopBeside(
    const std::vector<Stop> &stops, std::optional<size_t> here, int direction);

} // namespace ui
