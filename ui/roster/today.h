#pragma once

#include <QDateTime>
#include <QObject>
#include <QTimer>
#include <chrono>
#include <functional>

namespace ui {

/// What day it is, for whoever shows, asks or stores something of today. It is given a clock and
/// reads no other, so that a test or a picture can stand on any day.
class Today : public QObject
{
    Q_OBJECT

public:
    using Clock = std::function<QDateTime()>;

    /// @param every  how often the clock is asked. No timer runs for the night: it would stand
    ///               still while the computer sleeps, and know nothing of a clock that is set.
    explicit Today(Clock clock, std::chrono::milliseconds every = std::chrono::minutes(1),
        QObject *parent = nullptr);

    /// As it was told last, so that all pages speak of the same day.
    [[nodiscard]] QDate date() const { return m_date; }
    [[nodiscard]] QDateTime now() const { return m_clock(); }

    /// Asks the clock at once.
    void check();

Q_SIGNALS:
    /// Another day has begun, or the clock was set to one.
    void changed(QDate date);

private:
    Clock m_clock;
    QDate m_date;
    QTimer m_timer;
};

} // namespace ui
