#pragma once

#include <QPoint>
#include <QRect>
#include <QRectF>
#include <optional>

namespace ui {

class TimeWindow;

/// Moves the span of a window by the wheel, the keys and the mouse over a plot.
class SpanControl
{
public:
    explicit SpanControl(TimeWindow &window);

    /// Where the span is drawn, in the pixels that the mouse is told in.
    void setPlot(const QRectF &plot) { m_plot = plot; }

    /// Zooms at `x`, or moves where the wheel turns sideways.
    /// @param turn  eighths of a degree
    void turnWheel(const QPoint &turn, bool sideways, double x);
    /// False for a key that means nothing here.
    [[nodiscard]] bool pressKey(int key);

    /// Takes hold of the span, or begins to pick another one.
    void press(const QPointF &at, bool picks);
    /// False while nothing is held.
    bool drag(const QPointF &at);
    /// What is being picked, over the whole height of the plot; empty before the mouse has moved.
    [[nodiscard]] const std::optional<QRect> &picked() const { return m_picked; }
    /// Shows what was picked.
    void release();

private:
    [[nodiscard]] double dayAt(double x) const;

    TimeWindow &m_window;
    QRectF m_plot;
    std::optional<QPointF> m_grip;     ///< where the drag was last
    std::optional<QPointF> m_pickFrom; ///< where picking began
    std::optional<QRect> m_picked;
};

} // namespace ui
