#include "ui/charts/span_control.h"

#include "ui/charts/plot_map.h"
#include "ui/charts/time_window.h"

#include <algorithm>
#include <cmath>

namespace ui {

namespace {
constexpr double kZoomStep = 1.25; ///< of one key press or one notch of the wheel
constexpr double kPanShare = 0.1;  ///< of the span, one key press
constexpr double kNotch = 120.0;   ///< eighths of a degree, as Qt counts a usual wheel
constexpr int kShortestPick = 6;   ///< less was a click, px
} // namespace

SpanControl::SpanControl(TimeWindow &window)
    : m_window(window)
{
}

double SpanControl::dayAt(double x) const
{
    return PlotMap{m_plot, m_window.span(), {}}.dayAt(x);
}

void SpanControl::turnWheel(const QPoint &turn, bool sideways, double x)
{
    const bool turnsSideways = std::abs(turn.x()) > std::abs(turn.y());
    if (sideways || turnsSideways) {
        const double notches = (turnsSideways ? turn.x() : turn.y()) / kNotch;
        m_window.pan(-notches * kPanShare * m_window.span().days());
    } else {
        m_window.zoom(std::pow(kZoomStep, -turn.y() / kNotch), dayAt(x));
    }
}

bool SpanControl::pressKey(int key)
{
    const TimeSpan span = m_window.span();
    const double middle = (span.from + span.to) / 2.0;
    switch (key) {
    case Qt::Key_Plus:
    case Qt::Key_Equal: // the plus of keyboards that have it under Shift
        m_window.zoom(1.0 / kZoomStep, middle);
        return true;
    case Qt::Key_Minus:
        m_window.zoom(kZoomStep, middle);
        return true;
    case Qt::Key_Left:
        m_window.pan(-kPanShare * span.days());
        return true;
    case Qt::Key_Right:
        m_window.pan(kPanShare * span.days());
        return true;
    case Qt::Key_Home:
        m_window.showAll();
        return true;
    case Qt::Key_End:
        m_window.showLast(span.days());
        return true;
    default:
        return false;
    }
}

void SpanControl::press(const QPointF &at, bool picks)
{
    (picks ? m_pickFrom : m_grip) = at;
}

bool SpanControl::drag(const QPointF &at)
{
    if (m_pickFrom) {
        const double left = std::max(std::min(m_pickFrom->x(), at.x()), m_plot.left());
        const double right = std::min(std::max(m_pickFrom->x(), at.x()), m_plot.right());
        m_picked =
            QRectF(left, m_plot.top(), std::max(0.0, right - left), m_plot.height()).toRect();
        return true;
    }
    if (!m_grip)
        return false;
    m_window.pan(dayAt(m_grip->x()) - dayAt(at.x()));
    m_grip = at;
    return true;
}

void SpanControl::release()
{
    if (m_picked && m_picked->width() >= kShortestPick)
        m_window.show({dayAt(m_picked->left()), dayAt(m_picked->left() + m_picked->width())});
    m_picked.reset();
    m_pickFrom.reset();
    m_grip.reset();
}

} // namespace ui
