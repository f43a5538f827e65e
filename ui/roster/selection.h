#pragma once

#include "core/domain/ids.h"

#include <QDate>
#include <QObject>

namespace ui {

/// Which lifter and which week the window shows; every page follows it.
class Selection : public QObject
{
    Q_OBJECT

public:
    using QObject::QObject;

    [[nodiscard]] core::LifterId lifter() const { return m_lifter; }
    /// Monday of the week.
    [[nodiscard]] QDate monday() const { return m_monday; }

    void setLifter(core::LifterId lifter);
    /// Any day of the week.
    void setWeekOf(QDate day);

Q_SIGNALS:
    void lifterChanged(core::LifterId lifter);
    void weekChanged(QDate monday);

private:
    core::LifterId m_lifter;
    QDate m_monday = mondayOf(QDate::currentDate());

    static QDate mondayOf(QDate day) { return day.addDays(1 - day.dayOfWeek()); }
};

} // namespace ui
