#pragma once

#include "core/domain/variation.h"
#include "core/plan/lift_estimate.h"

#include <QFutureWatcher>
#include <QObject>
#include <map>

namespace ui {

class RosterSession;

/// Estimates of every lifter and lift, fitted off the screen's thread on copied values and dropped
/// when the log has moved on meanwhile. The last good ones stay visible until the new ones are
/// there.
class Estimates : public QObject
{
    Q_OBJECT

public:
    explicit Estimates(RosterSession &session, QObject *parent = nullptr);
    ~Estimates() override;

    /// Null before the first fit, and for a lifter who is not in the roster.
    [[nodiscard]] const core::LiftEstimate *of(core::LifterId lifter, core::Lift lift) const;
    [[nodiscard]] bool isBusy() const;

Q_SIGNALS:
    /// A fit has ended; ask again for what is shown.
    void changed();
    void busyChanged(bool busy);

private:
    using Fits = std::map<std::pair<core::LifterId, core::Lift>, core::LiftEstimate>;

    void refit();
    void take();

    RosterSession &m_session;
    QFutureWatcher<Fits> m_watcher;
    Fits m_fits;
    bool m_stale = false; ///< the log changed while a fit was running
};

} // namespace ui
