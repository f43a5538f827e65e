#include "tests/core/strength/nile.h"

#include <gmock/gmock.h>

#include <cmath>
#include <limits>
#include <numbers>

using namespace strength;

namespace {
constexpr double kNoData = std::numeric_limits<double>::quiet_NaN();
/// As good as the exact diffuse start of the book: its trace is below 1e-9.
constexpr Belief kDiffuse{0.0, 1e15};
} // namespace

TEST(LocalLevel, NileFilterAgreesWithTheBook)
{
    const auto readings = nileReadings();
    const LevelPath path = followLevel(readings, kDiffuse, kNileStepVariance);
    // Durbin & Koopman (2012), sec. 2.2 and 2.9: a2, P2, a3, P3 (index 0 is 1871).
    EXPECT_NEAR(path.predicted[1].mean, 1120.0, 1e-4);
    EXPECT_NEAR(path.predicted[1].variance, 16568.1, 1e-4);
    EXPECT_NEAR(path.predicted[2].mean, 1140.9278, 1e-4);
    EXPECT_NEAR(path.predicted[2].variance, 9368.8364, 1e-4);
    // Steady state P = r (k + sqrt(k^2 + 4 k)) / 2, k = q / r.
    EXPECT_NEAR(path.predicted[99].variance, 5501.2579, 1e-3);
    // The likelihood of the diffuse start leaves out the first reading.
    const double first = -0.5 * (std::log(2.0 * std::numbers::pi * (1e15 + 15099.0)));
    EXPECT_NEAR(path.logLikelihood - first, -632.5456, 1e-3);
}

TEST(LocalLevel, NileSmootherAgreesWithTheBook)
{
    const auto readings = nileReadings();
    const LevelPath path = followLevel(readings, kDiffuse, kNileStepVariance);
    EXPECT_NEAR(path.smoothed[0].mean, 1111.6683, 1e-3);
    EXPECT_NEAR(path.smoothed[0].variance, 4032.158, 1e-2);
    EXPECT_NEAR(path.smoothed[49].mean, 834.7633, 1e-4);
    EXPECT_NEAR(path.smoothed[49].variance, 2326.757, 1e-2);
    EXPECT_NEAR(path.smoothed[99].mean, 798.3703, 1e-4);
}

TEST(LocalLevel, AMissingReadingWidensTheVarianceByOneStepAndKeepsTheMean)
{
    const std::vector<LevelReading> readings{{1.0, 1.0}, {kNoData, 1.0}, {2.0, 1.0}};
    const LevelPath path = followLevel(readings, {0.0, 1.0}, 0.25);
    EXPECT_DOUBLE_EQ(path.filtered[1].mean, path.filtered[0].mean);
    EXPECT_DOUBLE_EQ(path.filtered[1].variance, path.filtered[0].variance + 0.25);
    // Looking back, the gap lies between its neighbours and is known better than ahead.
    EXPECT_GT(path.smoothed[1].mean, path.smoothed[0].mean);
    EXPECT_LT(path.smoothed[1].mean, path.smoothed[2].mean);
    EXPECT_LT(path.smoothed[1].variance, path.filtered[1].variance);
}

TEST(LocalLevel, VariancesOutOfBoundsAreRefused)
{
    const std::vector<LevelReading> one{{1.0, 1.0}};
    const std::vector<LevelReading> exact{{1.0, 0.0}};
    EXPECT_THROW((void)followLevel(one, {0.0, 0.0}, 1.0), std::invalid_argument);
    EXPECT_THROW((void)followLevel(one, {0.0, 1.0}, -1.0), std::invalid_argument);
    EXPECT_THROW((void)followLevel(one, {0.0, 1.0}, kNoData), std::invalid_argument);
    EXPECT_THROW((void)followLevel(exact, {0.0, 1.0}, 1.0), std::invalid_argument);
    EXPECT_TRUE(followLevel({}, {0.0, 1.0}, 1.0).smoothed.empty());
}
