#include "ui/roster/selection.h"

#include "core/domain/week.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/today.h"

namespace ui {

Selection::Selection(OpenRoster &roster, QObject *parent)
    : QObject(parent)
    , m_roster(roster)
    , m_monday(core::mondayOf(roster.today().date()))
{
}

void Selection::setLifter(core::LifterId lifter)
{
    if (lifter == m_lifter)
        return;
    if (m_roster.settle())
        m_lifter = lifter;
    Q_EMIT lifterChanged(m_lifter); // where it stays, whoever has gone ahead comes back
}

void Selection::setWeekOf(QDate day)
{
    const QDate monday = core::mondayOf(day);
    if (!day.isValid() || monday == m_monday)
        return;
    if (!m_roster.settle())
        return;
    m_monday = monday;
    Q_EMIT weekChanged(monday);
}

void Selection::setThisWeek()
{
    setWeekOf(m_roster.today().date());
}

} // namespace ui
