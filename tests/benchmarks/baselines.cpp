#include "tests/benchmarks/baselines.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace benchmarks {

namespace {

using strength::LifterLog;
using strength::TrainingSet;
using Equation = double (*)(double, double);

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kMostReps = 10.0;

enum class Unrated { leftOut, withoutReserve };

/// Reps to failure that a competition set stands for; empty where it stands for none.
std::optional<double> repsToFailure(const TrainingSet &set, Unrated unrated)
{
    if (set.variation != 0 || set.leadReps > 0 || set.reps < 1)
        return std::nullopt;
    if (!set.rpe && !set.missed && unrated == Unrated::leftOut)
        return std::nullopt;
    const double reps = set.reps + (set.rpe ? 10.0 - *set.rpe : 0.0);
    return reps <= kMostReps ? std::optional(reps) : std::nullopt;
}

/// Calls `use` with load and reps to failure of each set of the `window` days up to `day`.
template <class Use>
void forSets(const LifterLog &log, int day, int window, Unrated unrated, Use use)
{
    for (const strength::TrainingSession &session : log.sessions)
        if (session.day <= day && session.day > day - window)
            for (const TrainingSet &set : session.sets)
                if (const auto reps = repsToFailure(set, unrated))
                    use(set.loadKg, *reps);
}

std::optional<double> bestEpley(const LifterLog &log, int day)
{
    std::optional<double> best;
    forSets(log, day, 28, Unrated::withoutReserve,
        [&](double load, double reps) { best = std::max(best.value_or(0.0), epley(load, reps)); });
    return best;
}

template <Equation equation, int weeks> std::optional<double> mean(const LifterLog &log, int day)
{
    double sum = 0.0;
    int count = 0;
    forSets(log, day, 7 * weeks, Unrated::leftOut, [&](double load, double reps) {
        sum += equation(load, reps);
        ++count;
    });
    return count > 0 ? std::optional(sum / count) : std::nullopt;
}

constexpr std::array kBaselines{
    Baseline{"best Epley, 4 weeks", bestEpley},
    Baseline{"mean Epley, 3 weeks", mean<epley, 3>},
    Baseline{"mean Epley, 6 weeks", mean<epley, 6>},
    Baseline{"mean Brzycki, 3 weeks", mean<brzycki, 3>},
    Baseline{"mean Brzycki, 6 weeks", mean<brzycki, 6>},
};

} // namespace

double epley(double loadKg, double reps)
{
    return reps <= 1.0 ? loadKg : loadKg * (1.0 + reps / 30.0);
}

double brzycki(double loadKg, double reps)
{
    return 36.0 * loadKg / (37.0 - reps);
}

std::span<const Baseline> windowBaselines()
{
    return kBaselines;
}

std::vector<double> carriedForward(
    const Baseline &baseline, const LifterLog &log, std::span<const int> days)
{
    std::vector<double> estimates;
    double last = kNaN;
    for (const int day : days) {
        last = baseline.estimate(log, day).value_or(last);
        estimates.push_back(last);
    }
    return estimates;
}

std::vector<double> weeklyLogEpley(const LifterLog &log, std::span<const int> sundays)
{
    std::vector<double> series;
    for (const int sunday : sundays) {
        double sum = 0.0;
        int count = 0;
        forSets(log, sunday, 7, Unrated::leftOut, [&](double load, double reps) {
            sum += std::log(epley(load, reps));
            ++count;
        });
        series.push_back(count > 0 ? sum / count : kNaN);
    }
    return series;
}

} // namespace benchmarks
