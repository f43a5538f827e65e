#pragma once

#include "core/strength/touch_hold.h"

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

/// Worlds of touch scores with a known touch hold. The first has the form of the model that is
/// tried on them, the others have not.
namespace simulators {

struct TouchLifter
{
    std::vector<strength::TouchReading> readings;
    int lastDay = 0;
    std::vector<double> hold; ///< true hold on the last day, by wanted score - 1
};

struct TouchTruth
{
    std::string_view name;
    std::string_view what;
    double link;      ///< 0 = logistic noise, 1 = normal noise
    double lapses;    ///< share of the scores that are written down blindly
    double gapSpread; ///< how far lifters' steps differ, SD of the ln
    double sessionSd; ///< a day's touch, share of the max
    double driftSd;   ///< of the hold in a week, share of the max
    double formSd;    ///< by which the estimated max of a day is off, share
};

[[nodiscard]] std::span<const TouchTruth> touchTruths();

[[nodiscard]] std::vector<TouchLifter> simulateTouch(
    const TouchTruth &truth, std::uint64_t seed, int lifters);

} // namespace simulators
