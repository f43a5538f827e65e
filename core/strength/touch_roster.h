#pragma once

#include "core/strength/ordinal_regression.h"

#include <span>
#include <vector>

/// What the touch scores of a roster lend each of its lifters.
///
/// Each one's thresholds and slope are pulled toward the roster's, mean and spread of which come by
/// expectation maximisation with a weak start (common practice, no source) that counts as three
/// lifters. Sets of one session share that day's touch; the likelihood is flattened by the factor
/// by which the scores' sums over sessions scatter more than their sets would alone
/// (quasi-likelihood: McCullagh & Nelder 1989, Generalized Linear Models, 2nd ed., sec. 4.5 and ch.
/// 9; from memory). A hold wanders: how far in a week is learned from the roster too.
namespace strength {

inline constexpr int kTouchSteps = 5;

struct TouchReading
{
    int day = 0;
    int session = 0;    ///< sets with the same number share a day's touch
    double share = 0.0; ///< load / estimated max of the variation on the day, > 0
    int score = 1;      ///< 1..5

    friend bool operator==(const TouchReading &, const TouchReading &) = default;
};

/// What the roster says about any lifter of it.
struct TouchRoster
{
    NormalBelief prior;        ///< of a lifter's parameters
    double clustering = 1.0;   ///< >= 1; sets of a session count as one over this
    double driftPerWeek = 0.0; ///< SD of a hold's step in a week, share of the max
};

/// @throws std::invalid_argument for a share not above 0 or a score off the scale
[[nodiscard]] TouchRoster learnTouch(std::span<const std::vector<TouchReading>> lifters);

} // namespace strength
