#pragma once

#include <optional>
#include <span>
#include <vector>

/// How good were forecasts of sets, made before the sets were done? Needs no true max, so it works
/// on any real log.
namespace strength {

/// What was expected of one set, and what came of it.
struct SetForecast
{
    int lifter = 0;
    int day = 0;
    double rir = 0.0;              ///< reps in reserve that the lifter was expected to say
    double usualRir = 0.0;         ///< mean of what the lifter had said before: the yardstick
    double missChance = 0.0;       ///< 0..1
    std::optional<double> saidRir; ///< 10 - rating; empty = not rated
    bool missed = false;           ///< or fell short of its plan
};

/// Forecasts of a like chance of a miss beside how often a miss came.
struct ReliabilityRow
{
    double from = 0.0; ///< chances from (included) ...
    double to = 0.0;   ///< ... to (left out, but for 1)
    int sets = 0;
    double meanChance = 0.0;
    double observed = 0.0; ///< share that was missed
};

/// A quantity without sets behind it is NaN.
struct Score
{
    int rated = 0;         ///< sets with a saying to compare with
    double rirError = 0.0; ///< mean absolute error of the RIR said, reps
    double rirBias = 0.0;  ///< mean of said - expected, reps
    /// Mean absolute error of the lifter's usual RIR: any model must beat it.
    double usualError = 0.0;
    int sets = 0;
    int missed = 0;
    double brier = 0.0;     ///< mean of (chance - missed)^2: 0 is perfect
    double baseBrier = 0.0; ///< Brier score of the log's own miss rate, known only afterwards
    std::vector<ReliabilityRow> reliability; ///< rows without sets are left out
};

/// Brier (1950), Monthly Weather Review 78:1-3: the score of chances; the reliability table shows
/// whether 10 % meant 10 %. Rows are finer near 0, where most sets lie.
/// @throws std::invalid_argument for a chance outside 0..1 or a number that is not finite
[[nodiscard]] Score score(std::span<const SetForecast> forecasts);

} // namespace strength
