#pragma once

#include "ui/log/day_log.h"
#include "ui/log/log_desk.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/selection.h"

namespace ui {

/// The log of one lifter in the room: the parts that the log page is made of, on a selection of
/// their own, which stays with the lifter. So limits, given loads and what comes after a miss are
/// as in the log.
class Seat : public QObject
{
    Q_OBJECT

public:
    Seat(OpenRoster &roster, Estimates &estimates, Insights &insights, core::LifterId lifter,
        QObject *parent = nullptr);

    /// Also when the roster has the lifter no longer.
    [[nodiscard]] core::LifterId id() const { return m_selection.lifter(); }
    /// Null when the lifter was taken out of the roster by an undo.
    [[nodiscard]] const core::Lifter *lifter() const { return m_log.lifter(); }
    [[nodiscard]] DayLog &log() { return m_log; }
    [[nodiscard]] const DayLog &log() const { return m_log; }
    [[nodiscard]] LogDesk &desk() { return m_desk; }
    [[nodiscard]] const LogDesk &desk() const { return m_desk; }

    /// The rack that is shared, from 1; 0 = one alone.
    [[nodiscard]] int rack() const { return m_rack; }
    void setRack(int rack) { m_rack = rack; }

private:
    Selection m_selection;
    LifterHistory m_history;
    DayLog m_log;
    LogDesk m_desk;
    int m_rack = 0;
};

} // namespace ui
