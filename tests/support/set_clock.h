#pragma once

#include "ui/roster/today.h"

/// A clock that stands still until a test sets it.
class SetClock
{
    QDateTime m_now; // first: today asks for it

public:
    explicit SetClock(QDate day = QDate(2026, 11, 25))
        : m_now(day, QTime(12, 0))
    {
    }

    ui::Today today{[this] { return m_now; }};

    void set(QDate day)
    {
        m_now.setDate(day);
        today.check();
    }
};
