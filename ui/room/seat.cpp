#include "ui/room/seat.h"

namespace ui {

namespace {

/// Before the history reads it: nothing is read twice.
Selection &chosen(Selection &selection, core::LifterId lifter)
{
    selection.setLifter(lifter);
    return selection;
}

} // namespace

Seat::Seat(OpenRoster &roster, Estimates &estimates, Insights &insights, core::LifterId lifter,
    QObject *parent)
    : QObject(parent)
    , m_selection(roster)
    , m_history(roster, chosen(m_selection, lifter))
    , m_log(roster, estimates, insights, m_history, m_selection)
    , m_desk(m_log)
{
}

} // namespace ui
