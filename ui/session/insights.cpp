#include "ui/session/insights.h"

#include "core/plan/readiness_advice.h"
#include "core/plan/touch_review.h"
#include "ui/session/estimates.h"
#include "ui/session/roster_session.h"

#include <QtConcurrent/QtConcurrentRun>

namespace ui {

Insights::Insights(RosterSession &session, Estimates &estimates, QObject *parent)
    : QObject(parent)
    , m_session(session)
    , m_estimates(estimates)
    , m_found{strength::learnTouch({}), {}, {}}
{
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &Insights::take);
    connect(&estimates, &Estimates::changed, this, &Insights::work);
    connect(&session, &RosterSession::checkInsChanged, this, &Insights::work);
}

Insights::~Insights()
{
    m_watcher.waitForFinished();
}

const strength::ReadinessEffect *Insights::readiness(core::LifterId lifter) const
{
    const auto it = m_found.readiness.find(lifter);
    return it == m_found.readiness.end() ? nullptr : &it->second;
}

void Insights::work()
{
    if (m_watcher.isRunning()) {
        m_stale = true;
        return;
    }
    m_stale = false;
    // The readings are few and quick to gather; what takes time works on copies of them.
    const std::vector<core::CheckIn> checkIns = m_session.checkIns();
    std::vector<core::LifterId> lifters;
    std::vector<std::vector<strength::TouchReading>> touch;
    std::vector<std::vector<strength::ReadinessReading>> readiness;
    std::vector<strength::CarryLog> logs;
    std::vector<core::VariationId> rows;
    for (const core::Lifter &lifter : m_session.lifters())
        if (const auto *lift = m_estimates.of(lifter.id, core::Lift::bench)) {
            lifters.push_back(lifter.id);
            touch.push_back(core::touchReadings(*lift));
            readiness.push_back(core::readinessReadings(*lift, checkIns));
            logs.push_back(core::carryLog(*lift));
            rows = lift->rows;
        }
    m_watcher.setFuture(QtConcurrent::run([=] {
        Found found{strength::learnTouch(touch), {}, core::whatCarriedOver(logs, rows)};
        const auto effects = strength::readinessEffects(readiness);
        for (size_t i = 0; i < lifters.size(); ++i)
            found.readiness.emplace(lifters[i], effects[i]);
        return found;
    }));
}

void Insights::take()
{
    m_first = false;
    if (m_stale) {
        work();
        return;
    }
    m_found = m_watcher.result();
    Q_EMIT changed();
}

} // namespace ui
