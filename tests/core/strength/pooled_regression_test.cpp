#include "core/strength/pooled_regression.h"

#include "core/strength/interval.h"
#include "core/strength/readiness_effect.h"

#include <gtest/gtest.h>
#include <stdexcept>

using namespace strength;

namespace {

/// Groups whose coefficient is read `readings` times without error, noise variance 1.
RegressionGroup constantGroup(double value, int readings)
{
    return {Eigen::MatrixXd::Ones(readings, 1), Eigen::VectorXd::Constant(readings, value),
        Eigen::VectorXd::Ones(readings)};
}

const PooledStart kStart{Eigen::VectorXd::Zero(1), Eigen::VectorXd::Ones(1), 1e-6};

} // namespace

TEST(PooledRegression, ShrinksAsTheEightSchoolsDo)
{
    // Rubin (1981), J Educ Stat 6(4):377-401; Gelman et al., Bayesian Data Analysis, 3rd ed., sec.
    // 5.5: effects of coaching and their standard errors. At its most likely spread, 0, all
    // schools get the precision-weighted mean 7.7 with standard error 4.1. (From memory.)
    const double effect[] = {28, 8, -3, 7, -1, 1, 18, 12};
    const double error[] = {15, 10, 16, 11, 9, 11, 10, 18};
    std::vector<RegressionGroup> schools;
    for (int i = 0; i < 8; ++i) {
        schools.push_back(constantGroup(effect[i], 1));
        schools.back().variance[0] = error[i] * error[i];
    }
    const PooledRegression pooled = poolRegressions(
        schools, {Eigen::VectorXd::Zero(1), Eigen::VectorXd::Constant(1, 0.1), 1e-6});
    EXPECT_NEAR(pooled.mean.mean[0], 7.7, 0.1);
    EXPECT_NEAR(std::sqrt(pooled.mean.covariance(0, 0)), 4.1, 0.1);
}

TEST(PooledRegression, GroupsWithMuchDataKeepTheirOwn)
{
    const RegressionGroup groups[] = {
        constantGroup(-1.0, 1000), constantGroup(1.0, 1000), constantGroup(3.0, 1)};
    const PooledRegression pooled = poolRegressions(groups, kStart);
    EXPECT_NEAR(pooled.groups[0].mean[0], -1.0, 0.01);
    EXPECT_NEAR(pooled.groups[1].mean[0], 1.0, 0.01);
    EXPECT_LT(pooled.groups[2].mean[0], 3.0) << "one reading is pulled toward the others";
    EXPECT_GT(pooled.groups[2].mean[0], pooled.mean.mean[0]);
}

TEST(PooledRegression, WithoutGroupsTheStartStands)
{
    const PooledRegression pooled =
        poolRegressions({}, {Eigen::VectorXd::Ones(1), Eigen::VectorXd::Ones(1), 4.0});
    EXPECT_DOUBLE_EQ(pooled.mean.mean[0], 1.0);
    EXPECT_NEAR(pooled.spread[0], 1.0, 1e-12);
    EXPECT_NEAR(pooled.mean.covariance(0, 0), 0.25, 1e-12);
}

TEST(PooledRegression, BadSizesAndVariancesAreTheCallersBug)
{
    RegressionGroup group = constantGroup(1.0, 3);
    group.variance[1] = 0.0;
    EXPECT_THROW((void)poolRegressions({&group, 1}, kStart), std::invalid_argument);
    group = constantGroup(1.0, 3);
    group.response.resize(2);
    EXPECT_THROW((void)poolRegressions({&group, 1}, kStart), std::invalid_argument);
}

TEST(ReadinessEffect, TurnsShrunkFormsBackIntoWhatTheSessionsSaid)
{
    // Forms that the estimator has halved: twice the slope is the truth, not the slope seen.
    std::vector<std::vector<ReadinessReading>> lifters(12);
    const double formSd = 0.02;
    for (auto &lifter : lifters)
        for (int i = 0; i < 200; ++i) {
            const double readiness = 1.0 + i % 5;
            const double halved = 0.5 * 0.01 * (readiness - 3.0);
            lifter.push_back({readiness, factorOf(halved, formSd * std::sqrt(0.5)), formSd});
        }
    for (const ReadinessEffect &effect : readinessEffects(lifters)) {
        EXPECT_NEAR(effect.slope[0], 0.01, 0.001);
        EXPECT_NEAR(effect.slope[1], 0.01, 0.001);
        EXPECT_NEAR(effect.usual.sum(), 0.0, 1e-12);
        EXPECT_GT(effect.factorAt(5.0).low90, 1.0);
        EXPECT_NEAR(effect.factorAt(3.0).value, 1.0, 0.001);
        EXPECT_EQ(effect.factorAt(9.0).value, effect.factorAt(5.0).value)
            << "not beyond what was seen";
    }
    // A lifter without sessions has the roster's slope, with more doubt.
    lifters.push_back({});
    const auto effects = readinessEffects(lifters);
    EXPECT_NEAR(effects.back().slope[0], effects.front().slope[0], 0.003);
    EXPECT_GT(effects.back().covariance(0, 0), effects.front().covariance(0, 0));
}
