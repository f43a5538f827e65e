#include "core/strength/ordinal_regression.h"

#include "core/strength/interval.h"

#include <gtest/gtest.h>
#include <stdexcept>

using namespace strength;

namespace {

OrdinalData someData()
{
    OrdinalData data;
    data.categories = 5;
    data.covariates.resize(12, 2);
    data.score.resize(12);
    data.weight.resize(12);
    for (int i = 0; i < 12; ++i) {
        data.covariates(i, 0) = -1.0 + 0.25 * i;
        data.covariates(i, 1) = (i * 5 % 7) / 3.0 - 1.0;
        data.score[size_t(i)] = (i / 3 + i % 2) % 5;
        data.weight[i] = 0.5 + 0.1 * i;
    }
    return data;
}

NormalBelief prior(int count, double sd)
{
    return {Eigen::VectorXd::Zero(count), Eigen::MatrixXd::Identity(count, count) * sd * sd};
}

} // namespace

TEST(OrdinalRegression, DerivativesAgreeWithFiniteDifferences)
{
    const OrdinalData data = someData();
    Eigen::VectorXd at(6);
    at << -0.7, 0.1, -0.4, 0.3, 0.9, -0.5;
    Eigen::VectorXd gradient;
    Eigen::MatrixXd hessian;
    (void)ordinalLogLikelihood(data, at, &gradient, &hessian);
    constexpr double kStep = 1e-5;
    for (int j = 0; j < 6; ++j) {
        Eigen::VectorXd up = at, down = at;
        up[j] += kStep;
        down[j] -= kStep;
        Eigen::VectorXd gradientUp, gradientDown;
        const double above = ordinalLogLikelihood(data, up, &gradientUp);
        const double below = ordinalLogLikelihood(data, down, &gradientDown);
        EXPECT_NEAR(gradient[j], (above - below) / (2 * kStep), 1e-7) << j;
        for (int i = 0; i < 6; ++i)
            EXPECT_NEAR(hessian(i, j), (gradientUp[i] - gradientDown[i]) / (2 * kStep), 1e-6);
    }
}

TEST(OrdinalRegression, ChancesOfAllScoresAreAWhole)
{
    // A property: e^(log likelihood) of one observation, summed over its possible scores.
    OrdinalData one = someData();
    one.covariates = one.covariates.row(3).eval();
    one.weight = Eigen::VectorXd::Ones(1);
    for (const double far : {0.0, 30.0, -30.0}) {
        Eigen::VectorXd at(6);
        at << far, 0.1, -0.4, 0.3, 0.9, -0.5;
        double whole = 0.0;
        for (int score = 0; score < 5; ++score) {
            one.score = {score};
            whole += std::exp(ordinalLogLikelihood(one, at));
        }
        EXPECT_NEAR(whole, 1.0, 1e-12);
    }
}

TEST(OrdinalRegression, WithoutDataThePriorComesBack)
{
    OrdinalData none;
    none.categories = 5;
    none.covariates.resize(0, 1);
    const OrdinalFit fit = fitOrdinal(none, prior(5, 0.7));
    EXPECT_TRUE(fit.converged);
    EXPECT_TRUE(fit.parameters.mean.isZero(1e-12));
    EXPECT_TRUE(fit.parameters.covariance.isApprox(prior(5, 0.7).covariance, 1e-12));
}

TEST(OrdinalRegression, TwoScoresAreTheLogitOfTheirShare)
{
    // With two categories and no covariate the mode is the logit of the share: ln(3 / 7), variance
    // 1 / (n p (1 - p)). Textbook result of the binomial.
    OrdinalData coin;
    coin.categories = 2;
    coin.covariates.resize(10, 0);
    coin.score = {0, 0, 0, 1, 1, 1, 1, 1, 1, 1};
    coin.weight = Eigen::VectorXd::Ones(10);
    const OrdinalFit fit = fitOrdinal(coin, prior(1, 1e4));
    EXPECT_NEAR(fit.parameters.mean[0], std::log(3.0 / 7.0), 1e-6);
    EXPECT_NEAR(fit.parameters.covariance(0, 0), 1.0 / (10 * 0.3 * 0.7), 1e-6);
}

TEST(OrdinalRegression, AScoreNeverSeenAndPerfectSeparationStayFinite)
{
    OrdinalData data = someData();
    for (int i = 0; i < 12; ++i)
        data.score[size_t(i)] = data.covariates(i, 0) > 0.4 ? 4 : 0;
    const OrdinalFit fit = fitOrdinal(data, prior(6, 3.0));
    EXPECT_TRUE(fit.converged);
    EXPECT_TRUE(fit.parameters.mean.allFinite());
    EXPECT_GT(fit.parameters.mean[4], 1.0);
    EXPECT_TRUE(fit.parameters.covariance.allFinite());
}

TEST(OrdinalRegression, SizesThatDoNotMatchAreTheCallersBug)
{
    OrdinalData data = someData();
    EXPECT_THROW((void)fitOrdinal(data, prior(5, 1.0)), std::invalid_argument);
    data.score[2] = 5;
    EXPECT_THROW((void)fitOrdinal(data, prior(6, 1.0)), std::invalid_argument);
}

TEST(OrdinalRegression, EverySizeHasToMatchByItself)
{
    const auto isRefused = [](auto change) {
        OrdinalData data = someData();
        NormalBelief before = prior(6, 1.0);
        change(data, before);
        try {
            (void)fitOrdinal(data, before);
        } catch (const std::invalid_argument &) {
            return true;
        }
        return false;
    };
    EXPECT_FALSE(isRefused([](OrdinalData &, NormalBelief &) {}));
    EXPECT_TRUE(isRefused([](OrdinalData &d, NormalBelief &) { d.score.pop_back(); }));
    EXPECT_TRUE(isRefused(
        [](OrdinalData &d, NormalBelief &) { d.weight.conservativeResize(d.weight.size() - 1); }));
    EXPECT_TRUE(isRefused([](OrdinalData &d, NormalBelief &) { d.categories = 1; }));
    EXPECT_TRUE(isRefused([](OrdinalData &d, NormalBelief &) { d.score[0] = -1; }));
    EXPECT_TRUE(isRefused([](OrdinalData &d, NormalBelief &) { d.score[0] = 5; }));
    EXPECT_TRUE(
        isRefused([](OrdinalData &, NormalBelief &p) { p.mean = Eigen::VectorXd::Zero(5); }));
    EXPECT_TRUE(isRefused(
        [](OrdinalData &, NormalBelief &p) { p.covariance = Eigen::MatrixXd::Identity(5, 6); }));
    EXPECT_TRUE(isRefused(
        [](OrdinalData &, NormalBelief &p) { p.covariance = Eigen::MatrixXd::Identity(6, 5); }));
}
