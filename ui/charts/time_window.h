#pragma once

#include "ui/charts/season.h"
#include "ui/charts/time_span.h"

#include <QObject>

namespace ui {

/// The span that several charts show together, the bounds it may move in, and what stands behind
/// all of them.
class TimeWindow : public QObject
{
    Q_OBJECT

public:
    using QObject::QObject;

    [[nodiscard]] const TimeSpan &span() const { return m_span; }
    [[nodiscard]] const TimeSpan &bounds() const { return m_bounds; }

    [[nodiscard]] const Season &season() const { return m_season; }
    void setSeason(Season season);

    /// The span is moved into the new bounds.
    void setBounds(const TimeSpan &bounds);
    void show(const TimeSpan &span);
    void zoom(double factor, double anchor) { show(zoomed(m_span, factor, anchor, m_bounds)); }
    void pan(double days) { show(panned(m_span, days, m_bounds)); }
    void showLast(double days) { show(lastDays(days, m_bounds)); }
    void showAll() { show(m_bounds); }

Q_SIGNALS:
    void spanChanged(const ui::TimeSpan &span);
    void seasonChanged();

private:
    TimeSpan m_span;
    TimeSpan m_bounds;
    Season m_season;
};

} // namespace ui
