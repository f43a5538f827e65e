#pragma once

#include "core/strength/interval.h"
#include "core/strength/pooled_regression.h"

#include <span>
#include <vector>

/// What readiness before a session tells of the day form.
///
/// The form of a session is regressed on the readiness said before it, by lifter, pooled over the
/// roster. The estimator's forms are already pulled toward zero by their own doubt; taken as they
/// are they would halve the effect. Each is turned back into what its session said by itself, with
/// the noise that this had.
namespace strength {

struct ReadinessReading
{
    double readiness = 0.0; ///< 1 (worst) .. 5 (best)
    Interval factor;        ///< the session's form, as DayForm::factor
    double formSd = 0.0;    ///< LifterEstimate::formSd of the lifter, > 0
};

/// One lifter's habit.
struct ReadinessEffect
{
    /// ln of the max per point of readiness, below and above 3.
    Eigen::Vector2d slope = Eigen::Vector2d::Zero();
    Eigen::Matrix2d covariance = Eigen::Matrix2d::Zero();
    /// Points of readiness below (<= 0) and above 3, mean of the lifter's sessions.
    Eigen::Vector2d usual = Eigen::Vector2d::Zero();
    int sessions = 0;                   ///< of the lifter behind it
    double lowest = 3.0, highest = 3.0; ///< readiness seen from the lifter

    /// Factor on the day's max at a readiness, against the lifter's usual. Beyond what was seen
    /// from the lifter it stays where it was at the edge.
    [[nodiscard]] Interval factorAt(double readiness) const;
};

/// Points below (<= 0) and above the middle of the scale.
[[nodiscard]] Eigen::Vector2d readinessPoints(double readiness);

/// One effect a lifter, in order.
[[nodiscard]] std::vector<ReadinessEffect> readinessEffects(
    std::span<const std::vector<ReadinessReading>> lifters);

} // namespace strength
