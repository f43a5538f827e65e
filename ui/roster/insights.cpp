#include "ui/roster/insights.h"

#include "core/advice/readiness_advice.h"
#include "core/review/touch_review.h"
#include "ui/roster/today.h"

#include <chrono>

namespace ui {

namespace {
using namespace std::chrono_literals;
constexpr auto kQuietBeforeInsights = 3s;

/// By lifter, as the rows come.
template <class Row> std::map<core::LifterId, std::vector<Row>> byLifter(std::vector<Row> rows)
{
    std::map<core::LifterId, std::vector<Row>> found;
    for (Row &row : rows)
        found[row.lifter].push_back(std::move(row));
    return found;
}

core::GivenScore scoreOf(const core::RosterReader &reader, const std::vector<core::Lifter> &lifters,
    const std::vector<core::Variation> &catalogue, QDate today)
{
    const QDate from = today.addDays(-kScoredDays);
    auto given = byLifter(reader.given(from, today));
    auto cards = byLifter(reader.cards(from, today));
    auto sessions = byLifter(reader.sessions());
    core::GivenScore score{};
    for (const core::Lifter &lifter : lifters)
        if (given.contains(lifter.id))
            score = score
                + core::scoreGiven(
                    core::asGiven(cards[lifter.id], lifter, catalogue, given[lifter.id]),
                    sessions[lifter.id], catalogue);
    return score;
}

} // namespace

Insights::Insights(OpenRoster &roster, Estimates &estimates, QObject *parent)
    : QObject(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_found{strength::learnTouch({}), {}, {}, {}}
    , m_work(
          roster, [this](std::optional<Found> found) { take(std::move(found)); },
          tr("What the roster says of touch, readiness and carry-over could not be worked out."))
{
    m_quiet.setSingleShot(true);
    m_quiet.setInterval(kQuietBeforeInsights);
    connect(&m_quiet, &QTimer::timeout, this, &Insights::work);
    connect(&estimates, &Estimates::rosterFitted, this, &Insights::work);
    connect(&roster, &OpenRoster::changed, this, [this](const core::RosterChange &change) {
        if (change.has<core::CheckIn>())
            m_quiet.start();
    });
}

const strength::ReadinessEffect *Insights::readiness(core::LifterId lifter) const
{
    const auto it = m_found.readiness.find(lifter);
    return it == m_found.readiness.end() ? nullptr : &it->second;
}

Insights::Found Insights::find(const core::RosterReader &reader,
    const std::vector<core::Lifter> &lifters, const std::vector<core::Variation> &catalogue,
    const Estimates::Fits &fits, QDate today, const std::stop_token &stop)
{
    const std::vector<core::CheckIn> checkIns = reader.checkIns();
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
    Found found{strength::learnTouch(touch), {}, {}, {}};
    if (stop.stop_requested())
        return found;
    found.carriedOver = core::whatCarriedOver(logs, rows);
    if (stop.stop_requested())
        return found;
    const auto effects = strength::readinessEffects(readiness);
    for (size_t i = 0; i < ids.size(); ++i)
        found.readiness.emplace(ids[i], effects[i]);
    if (stop.stop_requested())
        return found;
    found.score = scoreOf(reader, lifters, catalogue, today);
    return found;
}

void Insights::work()
{
    m_quiet.stop();
    m_work.startNext([lifters = m_roster.lifters(), catalogue = m_roster.variations(),
                         fits = m_estimates.all(), today = m_roster.today().date()](
                         const core::RosterReader &reader, const core::Watch &watch) {
        return find(reader, lifters, catalogue, fits, today, watch.stop);
    });
}

void Insights::take(std::optional<Found> found)
{
    m_first = false;
    if (found)
        m_found = std::move(*found);
    Q_EMIT changed();
}

} // namespace ui
