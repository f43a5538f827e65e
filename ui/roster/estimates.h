#pragma once

#include "core/domain/roster_change.h"
#include "core/domain/variation.h"
#include "core/loads/lift_estimate.h"
#include "ui/roster/roster_work.h"

#include <QSet>
#include <QTimer>
#include <map>
#include <memory>

namespace ui {

/// Estimates of every lifter and lift, read and fitted off the screen's thread, and dropped when
/// the log has moved on meanwhile. The last good ones stay visible until the new ones are there.
///
/// A lifter whose log changes is fitted alone at once, by what was learnt of the roster; all are
/// fitted anew when the log has been quiet for a while, and when another day has begun.
class Estimates : public QObject
{
    Q_OBJECT

public:
    /// Copies share the estimates, and may go to other threads.
    using Fits =
        std::map<std::pair<core::LifterId, core::Lift>, std::shared_ptr<const core::LiftEstimate>>;

    explicit Estimates(OpenRoster &roster, QObject *parent = nullptr);

    /// Null before the first fit, and for a lifter who is not in the roster. Valid until changed().
    [[nodiscard]] const core::LiftEstimate *of(core::LifterId lifter, core::Lift lift) const;
    [[nodiscard]] const Fits &all() const { return m_fits; }
    /// What the lifters lend each other; empty before the first fit.
    [[nodiscard]] const core::LearntLifts &learnt() const { return m_learnt; }
    [[nodiscard]] bool isBusy() const { return m_whole.isRunning() || m_some.isRunning(); }

Q_SIGNALS:
    /// A fit of these lifters has ended; ask again for what is shown of them.
    void changed(const QSet<core::LifterId> &lifters);
    /// The fit was of the whole roster; changed() has been emitted.
    void rosterFitted();

private:
    struct Fitted
    {
        Fits fits;
        core::LearntLifts learnt; ///< of the whole roster; else empty
    };

    void follow(const core::RosterChange &change);
    void fitRoster();
    void takeRoster(std::optional<Fitted> fitted);
    void fitChanged();
    void takeChanged(std::optional<Fitted> fitted);

    OpenRoster &m_roster;
    QTimer m_quiet;
    Fits m_fits;
    core::LearntLifts m_learnt;
    QSet<core::LifterId> m_changed; ///< whose log no fit has seen yet
    RosterWork<Fitted> m_some;
    RosterWork<Fitted> m_whole; ///< ends first, since it can be stopped half way
};

} // namespace ui
