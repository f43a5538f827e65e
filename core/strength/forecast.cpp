#include "core/strength/forecast.h"

#include "core/strength/interval.h"
#include "core/strength/prescription.h"
#include "core/strength/week.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

namespace strength {

namespace {

/// Sessions by the Sunday that ends their week, in the order of the log.
using Weeks = std::map<int, std::vector<const TrainingSession *>>;

Weeks byWeek(const LifterLog &log)
{
    Weeks weeks;
    for (const TrainingSession &session : log.sessions)
        weeks[sundayOf(session.day)].push_back(&session);
    return weeks;
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

/// P(the cap falls short of what the load asks for).
double missChance(const Band &loadWithoutReserve, double loadKg)
{
    const double sd = sdOfLn(loadWithoutReserve.low90, loadWithoutReserve.high90);
    const double z = std::log(loadKg / loadWithoutReserve.kg) / sd;
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

void forecastSession(const LifterEstimate &estimate, std::span<const VariationPrior> variations,
    const TrainingSession &session, SetForecast forecast, std::vector<SetForecast> &forecasts)
{
    forecast.day = session.day;
    for (size_t i = 0; i < session.sets.size(); ++i) {
        const TrainingSet &set = session.sets[i];
        const int tried = set.reps + (set.missed ? 1 : 0);
        const int asked = std::max(set.repsPlanned.value_or(tried), tried);
        if (asked < 1 || set.leadReps > 0)
            continue;
        const PlannedSet planned{set.variation, asked, 0.0, int(i)};
        const auto reserve = reserveAt(estimate, session.day, variations, planned, set.loadKg);
        const auto limit = loadFor(estimate, session.day, variations, planned);
        if (!reserve || !limit)
            continue;
        forecast.rir =
            std::clamp(reserve->value + asked - set.reps + estimate.rating.bias.value, 0.0, 9.0);
        forecast.missChance = missChance(*limit, set.loadKg);
        forecast.missed = set.missed || set.reps < asked;
        forecast.saidRir = set.rpe ? std::optional(10.0 - *set.rpe) : std::nullopt;
        forecasts.push_back(forecast);
    }
}

} // namespace

std::vector<SetForecast> forecastWeeks(
    std::span<const LifterLog> logs, std::span<const VariationPrior> variations)
{
    std::vector<Weeks> weeks;
    std::vector<int> sundays;
    std::vector<LifterLog> known; // what was known so far
    for (const LifterLog &log : logs) {
        weeks.push_back(byWeek(log));
        for (const auto &[sunday, sessions] : weeks.back())
            sundays.push_back(sunday);
        known.push_back({log.sex, log.bodyweightKg, {}});
    }
    std::sort(sundays.begin(), sundays.end());
    sundays.erase(std::unique(sundays.begin(), sundays.end()), sundays.end());

    std::vector<SetForecast> forecasts;
    std::vector<UsualRir> usual(logs.size());
    for (const int sunday : sundays) {
        const std::vector<LifterEstimate> estimates = estimateRoster(known, variations);
        for (size_t i = 0; i < logs.size(); ++i) {
            const auto sessions = weeks[i].find(sunday);
            if (sessions == weeks[i].end())
                continue;
            SetForecast forecast;
            forecast.lifter = int(i);
            forecast.usualRir = usual[i].mean();
            for (const TrainingSession *session : sessions->second)
                forecastSession(estimates[i], variations, *session, forecast, forecasts);
            for (const TrainingSession *session : sessions->second) {
                usual[i].add(*session);
                known[i].sessions.push_back(*session);
            }
        }
    }
    return forecasts;
}

} // namespace strength
