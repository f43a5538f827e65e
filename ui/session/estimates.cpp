#include "ui/session/estimates.h"

#include "ui/session/roster_session.h"

#include <QtConcurrent/QtConcurrentRun>

namespace ui {

Estimates::Estimates(RosterSession &session, QObject *parent)
    : QObject(parent)
    , m_session(session)
{
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &Estimates::take);
    connect(&session, &RosterSession::liftersChanged, this, &Estimates::refit);
    connect(&session, &RosterSession::variationsChanged, this, &Estimates::refit);
    connect(&session, &RosterSession::sessionsChanged, this, &Estimates::refit);
    refit();
}

Estimates::~Estimates()
{
    m_watcher.waitForFinished();
}

const core::LiftEstimate *Estimates::of(core::LifterId lifter, core::Lift lift) const
{
    const auto it = m_fits.find({lifter, lift});
    return it == m_fits.end() ? nullptr : &it->second;
}

bool Estimates::isBusy() const
{
    return m_watcher.isRunning();
}

void Estimates::refit()
{
    if (m_watcher.isRunning()) {
        m_stale = true;
        return;
    }
    m_stale = false;
    m_watcher.setFuture(
        QtConcurrent::run([lifters = m_session.lifters(), variations = m_session.variations(),
                              sessions = m_session.sessions()] {
            return core::estimateAll(lifters, variations, sessions);
        }));
    Q_EMIT busyChanged(true);
}

void Estimates::take()
{
    if (m_stale) {
        refit();
        return;
    }
    m_fits = m_watcher.result();
    Q_EMIT busyChanged(false);
    Q_EMIT changed();
}

} // namespace ui
