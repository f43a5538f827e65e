#pragma once

#include "core/loads/lift_estimate.h"
#include "core/strength/interval.h"

#include <vector>

/// What a lifter's own sets say of a variation's ratio to the competition lift, over time.
namespace core {

struct RatioPoint
{
    double day = 0.0;         ///< middle of its weeks, days since 1970-01-01
    strength::Interval ratio; ///< mean and 90 % interval of its rated sets

    friend bool operator==(const RatioPoint &, const RatioPoint &) = default;
};

/// Rows of the estimate of the variations that have sets, those with the most first; without the
/// competition lift.
[[nodiscard]] std::vector<int> trainedRows(const LiftEstimate &lift);

/// Eight weeks at a time, where these hold four rated sets without a miss.
/// @param row  of the variation in the estimate
[[nodiscard]] std::vector<RatioPoint> ratiosOverTime(const LiftEstimate &lift, int row);

} // namespace core
