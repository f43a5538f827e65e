#include "ui/roster/lifter_history.h"

#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"

#include <algorithm>

namespace ui {

LifterHistory::LifterHistory(OpenRoster &roster, Selection &selection, QObject *parent)
    : QObject(parent)
    , m_roster(roster)
    , m_selection(selection)
{
    connect(&selection, &Selection::lifterChanged, this, &LifterHistory::reload);
    connect(&roster, &OpenRoster::changed, this, [this](const core::RosterChange &change) {
        if (change.has<core::LoggedSession, core::CheckIn, core::Waiver>(m_selection.lifter()))
            reload();
    });
    reload();
}

const core::CheckIn *LifterHistory::checkInOn(QDate day) const
{
    const auto found = std::find_if(m_checkIns.begin(), m_checkIns.end(),
        [day](const core::CheckIn &checkIn) { return checkIn.day == day; });
    return found == m_checkIns.end() ? nullptr : &*found;
}

void LifterHistory::reload()
{
    const core::LifterId lifter = m_selection.lifter();
    const bool known = m_roster.lifter(lifter);
    m_sessions = known ? m_roster.sessions(lifter) : std::vector<core::LoggedSession>();
    m_checkIns = known ? m_roster.checkIns(lifter) : std::vector<core::CheckIn>();
    m_waivers = known ? m_roster.waivers(lifter) : std::vector<core::Waiver>();
    Q_EMIT changed();
}

} // namespace ui
