#pragma once

#include "core/domain/given_day.h"
#include "ui/roster/roster_work.h"

namespace ui {

class Estimates;

/// A day that has passed was given as it stood. Once the roster is fitted, the plans of days gone
/// by that nobody was given are worked out by what was known on each, off the screen's thread, and
/// recorded bit by bit.
class PassedDays : public QObject
{
    Q_OBJECT

public:
    PassedDays(OpenRoster &roster, Estimates &estimates, QObject *parent = nullptr);

    [[nodiscard]] bool isBusy() const { return m_work.isRunning(); }

Q_SIGNALS:
    /// All days gone by are given.
    void finished();

private:
    struct Found
    {
        std::vector<core::GivenDay> given;
        bool isAll = true;
    };

    void start();
    void take(std::optional<Found> found);

    OpenRoster &m_roster;
    Estimates &m_estimates;
    RosterWork<Found> m_work;
};

} // namespace ui
