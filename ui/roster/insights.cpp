#include "ui/roster/insights.h"

#include "core/advice/readiness_advice.h"
#include "core/review/touch_review.h"
#include "ui/roster/open_roster.h"

#include <QtConcurrent/QtConcurrentRun>
#include <chrono>

namespace ui {

namespace {
using namespace std::chrono_literals;
constexpr auto kQuiet = 3s;
} // namespace

Insights::Insights(OpenRoster &roster, Estimates &estimates, QObject *parent)
    : QObject(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_found{strength::learnTouch({}), {}, {}}
{
    m_quiet.setSingleShot(true);
    m_quiet.setInterval(kQuiet);
    connect(&m_quiet, &QTimer::timeout, this, &Insights::work);
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &Insights::take);
    connect(&estimates, &Estimates::rosterFitted, this, &Insights::work);
    connect(&roster, &OpenRoster::changed, this, [this](const core::RosterChange &change) {
        if (change.has<core::CheckIn>())
            m_quiet.start();
    });
}

Insights::~Insights()
{
    m_stop.request_stop();
    m_watcher.waitForFinished();
}

const strength::ReadinessEffect *Insights::readiness(core::LifterId lifter) const
{
    const auto it = m_found.readiness.find(lifter);
    return it == m_found.readiness.end() ? nullptr : &it->second;
}

Insights::Found Insights::find(const core::RosterStore::ReaderSource &readers,
    const std::vector<core::Lifter> &lifters, const Estimates::Fits &fits,
    const std::stop_token &stop)
try {
    const std::vector<core::CheckIn> checkIns = readers()->checkIns();
    std::vector<core::LifterId> ids;
    std::vector<std::vector<strength::TouchReading>> touch;
    std::vector<std::vector<strength::ReadinessReading>> readiness;
    std::vector<strength::CarryLog> logs;
    std::vector<core::VariationId> rows;
    for (const core::Lifter &lifter : lifters)
        if (const auto found = fits.find({lifter.id, core::Lift::bench}); found != fits.end()) {
            const core::LiftEstimate &lift = *found->second;
            ids.push_back(lifter.id);
            touch.push_back(core::touchReadings(lift));
            readiness.push_back(core::readinessReadings(lift, checkIns));
            logs.push_back(core::carryLog(lift));
            rows = lift.rows;
        }
    // Each of these takes a while; a roster that is being closed does not wait for the next.
    Found found{strength::learnTouch(touch), {}, {}};
    if (stop.stop_requested())
        return found;
    found.carriedOver = core::whatCarriedOver(logs, rows);
    if (stop.stop_requested())
        return found;
    const auto effects = strength::readinessEffects(readiness);
    for (size_t i = 0; i < ids.size(); ++i)
        found.readiness.emplace(ids[i], effects[i]);
    return found;
} catch (const core::StorageError &trouble) {
    return {{}, {}, {}, trouble};
} catch (const std::exception &e) {
    return {{}, {}, {},
        core::StorageError(
            Insights::tr(
                "What the roster says of touch, readiness and carry-over could not be worked out."),
            QString::fromUtf8(e.what()))};
}

void Insights::work()
{
    m_quiet.stop();
    m_stale = m_watcher.isRunning();
    if (!m_stale)
        m_watcher.setFuture(QtConcurrent::run(&Insights::find, m_roster.readers(),
            m_roster.lifters(), m_estimates.all(), m_stop.get_token()));
}

void Insights::take()
{
    m_first = false;
    if (m_stale) {
        work();
        return;
    }
    Found found = m_watcher.result();
    if (found.trouble)
        m_roster.tell(*found.trouble);
    else
        m_found = std::move(found);
    Q_EMIT changed();
}

} // namespace ui
