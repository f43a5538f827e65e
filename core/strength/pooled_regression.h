#pragma once

#include "core/strength/ordinal_regression.h"

#include <Eigen/Dense>
#include <span>
#include <vector>

/// Regressions of many groups that lend each other strength:
///   y = X b_g + e,  e ~ N(0, variance),  b_g ~ N(m, diag s^2),
/// with m and s^2 by expectation maximisation. A weak start stands for what is known before: it
/// counts as so many groups more, so that few groups do not pretend to know their spread.
/// Source: Lindley & Smith (1972), J R Stat Soc B 34(1):1-41; Dempster, Laird & Rubin (1977).
namespace strength {

struct RegressionGroup
{
    Eigen::MatrixXd covariates; ///< n x p
    Eigen::VectorXd response;   ///< n
    Eigen::VectorXd variance;   ///< n, > 0, of the noise
};

struct PooledStart
{
    Eigen::VectorXd mean;   ///< p
    Eigen::VectorXd spread; ///< p, SD between groups, > 0
    double counts = 4.0;    ///< groups
};

struct PooledRegression
{
    NormalBelief mean;                ///< of the groups' mean coefficients
    Eigen::VectorXd spread;           ///< SD between groups
    std::vector<NormalBelief> groups; ///< of each one's own; the doubt about the mean is in it
};

/// @throws std::invalid_argument for sizes that do not match or a variance not above 0
[[nodiscard]] PooledRegression poolRegressions(
    std::span<const RegressionGroup> groups, const PooledStart &start);

} // namespace strength
