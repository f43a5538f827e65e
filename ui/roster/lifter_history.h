#pragma once

#include "core/domain/check_in.h"
#include "core/domain/given_day.h"
#include "core/domain/roster_change.h"
#include "core/domain/session.h"
#include "core/domain/waiver.h"

#include <QObject>
#include <vector>

namespace ui {

class OpenRoster;
class Selection;

/// What is known of the selected lifter besides the plan: read once and kept until it changes.
class LifterHistory : public QObject
{
    Q_OBJECT

public:
    LifterHistory(OpenRoster &roster, Selection &selection, QObject *parent = nullptr);

    [[nodiscard]] const std::vector<core::LoggedSession> &sessions() const { return m_sessions; }
    [[nodiscard]] const std::vector<core::CheckIn> &checkIns() const { return m_checkIns; }
    [[nodiscard]] const std::vector<core::Waiver> &waivers() const { return m_waivers; }
    [[nodiscard]] const std::vector<core::GivenDay> &given() const { return m_given; }

Q_SIGNALS:
    void changed();

private:
    void follow(const core::RosterChange &change);
    void reload();

    OpenRoster &m_roster;
    Selection &m_selection;
    std::vector<core::LoggedSession> m_sessions;
    std::vector<core::CheckIn> m_checkIns;
    std::vector<core::Waiver> m_waivers;
    std::vector<core::GivenDay> m_given;
};

} // namespace ui
