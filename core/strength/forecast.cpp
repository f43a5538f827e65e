#include "core/strength/forecast.h"

#include "core/strength/hard_sets.h"
#include "core/strength/lifter_filter.h"
#include "core/strength/pooling.h"
#include "core/strength/validation.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace strength {

namespace {

constexpr int kQuarterDays = 91;

using Sessions = std::vector<const TrainingSession *>;

Sessions inOrder(const LifterLog &log)
{
    Sessions sessions;
    for (const TrainingSession &session : log.sessions)
        if (!session.sets.empty())
            sessions.push_back(&session);
    std::stable_sort(sessions.begin(), sessions.end(),
        [](const auto *a, const auto *b) { return a->day < b->day; });
    return sessions;
}

std::vector<LifterLog> before(std::span<const LifterLog> logs, int day)
{
    std::vector<LifterLog> known;
    for (const LifterLog &log : logs) {
        known.push_back({log.sex, log.bodyweightKg, {}});
        for (const TrainingSession &session : log.sessions)
            if (session.day < day)
                known.back().sessions.push_back(session);
    }
    return known;
}

/// Mean of the RIR said so far.
struct UsualRir
{
    double sum = 0.0;
    int count = 0;

    void add(const TrainingSession &session)
    {
        for (const TrainingSet &set : session.sets)
            if (set.rpe) {
                sum += 10.0 - *set.rpe;
                ++count;
            }
    }
    /// Two reps where nothing was said yet, the middle of the usual range (common practice, no
    /// source).
    [[nodiscard]] double mean() const { return count > 0 ? sum / count : 2.0; }
};

int repsAsked(const TrainingSet &set)
{
    return std::max(set.repsPlanned.value_or(1), set.reps + (set.missed ? 1 : 0));
}

/// Chance that fewer than `asked` reps can be done. The gradient is taken at the load at which just
/// these can: elsewhere the curve bends too much for a straight line.
double missChance(
    const SetModel &model, const StateBelief &belief, TrainingSet set, int asked, double hardBefore)
{
    const double plannedKg = set.loadKg;
    Expectation possible = model.possibleReps(set, hardBefore);
    for (int round = 0; round < 8; ++round) {
        // Newton's steps in ln(load), none of them wild.
        const double step = (possible.value - asked) / std::max(possible.byCap, 1.0);
        set.loadKg *= std::exp(std::clamp(step, -0.3, 0.3));
        possible = model.possibleReps(set, hardBefore);
    }
    possible.gradient.scale(1.0 / std::max(possible.byCap, 1.0)); // reps to ln(load)
    const double sd = std::hypot(std::sqrt(belief.varianceOf(possible.gradient)), kSetNoise);
    return 0.5 * std::erfc(std::log(set.loadKg / plannedKg) / sd / std::numbers::sqrt2);
}

/// Forecasts of one session by a filter that has not read it.
void forecastSession(LifterFilter filter, const TrainingSession &session, SetForecast forecast,
    std::vector<SetForecast> &forecasts)
{
    filter.startWeeksUpTo(session.day);
    filter.expectSession(session.sets);
    const StateBelief &belief = filter.belief();
    const SetModel model{belief.mean(), filter.slots(), filter.priors()};
    const double mostSaid = 10.0 - filter.ratingWays().lowest;
    forecast.day = session.day;
    double hardBefore = 0.0;
    for (const TrainingSet &set : session.sets) {
        const int asked = repsAsked(set);
        Expectation left = model.possibleReps(set, hardBefore);
        const double reserve = left.value - asked;
        left.value -= set.reps;
        // Lifters say no more in reserve than they ever did: it is where their scale ends.
        forecast.rir = std::clamp(model.saidReserve(left).value, 0.0, mostSaid);
        forecast.missChance = missChance(model, belief, set, asked, hardBefore);
        forecast.missed = set.missed || set.reps < asked;
        forecast.saidRir.reset();
        if (set.rpe && !set.missed)
            forecast.saidRir = 10.0 - *set.rpe;
        forecasts.push_back(forecast);
        hardBefore = hardSetsAfter(hardBefore, reserve);
    }
}

/// Reads a log from its start and forecasts the sessions of the days from `from` to before `to`.
void forecastQuarter(const Sessions &sessions, LifterFilter filter, int from, int to,
    SetForecast forecast, std::vector<SetForecast> &forecasts)
{
    UsualRir usual;
    for (const TrainingSession *session : sessions) {
        if (session->day >= to)
            break;
        if (session->day >= from && filter.hasStarted()) {
            forecast.usualRir = usual.mean();
            forecastSession(filter, *session, forecast, forecasts);
        }
        filter.startWeeksUpTo(session->day);
        filter.addSession(session->day, session->sets);
        usual.add(*session);
    }
}

} // namespace

std::vector<SetForecast> forecastSessions(
    std::span<const LifterLog> logs, std::span<const VariationPrior> variations)
{
    checkVariations(variations);
    std::vector<Sessions> sessions;
    std::vector<int> days;
    for (size_t i = 0; i < logs.size(); ++i) {
        checkLog(logs[i], variations.size(), i);
        sessions.push_back(inOrder(logs[i]));
        for (const TrainingSession *session : sessions.back())
            days.push_back(session->day);
    }
    std::sort(days.begin(), days.end());

    std::vector<SetForecast> forecasts;
    const RosterPriors published = publishedPriors(variations);
    // Quarters without a session are passed over, so that a stray date costs nothing.
    for (auto next = days.begin(); next != days.end();) {
        const int from = *next;
        const int to = from + kQuarterDays;
        const RosterPriors priors = logs.size() > 1 && next != days.begin()
            ? pooledPriors(before(logs, from), published)
            : published;
        for (size_t i = 0; i < logs.size(); ++i) {
            SetForecast forecast;
            forecast.lifter = int(i);
            forecastQuarter(sessions[i], LifterFilter(priors, populationMax(logs[i])), from, to,
                forecast, forecasts);
        }
        next = std::lower_bound(next, days.end(), to);
    }
    return forecasts;
}

} // namespace strength
