#include "core/strength/lifter_fit.h"

#include "core/strength/hard_sets.h"
#include "core/strength/week.h"

#include <algorithm>

namespace strength {

namespace {

/// Indices of the sessions with sets, by day.
std::vector<int> sessionOrder(const LifterLog &log)
{
    std::vector<int> order;
    for (size_t i = 0; i < log.sessions.size(); ++i)
        if (!log.sessions[i].sets.empty())
            order.push_back(int(i));
    std::stable_sort(order.begin(), order.end(),
        [&](int a, int b) { return log.sessions[size_t(a)].day < log.sessions[size_t(b)].day; });
    return order;
}

/// The form of each session where the level and the constants are as they are known now.
void lookBackAtForms(LifterFit &fit, const LifterLog &log)
{
    Eigen::VectorXd state = fit.filter.belief().mean();
    const SetModel model{state, fit.filter.slots(), fit.filter.priors()};
    const RatingWays ways = fit.filter.ratingWays();
    for (LifterFit::Form &form : fit.forms) {
        state.head<chainSlots>() = fit.smoothed[form.week].chain;
        state[dayForm] = 0.0;
        double variance = fit.filter.formVariance();
        double hardBefore = 0.0;
        for (const TrainingSet &set : log.sessions[size_t(form.session)].sets) {
            const SetReadings readings = readingsOf(model, set, hardBefore, ways, false);
            const double at = state[dayForm];
            for (const Reading &reading : readings.all()) {
                const double by = reading.expectation.byCap;
                const Moments moments = reading.moments(
                    reading.expectation.value + by * (state[dayForm] - at), by * by * variance);
                state[dayForm] += variance * by * moments.shift;
                variance -= variance * by * moments.shrink * by * variance;
            }
            hardBefore = hardSetsAfter(hardBefore, set.missed ? 0.0 : readings.reserve);
        }
        form.mean = state[dayForm];
        form.variance = variance;
    }
}

} // namespace

LifterFit fitLifter(const LifterLog &log, const RosterPriors &priors, int today)
{
    LifterFit fit{LifterFilter(priors, populationMax(log)), {}, {}, {}, {}};
    const std::vector<int> order = sessionOrder(log);
    if (order.empty())
        return fit;
    const auto session = [&](size_t i) -> const TrainingSession & {
        return log.sessions[size_t(order[i])];
    };
    const int first = sundayOf(session(0).day);
    fit.lastDay = session(order.size() - 1).day;
    const size_t weeks = size_t(sundayOf(fit.lastDay) - first) / 7 + 1;
    std::vector<WeekNode> nodes;
    nodes.reserve(weeks);
    fit.weeks.reserve(weeks);
    fit.forms.reserve(order.size());
    for (size_t next = 0; fit.weeks.size() < weeks;) {
        LifterFit::Week week;
        week.sunday = first + 7 * int(fit.weeks.size());
        const ChainStep step = fit.filter.startWeek(std::min(session(next).day, week.sunday));
        // What lies further back has been outweighed long ago.
        constexpr size_t kTrailWeeks = 8;
        PullTrail *trail = weeks - fit.weeks.size() <= kTrailWeeks ? &fit.trail : nullptr;
        if (trail)
            trail->addStep(step.transition);
        for (; next < order.size() && session(next).day <= week.sunday; ++next) {
            if (trail)
                trail->startSession(order[next]);
            fit.filter.addSession(session(next).day, session(next).sets, trail);
            fit.forms.push_back({order[next], session(next).day, fit.weeks.size()});
            week.sets += int(session(next).sets.size());
        }
        const StateBelief &belief = fit.filter.belief();
        week.lnMax = lnMax(belief.mean());
        week.variance = lnMaxVariance(belief.covariance());
        week.footing = fit.filter.footing();
        nodes.push_back(weekNode(belief, step));
        fit.weeks.push_back(week);
    }
    fit.smoothed = smoothWeeks(nodes, fit.filter.belief());
    lookBackAtForms(fit, log);
    while (fit.filter.sunday() + 7 <= today)
        fit.trail.addStep(fit.filter.startWeek(fit.filter.sunday() + 7).transition);
    return fit;
}

} // namespace strength
