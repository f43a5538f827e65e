#include "tests/core/strength/local_level.h"
#include "tests/core/strength/nile.h"

#include <Eigen/Cholesky>
#include <gmock/gmock.h>

#include <limits>

using namespace strength;

namespace {

/// The book starts from no belief at all, so that the first year gives a = 1120, P = 15099 and the
/// second is predicted with P = 16568.1: from there on the path is the book's.
local_level::Path nileFromTheSecondYear()
{
    return local_level::follow(
        std::span(kNile).subspan(1), {1120.0, 16568.1}, kNileReadingVariance, kNileStepVariance);
}

} // namespace

TEST(ChainSmoother, NileFilterAgreesWithTheBook)
{
    const auto path = nileFromTheSecondYear();
    // Durbin & Koopman (2012), sec. 2.2 and 2.9.
    EXPECT_NEAR(path.predicted[1].mean, 1140.9278, 1e-4);
    EXPECT_NEAR(path.predicted[1].variance, 9368.8364, 1e-4);
    EXPECT_NEAR(path.logLikelihood, -632.5456, 1e-4);
    // Steady state P = r (k + sqrt(k^2 + 4 k)) / 2, k = q / r, sec. 2.11.
    EXPECT_NEAR(path.predicted.back().variance, 5501.2579, 1e-3);
}

TEST(ChainSmoother, NileSmootherAgreesWithTheBook)
{
    const auto path = nileFromTheSecondYear();
    EXPECT_NEAR(path.smoothed[48].mean, 834.7633, 1e-4); // 1920
    EXPECT_NEAR(path.smoothed[48].variance, 2326.757, 1e-3);
    EXPECT_NEAR(path.smoothed[98].mean, 798.3703, 1e-4); // 1970
    // 1871 itself, from a vague start as the book's sec. 2.9 works it.
    const auto vague =
        local_level::follow(kNile, {0.0, 1e6}, kNileReadingVariance, kNileStepVariance);
    EXPECT_NEAR(vague.smoothed[0].mean, 1107.204, 1e-3);
    EXPECT_NEAR(vague.smoothed[0].variance, 4015.965, 1e-3);
}

TEST(ChainSmoother, AStepWithoutDataWidensTheVarianceAndKeepsTheMean)
{
    const std::vector<double> series{1.0, std::numeric_limits<double>::quiet_NaN(), 2.0};
    const auto path = local_level::follow(series, {0.0, 1.0}, 1.0, 0.25);
    EXPECT_DOUBLE_EQ(path.filtered[1].mean, path.filtered[0].mean);
    EXPECT_DOUBLE_EQ(path.filtered[1].variance, path.filtered[0].variance + 0.25);
    EXPECT_GT(path.smoothed[1].mean, path.smoothed[0].mean);
    EXPECT_LT(path.smoothed[1].mean, path.smoothed[2].mean);
    EXPECT_LT(path.smoothed[1].variance, path.filtered[1].variance);
}

namespace {

/// A chain with slope and decay whose readings also feel two constants of the border, once by the
/// engine and once by conditioning one large normal vector.
struct SmallCase
{
    static constexpr int kWeeks = 5;
    RosterPriors priors = publishedPriors(std::vector<VariationPrior>{{1.0, 0.0, 1.0}});
    StateBelief start{
        ChainVector(4.6, 0.01, -0.05, 0.1), ChainVector(0.1, 0.02, 0.03, 0.4), priors};
    ChainStep step;
    std::vector<double> y{4.7, 4.62, 4.71, 4.66, 4.75};
    double noise = 0.02 * 0.02;

    SmallCase()
    {
        step.transition(level, slope) = 1.0;
        step.transition(slope, slope) = 0.9;
        step.transition(layoff, layoff) = 0.7;
        step.drift = ChainVector(0.0, 0.0, -0.01, 0.0);
        step.noise.diagonal() = ChainVector(1e-4, 1e-5, 1e-5, 1e-3);
    }
    Gradient reading(int week) const
    {
        Gradient gradient;
        gradient.add(level, 1.0);
        gradient.add(layoff, 1.0);
        gradient.add(lnKappa, 0.1 * (week - 2));
        gradient.add(fatigue, -double(week));
        gradient.add(ratingBias, 0.03);
        return gradient;
    }
};

} // namespace

