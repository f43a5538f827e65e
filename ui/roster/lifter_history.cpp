#include "ui/roster/lifter_history.h"

#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"

#include <algorithm>
#include <tuple>

namespace ui {

LifterHistory::LifterHistory(OpenRoster &roster, Selection &selection, QObject *parent)
    : QObject(parent)
    , m_roster(roster)
    , m_selection(selection)
{
    connect(&selection, &Selection::lifterChanged, this, &LifterHistory::reload);
    connect(&roster, &OpenRoster::changed, this, &LifterHistory::follow);
    reload();
}

void LifterHistory::follow(const core::RosterChange &change)
{
    const core::LifterId lifter = m_selection.lifter();
    if (!change.has<core::LoggedSession, core::CheckIn, core::Waiver, core::GivenDay>(lifter))
        return;
    const auto isTheirs = [lifter](const auto &row) { return row.lifter == lifter; };
    core::carryOut(m_sessions, change.rows<core::LoggedSession>(), isTheirs);
    core::carryOut(m_checkIns, change.rows<core::CheckIn>(), isTheirs);
    core::carryOut(m_given, change.rows<core::GivenDay>(), isTheirs);
    core::carryOut(m_waivers, change.rows<core::Waiver>(),
        [lifter](const core::Waiver &waiver) { return waiver.key.lifter == lifter; });
    // As they are read.
    std::sort(m_sessions.begin(), m_sessions.end(),
        [](const core::LoggedSession &a, const core::LoggedSession &b) {
            return std::tie(a.day, a.number) < std::tie(b.day, b.number);
        });
    std::sort(m_checkIns.begin(), m_checkIns.end(),
        [](const core::CheckIn &a, const core::CheckIn &b) { return a.day < b.day; });
    std::sort(m_given.begin(), m_given.end(), [](const core::GivenDay &a, const core::GivenDay &b) {
        return std::tie(a.day, a.number) < std::tie(b.day, b.number);
    });
    std::sort(m_waivers.begin(), m_waivers.end(),
        [](const core::Waiver &a, const core::Waiver &b) { return a.id < b.id; });
    Q_EMIT changed();
}

void LifterHistory::reload()
{
    const core::LifterId lifter = m_selection.lifter();
    const bool known = m_roster.lifter(lifter);
    m_sessions = known ? m_roster.sessions(lifter) : std::vector<core::LoggedSession>();
    m_checkIns = known ? m_roster.checkIns(lifter) : std::vector<core::CheckIn>();
    m_waivers = known ? m_roster.waivers(lifter) : std::vector<core::Waiver>();
    m_given = known ? m_roster.given(lifter) : std::vector<core::GivenDay>();
    Q_EMIT changed();
}

} // namespace ui
