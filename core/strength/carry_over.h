#pragma once

#include "core/strength/interval.h"
#include "core/strength/ordinal_regression.h"

#include <Eigen/Dense>
#include <optional>
#include <span>
#include <vector>

/// Which variations a rising competition max followed.
///
/// Each week's readings of the competition max (single sets, not a smoothed line: smoothing spreads
/// a change over its neighbours and makes errors alike) are a level that wanders, plus noise, plus
/// what the work of the weeks before has left: a hard lift in variation v raises the level by
/// b_v evenly over the `kCarryWeeks` weeks that follow, beyond what a hard lift of any kind does.
/// The lifter's own starting level and trend are taken out. The wandering level's errors are
/// whitened by its filter (generalised least squares, whitening.h), its share of the noise is found
/// by restricted maximum likelihood, and errors that are alike within a lifter beyond that widen
/// the intervals (clustered standard errors: Liang & Zeger 1986, Biometrika 73(1):13-22). The b_v
/// are pulled toward zero by as much as they scatter (empirical Bayes).
///
/// It is an association in the log, no experiment: a coach who puts a variation where the lifter
/// was improving anyway will see it here.
namespace strength {

inline constexpr int kCarryWeeks = 3;

struct CarryWeek
{
    std::optional<double> lnMax; ///< mean reading of the competition max, ln kg; empty = none
    int sessions = 0;            ///< behind the reading, > 0 where there is one
    Eigen::VectorXd hardLifts;   ///< by variation; row 0 is the competition lift
};

/// Weeks of one lifter without gaps.
using CarryLog = std::vector<CarryWeek>;

struct CarryOver
{
    int variation = 0;
    double usualLifts = 0.0; ///< hard lifts in a week that used it, mean
    int weeks = 0;           ///< that used it
    int lifters = 0;         ///< who used it
    bool enough = false;     ///< false: too few weeks or lifters to say anything
    /// Change of the competition max `kCarryWeeks` after one week of the usual dose in place of
    /// as many hard lifts of other kinds, as a factor. Without `enough` the prior's.
    Interval factor{1.0, 1.0, 1.0};

    /// Whether the interval lies on one side of no change.
    [[nodiscard]] bool isClear() const
    {
        return enough && (factor.low90 > 1.0 || factor.high90 < 1.0);
    }
};

/// One a variation but the competition lift, which the others are measured against.
/// @param variations  columns of CarryWeek::hardLifts
/// @throws std::invalid_argument where a week has another number of columns
[[nodiscard]] std::vector<CarryOver> carryOver(std::span<const CarryLog> lifters, int variations);

} // namespace strength
