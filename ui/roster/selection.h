#pragma once

#include "core/domain/ids.h"

#include <QDate>
#include <QObject>

namespace ui {

class OpenRoster;

/// Which lifter and which week the window shows; every page follows it.
class Selection : public QObject
{
    Q_OBJECT

public:
    explicit Selection(OpenRoster &roster, QObject *parent = nullptr);

    [[nodiscard]] core::LifterId lifter() const { return m_lifter; }
    /// Monday of the week.
    [[nodiscard]] QDate monday() const { return m_monday; }

    /// What is half typed about the one shown is settled first; below too.
    void setLifter(core::LifterId lifter);
    /// Any day of the week.
    void setWeekOf(QDate day);
    /// The week of today.
    void setThisWeek();

Q_SIGNALS:
    void lifterChanged(core::LifterId lifter);
    void weekChanged(QDate monday);

private:
    OpenRoster &m_roster;
    core::LifterId m_lifter;
    QDate m_monday;
};

} // namespace ui
