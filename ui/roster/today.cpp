#include "ui/roster/today.h"

#include <QGuiApplication>

namespace ui {

Today::Today(Clock clock, std::chrono::milliseconds every, QObject *parent)
    : QObject(parent)
    , m_clock(std::move(clock))
    , m_date(m_clock().date())
{
    m_timer.setTimerType(Qt::VeryCoarseTimer);
    m_timer.setInterval(every);
    connect(&m_timer, &QTimer::timeout, this, &Today::check);
    m_timer.start();
    if (qGuiApp) // whoever comes back to the window shall not wait for the timer
        connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, &Today::check);
}

void Today::check()
{
    const QDate now = m_clock().date();
    if (now == m_date)
        return;
    m_date = now;
    Q_EMIT changed(now);
}

} // namespace ui
