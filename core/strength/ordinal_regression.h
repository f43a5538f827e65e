#pragma once

#include <Eigen/Dense>
#include <vector>

/// Regression of scores whose order counts but whose distances do not: the proportional-odds
/// (cumulative logit) model,
///   P(score <= k) = F(threshold_k - x' slope),   F(u) = 1 / (1 + exp(-u)),
/// with thresholds in rising order. Source: McCullagh (1980), J R Stat Soc B 42(2):109-142.
///
/// The parameters are held as (first threshold, ln of each further gap between thresholds, slopes),
/// so that any real vector is a valid one and a normal belief about it makes sense.
namespace strength {

/// n observations of p covariates.
struct OrdinalData
{
    int categories = 2;         ///< >= 2; scores run from 0 to categories - 1
    Eigen::MatrixXd covariates; ///< n x p
    std::vector<int> score;     ///< n
    Eigen::VectorXd weight;     ///< n, >= 0; 1 = counts as one observation

    [[nodiscard]] int parameters() const { return categories - 1 + int(covariates.cols()); }
};

struct NormalBelief
{
    Eigen::VectorXd mean;
    Eigen::MatrixXd covariance;
};

struct OrdinalFit
{
    NormalBelief parameters; ///< mode and inverse curvature of the posterior (Laplace)
    bool converged = false;
};

/// Weighted log likelihood. Where asked for, also its first and second derivatives by the
/// parameters.
[[nodiscard]] double ordinalLogLikelihood(const OrdinalData &data,
    const Eigen::VectorXd &parameters, Eigen::VectorXd *gradient = nullptr,
    Eigen::MatrixXd *hessian = nullptr);

/// Mode of the posterior by damped Newton steps from the prior's mean. Without data the prior comes
/// back.
/// @param prior  of as many parameters; its covariance positive definite. A wide one gives the
///        maximum likelihood estimate.
/// @throws std::invalid_argument for sizes that do not match or a score out of range
[[nodiscard]] OrdinalFit fitOrdinal(const OrdinalData &data, const NormalBelief &prior);
/// The same from a guess, such as the mode of much the same data: the better it is, the sooner.
[[nodiscard]] OrdinalFit fitOrdinal(
    const OrdinalData &data, const NormalBelief &prior, const Eigen::VectorXd &start);

/// The thresholds in rising order, categories - 1 of them.
[[nodiscard]] Eigen::VectorXd ordinalThresholds(const Eigen::VectorXd &parameters, int categories);

/// P(score <= category) at `covariates`, for a category below the highest.
[[nodiscard]] double chanceUpTo(const Eigen::VectorXd &parameters, int categories, int category,
    const Eigen::VectorXd &covariates);

} // namespace strength
