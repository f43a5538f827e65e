#pragma once

#include "core/strength/estimator.h"
#include "core/strength/score.h"
#include "tests/benchmarks/measures.h"
#include "tests/simulators/truths.h"

#include <optional>
#include <string>
#include <vector>

/// The engine and all baselines judged on one world.
namespace benchmarks {

/// Weeks at the start of a log that are not judged: every method needs some sets first.
inline constexpr int kWarmUpWeeks = 4;
/// Between the weeks at which the engine is run anew on the log as it stood then.
inline constexpr int kRefitEveryWeeks = 6;

struct EvaluationSize
{
    int lifters = 24;
    int weeks = 52;
    bool statsmodels = true; ///< with the local level; needs /usr/bin/python3
};

/// One method and all its estimates: each lifter, the end of each week after the warm-up.
struct Method
{
    std::string name;
    std::vector<Judged> judged;
};

/// One estimate as it stood when it was made: the engine run on the log up to that day.
struct Refit
{
    Judged then;
    std::optional<double> laterKg; ///< the filtered estimate of that week from the whole log
    bool enough = false;           ///< its standing was Standing::enough
};

struct Evaluation
{
    std::vector<Method> methods;                  ///< the engine's filtered estimates first
    std::vector<Refit> refits;                    ///< every kRefitEveryWeeks
    std::vector<strength::SetForecast> forecasts; ///< of each session from those before
};

/// What refits tell, in per cent.
struct RefitSummary
{
    Measures then;
    double hindsight =
        0.0; ///< RMS of laterKg / then - 1: what the filtered path owes to the future
    double saidEnough = 0.0;  ///< share whose standing was `enough`
    double worstEnough = 0.0; ///< largest |error| among those
    int beyondEight = 0;      ///< number of those that were off by more than 8 %
};
[[nodiscard]] RefitSummary summarise(const std::vector<Refit> &refits);

/// Judges on the rosters of all `seeds` together.
[[nodiscard]] Evaluation evaluate(const simulators::Truth &truth,
    std::span<const std::uint64_t> seeds, const EvaluationSize &size);

/// The logs up to and with `day`.
[[nodiscard]] std::vector<strength::LifterLog> cutOff(
    std::span<const strength::LifterLog> logs, int day);

} // namespace benchmarks
