#include "ui/charts/time_window.h"

namespace ui {

void TimeWindow::setBounds(const TimeSpan &bounds)
{
    m_bounds = bounds;
    show(m_span);
}

void TimeWindow::setSeason(Season season)
{
    if (season == m_season)
        return;
    m_season = std::move(season);
    Q_EMIT seasonChanged();
}

void TimeWindow::show(const TimeSpan &span)
{
    const TimeSpan within = clamped(span, m_bounds);
    if (within == m_span)
        return;
    m_span = within;
    Q_EMIT spanChanged(m_span);
}

} // namespace ui
