#pragma once

#include "core/strength/touch_roster.h"

#include <span>

/// The regression that the roster and each hold share: proportional odds of a score on the share of
/// the max.
namespace strength {

inline constexpr int kTouchParameters = kTouchSteps; ///< first threshold, three gaps, one slope
inline constexpr int kTouchSlope = kTouchParameters - 1;
inline constexpr int kFewestTouchSets = 12; ///< below, nothing is said
inline constexpr double kCentreShare = 0.85, kShareUnit = 0.05;

/// What the share is in the regression, and back.
[[nodiscard]] inline double touchCovariate(double share)
{
    return (share - kCentreShare) / kShareUnit;
}
[[nodiscard]] inline double shareOf(double covariate)
{
    return kCentreShare + kShareUnit * covariate;
}

struct WeightedTouch
{
    TouchReading reading;
    double weight = 1.0;
};

/// @throws std::invalid_argument for a share not above 0 or a score off the scale
[[nodiscard]] OrdinalData touchData(std::span<const WeightedTouch> readings);

} // namespace strength
