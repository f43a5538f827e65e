#pragma once

#include "ui/charts/time_span.h"

#include <QList>
#include <QPointF>
#include <optional>
#include <vector>

/// From all the data to what the pixels can show. Drawing cost then follows the width of the chart,
/// not the length of the log.
namespace ui {

/// The part of a line to hand to a chart: points within the span and one neighbour on each side.
/// Where more than two fall into a pixel column, only the lowest and the highest stay, in their
/// order, so that the outline is the same.
/// @param points  by x; x is days
/// @param columns  pixel columns of the span, >= 1
[[nodiscard]] QList<QPointF> thinLine(
    const QList<QPointF> &points, const TimeSpan &span, int columns);

/// Marks worth drawing: of those that fall into one cell of `cell` pixels, the last one, which
/// would hide the others.
/// @param pixels  where the marks fall; those outside `width` x `height` are left out
/// @return indices into `pixels`, rising
[[nodiscard]] std::vector<int> thinMarks(
    const std::vector<QPointF> &pixels, double width, double height, double cell);

/// The point nearest to `at` within `reach`; empty where there is none.
[[nodiscard]] std::optional<int> nearestPoint(
    const std::vector<QPointF> &points, const QPointF &at, double reach);

/// The point nearest in x, whatever its y; empty only when there are none.
[[nodiscard]] std::optional<int> nearestInTime(const std::vector<QPointF> &points, double x);

} // namespace ui