TEST(ChainSmoother, AgreesWithConditioningOneLargeNormalVector)
{
    const SmallCase small;
    const int n = small.start.size();
    const int weeks = SmallCase::kWeeks;
    // All weeks' states at once: the border is the same in each, the chain moves.
    Eigen::VectorXd mean(n * weeks);
    Eigen::MatrixXd covariance = Eigen::MatrixXd::Zero(n * weeks, n * weeks);
    StateBelief ahead = small.start;
    ahead.startSession(0.0);
    Eigen::MatrixXd move = Eigen::MatrixXd::Identity(n, n);
    move.topLeftCorner(int(chainSlots), int(chainSlots)) = small.step.transition;
    for (int week = 0; week < weeks; ++week) {
        if (week > 0)
            ahead.advance(small.step);
        mean.segment(n * week, n) = ahead.mean();
        covariance.block(n * week, n * week, n, n) = ahead.covariance();
        for (int before = week - 1; before >= 0; --before) {
            const Eigen::MatrixXd cross = move * covariance.block(n * (week - 1), n * before, n, n);
            covariance.block(n * week, n * before, n, n) = cross;
            covariance.block(n * before, n * week, n, n) = cross.transpose();
        }
    }
    Eigen::MatrixXd all = Eigen::MatrixXd::Zero(weeks, n * weeks);
    Eigen::VectorXd y(weeks);
    for (int week = 0; week < weeks; ++week) {
        const Gradient gradient = small.reading(week);
        for (int k = 0; k < gradient.size; ++k)
            all(week, n * week + gradient.slot[size_t(k)]) += gradient.value[size_t(k)];
        y[week] = small.y[size_t(week)];
    }
    const Eigen::MatrixXd crossAll = covariance * all.transpose();
    const Eigen::MatrixXd sum =
        all * crossAll + small.noise * Eigen::MatrixXd::Identity(weeks, weeks);
    const Eigen::MatrixXd gain = sum.ldlt().solve(crossAll.transpose()).transpose();
    const Eigen::VectorXd posterior = mean + gain * (y - all * mean);
    const Eigen::MatrixXd spread = covariance - gain * crossAll.transpose();

    StateBelief belief = small.start;
    belief.startSession(0.0);
    std::vector<WeekNode> nodes;
    Eigen::VectorXd cross;
    for (int week = 0; week < weeks; ++week) {
        if (week > 0)
            belief.advance(small.step);
        const Gradient gradient = small.reading(week);
        belief.covarianceWith(gradient, cross);
        double expected = 0.0;
        for (int k = 0; k < gradient.size; ++k)
            expected += gradient.value[size_t(k)] * belief.mean()[gradient.slot[size_t(k)]];
        belief.update(cross,
            readPoint(small.y[size_t(week)], small.noise, expected, belief.varianceOf(gradient),
                Gross{}));
        nodes.push_back(weekNode(belief, small.step));
    }
    const auto smoothed = smoothWeeks(nodes, belief);
    for (int week = 0; week < weeks; ++week)
        for (int i = 0; i < chainSlots; ++i) {
            EXPECT_NEAR(smoothed[size_t(week)].chain[i], posterior[n * week + i], 1e-9);
            for (int j = 0; j < chainSlots; ++j)
                EXPECT_NEAR(smoothed[size_t(week)].covariance(i, j),
                    spread(n * week + i, n * week + j), 1e-10);
        }
    // The level's own move into a week: z' - transition z - drift.
    for (int week = 1; week < weeks; ++week) {
        Eigen::VectorXd row = Eigen::VectorXd::Zero(n * weeks);
        row[n * week + level] = 1.0;
        row.segment(n * (week - 1), int(chainSlots)) =
            -small.step.transition.row(level).transpose();
        const double square =
            std::pow(row.dot(posterior) - small.step.drift[level], 2.0) + row.dot(spread * row);
        EXPECT_NEAR(smoothed[size_t(week)].levelStepSquare, square, 1e-10);
    }
}
