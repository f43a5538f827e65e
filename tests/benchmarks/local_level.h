#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace benchmarks {

/// A level in ln units with its variance, one a week; NaN where there is none.
struct LevelSeries
{
    std::vector<double> mean;
    std::vector<double> variance;
};

struct LocalLevel
{
    std::vector<LevelSeries> filtered; ///< one a series
    std::vector<LevelSeries> smoothed;
    double fitSeconds = 0.0;
    double smoothSeconds = 0.0; ///< one pass of filter and smoother over all series
};

/// Local levels of weekly series (NaN = no data) by statsmodels, through tests/benchmarks/
/// local_level.py. Empty where /usr/bin/python3 or the library is missing.
[[nodiscard]] std::optional<LocalLevel> localLevel(std::span<const std::vector<double>> series);

} // namespace benchmarks
