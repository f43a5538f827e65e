#include "core/strength/pooled_regression.h"

#include "core/strength/interval.h"
#include "core/strength/readiness_effect.h"
#include "tests/core/strength/reference_values.h"

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

TEST(ReadinessEffects, SayOfAFixedLogWhatTheyAlwaysSaid)
{
    std::vector<std::vector<ReadinessReading>> lifters(3);
    for (int lifter = 0; lifter < 3; ++lifter)
        for (int session = 0; session < 12 + 9 * lifter; ++session) {
            const double readiness = 1.0 + 0.5 * ((5 * session + lifter) % 9);
            const double form = (0.004 + 0.003 * lifter) * (readiness - 3.2)
                + 0.006 * std::sin(1.7 * session + lifter);
            const double doubt = 0.008 + 0.009 * (session % 2); // of a form's SD of 0.018
            lifters[size_t(lifter)].push_back({readiness, factorOf(form, doubt), 0.018});
        }
    lifters[0].push_back({3.0, factorOf(0.05, 0.0179), 0.018}); // all prior, says nothing
    samples::Values found;
    for (const ReadinessEffect &effect : readinessEffects(lifters)) {
        found.emplace_back("below", effect.slope[0]);
        found.emplace_back("above", effect.slope[1]);
        found.emplace_back("doubt", effect.covariance(0, 0));
        found.emplace_back("both", effect.covariance(0, 1));
        found.emplace_back("usual", effect.usual.sum());
        found.emplace_back("at 2", effect.factorAt(2.0).low90);
        found.emplace_back("sessions", effect.sessions);
    }
    samples::expectReference(
        {{"below", 0.00767500477}, {"above", 0.00803617643}, {"doubt", 4.84374352e-05},
            {"both", -6.5383034e-06}, {"usual", -0.230769231}, {"at 2", 0.986642559},
            {"sessions", 13}, {"below", 0.0121310361}, {"above", 0.0114238123},
            {"doubt", 4.17059652e-05}, {"both", -1.20698712e-05}, {"usual", -0.0714285714},
            {"at 2", 0.9831335}, {"sessions", 21}, {"below", 0.0238222403}, {"above", 0.0180948749},
            {"doubt", 4.16147116e-05}, {"both", -1.15450726e-05}, {"usual", -1.11022302e-16},
            {"at 2", 0.973601866}, {"sessions", 30}},
        found);
}

TEST(ReadinessEffects, PointsAreCountedFromTheMiddleOfTheScale)
{
    EXPECT_EQ(readinessPoints(1.0), Eigen::Vector2d(-2.0, 0.0));
    EXPECT_EQ(readinessPoints(3.0), Eigen::Vector2d(0.0, 0.0));
    EXPECT_EQ(readinessPoints(4.5), Eigen::Vector2d(0.0, 1.5));
    const ReadinessEffect nobody;
    EXPECT_EQ(nobody.sessions, 0);
    EXPECT_EQ(nobody.factorAt(1.0).value, 1.0);
    EXPECT_EQ(nobody.factorAt(5.0).high90, 1.0);
}

TEST(PooledRegression, SizesThatDoNotMatchAreTheCallersBug)
{
    RegressionGroup group = constantGroup(1.0, 3);
    EXPECT_NO_THROW((void)poolRegressions({&group, 1}, kStart));
    group.response.conservativeResize(2);
    EXPECT_THROW((void)poolRegressions({&group, 1}, kStart), std::invalid_argument);
    group = constantGroup(1.0, 3);
    group.variance.conservativeResize(2);
    EXPECT_THROW((void)poolRegressions({&group, 1}, kStart), std::invalid_argument);
    group = constantGroup(1.0, 3);
    group.covariates = Eigen::MatrixXd::Ones(3, 2);
    EXPECT_THROW((void)poolRegressions({&group, 1}, kStart), std::invalid_argument);
    group = constantGroup(1.0, 3);
    group.variance[1] = 0.0;
    EXPECT_THROW((void)poolRegressions({&group, 1}, kStart), std::invalid_argument);
}

TEST(ReadinessEffects, AFormThatIsNearlyAllPriorSaysNothing)
{
    // Of a form's variance 5 % has to be the session's own word: doubt up to sqrt(0.95) of its SD.
    const auto slopeWith = [](double kept) {
        std::vector<std::vector<ReadinessReading>> lifters(1);
        for (int session = 0; session < 20; ++session)
            lifters[0].push_back({1.0 + session % 5,
                factorOf(0.01 * (session % 5), 0.02 * std::sqrt(1.0 - kept)), 0.02});
        return readinessEffects(lifters)[0].slope.norm();
    };
    EXPECT_EQ(slopeWith(0.0499), 0.0);
    EXPECT_GT(slopeWith(0.0501), 0.0);
    std::vector<std::vector<ReadinessReading>> unknown(1);
    unknown[0].push_back({2.0, factorOf(0.1, 0.0), 0.0});
    EXPECT_EQ(readinessEffects(unknown)[0].slope.norm(), 0.0) << "no form is known at all";
}

TEST(ReadinessEffects, BeforeAnyDataAnEffectIsWithinAPerCentAPoint)
{
    // Common practice, no source.
    const std::vector<std::vector<ReadinessReading>> nobody(1);
    const ReadinessEffect effect = readinessEffects(nobody)[0];
    EXPECT_EQ(effect.slope.norm(), 0.0);
    // The doubt of a lifter plus that of the mean of four: 0.008^2 (1 + 1 / 4).
    EXPECT_NEAR(effect.covariance(0, 0), 0.008 * 0.008 * 1.25, 1e-12);
    EXPECT_NEAR(effect.covariance(1, 1), 0.008 * 0.008 * 1.25, 1e-12);
    EXPECT_EQ(effect.lowest, 3.0);
    EXPECT_EQ(effect.highest, 3.0);
    EXPECT_EQ(effect.factorAt(1.0).low90, 1.0) << "nothing was seen, nothing is moved";
}
