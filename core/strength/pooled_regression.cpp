#include "core/strength/pooled_regression.h"

#include <stdexcept>

namespace strength {

namespace {

constexpr int kRounds = 60;

/// What a group's data say by themselves: precision and precision times estimate.
struct Evidence
{
    Eigen::MatrixXd precision;
    Eigen::VectorXd pull;
};

Evidence evidenceOf(const RegressionGroup &group, Eigen::Index count)
{
    if (group.covariates.cols() != count || group.response.size() != group.covariates.rows()
        || group.variance.size() != group.covariates.rows())
        throw std::invalid_argument("poolRegressions: sizes do not match");
    if (group.variance.size() > 0 && !(group.variance.minCoeff() > 0.0))
        throw std::invalid_argument("poolRegressions: a variance is above 0");
    const Eigen::VectorXd weight = group.variance.cwiseInverse();
    const Eigen::MatrixXd weighted = group.covariates.transpose() * weight.asDiagonal();
    return {weighted * group.covariates, weighted * group.response};
}

} // namespace

PooledRegression poolRegressions(std::span<const RegressionGroup> groups, const PooledStart &start)
{
    const auto count = start.mean.size();
    const Eigen::MatrixXd identity = Eigen::MatrixXd::Identity(count, count);
    std::vector<Evidence> evidence;
    evidence.reserve(groups.size());
    for (const RegressionGroup &group : groups)
        evidence.push_back(evidenceOf(group, count));

    PooledRegression pooled;
    pooled.spread = start.spread;
    const Eigen::VectorXd startPrecision = start.counts * start.spread.cwiseAbs2().cwiseInverse();
    for (int round = 0; round < kRounds; ++round) {
        // The mean at once, by what each group alone says of it: moving it by expectation steps
        // would take ages where the spread is small.
        const Eigen::MatrixXd between = pooled.spread.cwiseAbs2().asDiagonal();
        Eigen::MatrixXd known = startPrecision.asDiagonal();
        Eigen::VectorXd pull = startPrecision.cwiseProduct(start.mean);
        for (const Evidence &group : evidence) {
            // (between + precision^-1)^-1 without inverting a precision that may be singular
            const Eigen::PartialPivLU<Eigen::MatrixXd> lu(identity + group.precision * between);
            known += lu.solve(group.precision);
            pull += lu.solve(group.pull);
        }
        pooled.mean = {known.partialPivLu().solve(pull), known.partialPivLu().solve(identity)};

        const Eigen::VectorXd prior = pooled.spread.cwiseAbs2().cwiseInverse();
        pooled.groups.clear();
        Eigen::VectorXd squares =
            start.counts * (start.spread.cwiseAbs2() + (start.mean - pooled.mean.mean).cwiseAbs2());
        for (const Evidence &group : evidence) {
            Eigen::MatrixXd precision = group.precision;
            precision.diagonal() += prior;
            const Eigen::LLT<Eigen::MatrixXd> solver(precision);
            pooled.groups.push_back(
                {solver.solve(group.pull + prior.cwiseProduct(pooled.mean.mean)),
                    solver.solve(identity)});
            squares += (pooled.groups.back().mean - pooled.mean.mean).cwiseAbs2()
                + pooled.groups.back().covariance.diagonal();
        }
        pooled.spread = (squares / (start.counts + double(groups.size()))).cwiseSqrt();
    }

    // The doubt about the mean is part of the doubt about each group.
    for (NormalBelief &group : pooled.groups) {
        const Eigen::MatrixXd byMean =
            group.covariance * pooled.spread.cwiseAbs2().cwiseInverse().asDiagonal();
        group.covariance += byMean * pooled.mean.covariance * byMean.transpose();
    }
    return pooled;
}

} // namespace strength
