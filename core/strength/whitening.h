#pragma once

#include <Eigen/Dense>

namespace strength {

/// Rows whose errors are independent with variance 1 (in units of the noise), and the logs of the
/// scales that they were divided by.
struct Whitened
{
    Eigen::VectorXd y;
    Eigen::MatrixXd x;
    double logScales = 0.0;
};

/// Regression on a level that wanders, y = X b + level + noise, the level a random walk from 0 and
/// Var noise = 1 / weight, as one with independent errors: what the level's filter did not foresee.
/// Source: Harvey (1989), Forecasting, Structural Time Series Models and the Kalman Filter, sec.
/// 3.4; from memory.
/// @param y          NaN marks a week without a reading
/// @param stepRatio  variance of the walk's step / variance of the noise at weight 1
[[nodiscard]] Whitened whiten(const Eigen::VectorXd &y, const Eigen::VectorXd &weight,
    const Eigen::MatrixXd &x, double stepRatio);

} // namespace strength
