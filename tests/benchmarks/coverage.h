#pragma once

#include "core/strength/estimator.h"

#include <cstdint>
#include <span>
#include <string>
#include <vector>

/// How often the 90 % intervals of the review's estimates hold the simulated truth.
namespace benchmarks {

struct Coverage
{
    std::string world;
    std::string what;
    int judged = 0;
    int covered = 0;
    int silent = 0;    ///< "not enough to say"
    double bias = 0.0; ///< sum of estimate - truth
    double squares = 0.0;
    double width = 0.0; ///< sum of the intervals' widths

    void add(const strength::Interval &interval, double truth);
    [[nodiscard]] double percent() const { return judged ? 100.0 * covered / judged : 0.0; }
};

/// Seeds to tune on and seeds to report on, apart.
inline constexpr std::uint64_t kCoverageTrain = 21;
inline constexpr std::uint64_t kCoverageHeldOut = 8201;

/// Touch hold of every world and wanted score, over `rosters` rosters of `lifters`.
[[nodiscard]] std::vector<Coverage> touchCoverage(std::uint64_t seed, int rosters, int lifters);

/// Effect of each variation on the competition max.
[[nodiscard]] std::vector<Coverage> carryCoverage(std::uint64_t seed, int rosters, int lifters);

/// Shift of the day's max at a readiness of 2.
[[nodiscard]] std::vector<Coverage> readinessCoverage(std::uint64_t seed, int rosters, int lifters);

} // namespace benchmarks
