#pragma once

#include <span>
#include <vector>

/// The local level model, the simplest model of a level that drifts:
///   y_t = a_t + e_t, Var e_t = r_t;   a_{t+1} = a_t + w_t, Var w_t = q.
/// Source: Durbin & Koopman (2012), Time Series Analysis by State Space Methods, 2nd ed.,
/// sec. 2.2 (filter), 2.4 (smoother), 2.7 (missing observations).
namespace strength {

/// A normal belief about a level.
struct Belief
{
    double mean = 0.0;
    double variance = 0.0;
};

/// One reading of the level.
struct LevelReading
{
    double value = 0.0;    ///< NaN marks a step without data
    double variance = 1.0; ///< r_t > 0; not looked at where there is no data
};

/// All vectors hold one entry a reading.
struct LevelPath
{
    std::vector<Belief> predicted; ///< a_t given y_0 .. y_{t-1}
    std::vector<Belief> filtered;  ///< a_t given y_0 .. y_t
    std::vector<Belief> smoothed;  ///< a_t given all
    double logLikelihood = 0.0;    ///< of the readings under the model
};

/// Filters and smooths. A missing reading widens the variance by q and keeps the mean.
/// @param start  belief about a_0, variance > 0
/// @param stepVariance  q >= 0
/// @throws std::invalid_argument when a variance is out of bounds
[[nodiscard]] LevelPath followLevel(
    std::span<const LevelReading> readings, const Belief &start, double stepVariance);

} // namespace strength
