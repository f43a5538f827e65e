#include "ui/roster/selection.h"

namespace ui {

void Selection::setLifter(core::LifterId lifter)
{
    if (lifter == m_lifter)
        return;
    m_lifter = lifter;
    Q_EMIT lifterChanged(lifter);
}

void Selection::setWeekOf(QDate day)
{
    const QDate monday = mondayOf(day);
    if (!day.isValid() || monday == m_monday)
        return;
    m_monday = monday;
    Q_EMIT weekChanged(monday);
}

} // namespace ui
