#pragma once

#include "core/domain/edit.h"
#include "tests/support/set_clock.h"
#include "ui/roster/insights.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"

#include <QTemporaryDir>

/// A roster on a temporary file with the catalogue and one lifter, who has benched for three months
/// and whose estimates are there. It is the Wednesday of the week shown.
class BoardRoster
{
public:
    explicit BoardRoster(core::TouchStyle style = core::TouchStyle::soft);

    core::LifterId addLifter(const QString &name, core::TouchStyle style);
    /// Twelve weeks of singles at 110 kg and fives up to 100 kg, all rated, ending before the week
    /// shown.
    void logBench(core::LifterId lifter);
    /// Until the lifter's bench estimate has seen all sessions.
    void waitForEstimate(core::LifterId lifter);
    [[nodiscard]] core::VariationId variation(const char *code) const;
    /// All cards of the lifter as "code day:position setLine", by day and position.
    [[nodiscard]] QStringList cards() const;

    QDate monday{2026, 3, 2};
    QTemporaryDir dir;
    SetClock clock{monday.addDays(2)};
    mutable ui::OpenRoster session;
    ui::Estimates estimates{session};
    ui::Insights insights{session, estimates};
    ui::Selection selection{session};
    ui::LifterHistory history{session, selection};
    core::LifterId lifter;
};
