#pragma once

#include "ui/charts/time_span.h"
#include "ui/charts/value_scale.h"

#include <QPointF>
#include <QRectF>
#include <QSizeF>

namespace ui {

/// Where a day and a value fall inside a plot area, in pixels.
struct PlotMap
{
    QRectF plot;
    TimeSpan time;
    ValueScale values;

    [[nodiscard]] double xOf(double day) const
    {
        return plot.left() + (day - time.from) / time.days() * plot.width();
    }
    [[nodiscard]] double yOf(double value) const
    {
        return plot.bottom() - (value - values.from) / (values.to - values.from) * plot.height();
    }
    [[nodiscard]] QPointF at(double day, double value) const { return {xOf(day), yOf(value)}; }
    [[nodiscard]] double dayAt(double x) const
    {
        return time.from + (x - plot.left()) / plot.width() * time.days();
    }
};

/// Where a box goes beside `anchor`: to its right and above, on the other side where it would leave
/// `bounds`, so that it never covers the anchor unless the bounds are too small for anything else.
[[nodiscard]] QRectF placeBeside(const QPointF &anchor, const QSizeF &box, const QRectF &bounds);

} // namespace ui
