#include "core/strength/carry_over.h"
#include "core/strength/ordinal_regression.h"
#include "core/strength/pooled_regression.h"
#include "core/strength/readiness_effect.h"
#include "core/strength/whitening.h"

#include <cmath>
#include <gtest/gtest.h>
#include <stdexcept>

using namespace strength;

TEST(WhiteningBounds, TheScalesAreTheRootOfTheCovariancesDeterminant)
{
    // ln |V| / 2, V written out: what an innovation form leaves of it (Harvey 1989, sec. 3.4).
    const int n = 9;
    Eigen::VectorXd y = Eigen::VectorXd::LinSpaced(n, 0.0, 1.0), weight(n);
    Eigen::MatrixXd covariance(n, n);
    const double ratio = 0.4;
    for (int i = 0; i < n; ++i) {
        weight[i] = 1.0 + i % 4;
        for (int j = 0; j < n; ++j)
            covariance(i, j) = ratio * std::min(i, j) + (i == j ? 1.0 / weight[i] : 0.0);
    }
    const Whitened white = whiten(y, weight, Eigen::MatrixXd::Ones(n, 1), ratio);
    EXPECT_NEAR(white.logScales, 0.5 * std::log(covariance.determinant()), 1e-12);
    EXPECT_NEAR(white.y.squaredNorm(), y.dot(covariance.inverse() * y), 1e-12);
    EXPECT_EQ(Whitened{}.logScales, 0.0);
}

TEST(PooledRegressionBounds, OneReadingWithoutNoiseIsRefusedToo)
{
    const PooledStart start{Eigen::VectorXd::Zero(1), Eigen::VectorXd::Ones(1), 4.0};
    RegressionGroup group{
        Eigen::MatrixXd::Ones(1, 1), Eigen::VectorXd::Ones(1), Eigen::VectorXd::Zero(1)};
    EXPECT_THROW((void)poolRegressions({&group, 1}, start), std::invalid_argument);
    group.variance[0] = 0.01;
    EXPECT_NO_THROW((void)poolRegressions({&group, 1}, start));
    group = {Eigen::MatrixXd(0, 1), Eigen::VectorXd(0), Eigen::VectorXd(0)};
    EXPECT_NO_THROW((void)poolRegressions({&group, 1}, start)) << "nothing read, nothing wrong";
    EXPECT_EQ(PooledStart{}.counts, 4.0);
}

TEST(PooledRegressionBounds, OneGroupIsTheMeanOfItsReadingAndTheStart)
{
    // The mean is known to spread^2 / counts from the start, and to spread^2 + noise by the group.
    const PooledStart start{Eigen::VectorXd::Zero(1), Eigen::VectorXd::Ones(1), 2.0};
    const RegressionGroup group{Eigen::MatrixXd::Ones(1, 1), Eigen::VectorXd::Constant(1, 3.0),
        Eigen::VectorXd::Constant(1, 0.5)};
    const PooledRegression pooled = poolRegressions({&group, 1}, start);
    double variance = 1.0, mean = 0.0;
    for (int round = 0; round < 500; ++round) {
        const double known = 2.0 + 1.0 / (variance + 0.5);
        mean = 3.0 / (variance + 0.5) / known;
        const double own = 1.0 / (1.0 / variance + 1.0 / 0.5);
        const double ofGroup = own * (mean / variance + 3.0 / 0.5);
        variance = (2.0 * (1.0 + mean * mean) + std::pow(ofGroup - mean, 2.0) + own) / 3.0;
    }
    EXPECT_NEAR(pooled.mean.mean[0], mean, 1e-9);
    EXPECT_NEAR(pooled.spread[0] * pooled.spread[0], variance, 1e-9);
}

TEST(OrdinalRegressionBounds, ChancesOfScoresAreTheLogistic)
{
    // McCullagh (1980): P(score <= k) = 1 / (1 + exp(slope x - threshold k)).
    Eigen::VectorXd parameters(5);
    parameters << -0.7, std::log(0.5), std::log(1.5), std::log(0.8), 1.1;
    const double thresholds[] = {-0.7, -0.2, 1.3, 2.1};
    for (const double x : {-3.0, 0.0, 2.0})
        for (int k = 0; k < 4; ++k) {
            const Eigen::VectorXd at = Eigen::VectorXd::Constant(1, x);
            EXPECT_NEAR(chanceUpTo(parameters, 5, k, at),
                1.0 / (1.0 + std::exp(1.1 * x - thresholds[k])), 1e-12);
            EXPECT_NEAR(ordinalThresholds(parameters, 5)[k], thresholds[k], 1e-12);
        }
    EXPECT_EQ(OrdinalData{}.categories, 2);
    EXPECT_FALSE(OrdinalFit{}.converged);
}

TEST(OrdinalRegressionBounds, FromAFarStartTheSameTopIsFound)
{
    // The log posterior has one top; damped steps find it from afar too.
    OrdinalData data;
    data.categories = 4;
    data.covariates.resize(40, 1);
    data.weight = Eigen::VectorXd::Ones(40);
    for (int i = 0; i < 40; ++i) {
        data.covariates(i, 0) = -2.0 + 0.1 * i;
        data.score.push_back(std::min((i + 5 * (i % 3)) / 12, 3));
    }
    const NormalBelief prior{Eigen::VectorXd::Zero(4), 4.0 * Eigen::MatrixXd::Identity(4, 4)};
    const OrdinalFit near = fitOrdinal(data, prior);
    EXPECT_TRUE(near.converged);
    for (const double far : {-2.0, 2.0}) {
        const OrdinalFit found = fitOrdinal(data, prior, Eigen::VectorXd::Constant(4, far));
        EXPECT_TRUE(found.converged);
        EXPECT_TRUE(found.parameters.mean.isApprox(near.parameters.mean, 1e-6)) << far;
    }
}

TEST(CarryOverBounds, AReadingCountsByItsSessionsAndAsOneAtTheLeast)
{
    const auto factorWith = [](int sessions) {
        std::vector<CarryLog> logs(2);
        for (int lifter = 0; lifter < 2; ++lifter)
            for (int t = 0; t < 60; ++t) {
                CarryWeek week;
                week.hardLifts = Eigen::VectorXd::Zero(2);
                week.hardLifts << 10.0, (t + lifter) / 4 % 2 == 0 ? 5.0 : 0.0;
                week.lnMax = 4.6 + 0.01 * std::sin(2.4 * t + lifter);
                week.sessions = t % 3 == 0 ? sessions : 4;
                logs[size_t(lifter)].push_back(week);
            }
        return carryOver(logs, 2)[0].factor.value;
    };
    EXPECT_EQ(factorWith(0), factorWith(1));
    EXPECT_NE(factorWith(1), factorWith(2));
    EXPECT_NE(factorWith(1), factorWith(4));
}
