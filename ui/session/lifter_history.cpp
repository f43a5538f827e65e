#include "ui/session/lifter_history.h"

#include "ui/session/roster_session.h"
#include "ui/session/selection.h"

#include <algorithm>

namespace ui {

LifterHistory::LifterHistory(RosterSession &session, Selection &selection, QObject *parent)
    : QObject(parent)
    , m_session(session)
    , m_selection(selection)
{
    const auto follow = [this](const QSet<core::LifterId> &lifters) {
        if (lifters.contains(m_selection.lifter()))
            reload();
    };
    connect(&selection, &Selection::lifterChanged, this, &LifterHistory::reload);
    connect(&session, &RosterSession::sessionsChanged, this, follow);
    connect(&session, &RosterSession::checkInsChanged, this, follow);
    connect(&session, &RosterSession::waiversChanged, this, follow);
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
    const bool known = m_session.lifter(lifter);
    m_sessions = known ? m_session.sessions(lifter) : std::vector<core::LoggedSession>();
    m_checkIns = known ? m_session.checkIns(lifter) : std::vector<core::CheckIn>();
    m_waivers = known ? m_session.waivers(lifter) : std::vector<core::Waiver>();
    Q_EMIT changed();
}

} // namespace ui
