#include "core/strength/touch_roster.h"

#include "core/strength/touch_regression.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <stdexcept>

using namespace strength;

namespace {

using TouchReadings = std::vector<TouchReading>;

/// So many sets, each a session of its own, from `day` on; the touch slips a step for each 4 %
/// above `hold`.
void addTouches(TouchReadings &readings, int count, int day, double hold)
{
    for (int set = 0; set < count; ++set) {
        const double share = 0.74 + 0.02 * (7 * set % 12);
        readings.push_back({day + set, int(readings.size()), share,
            std::clamp(2 + int(std::ceil((share - hold) / 0.04)), 1, 5)});
    }
}

double driftOf(int first, int second, int secondDay)
{
    TouchReadings readings;
    addTouches(readings, first, 0, 0.80);
    addTouches(readings, second, secondDay, 0.92);
    return learnTouch({&readings, 1}).driftPerWeek;
}

} // namespace

TEST(TouchRosterBounds, WithoutReadingsTheStartStands)
{
    const TouchRoster nobody = learnTouch({});
    EXPECT_EQ(nobody.clustering, 1.0);
    EXPECT_DOUBLE_EQ(nobody.driftPerWeek, 0.0005);
    const std::vector<TouchReadings> silent(2);
    EXPECT_EQ(learnTouch(silent).prior.mean, nobody.prior.mean);
    EXPECT_EQ(learnTouch(silent).clustering, 1.0);
    // A touch that is light at 85 % and slips one step for about 8 % more.
    Eigen::VectorXd mean(5), variance(5);
    mean << 0.0, 0.7, 0.7, 0.7, 1.3;
    variance << 6.0, 0.5, 0.5, 0.5, 1.5;
    EXPECT_TRUE(nobody.prior.mean.isApprox(mean, 1e-12));
    EXPECT_TRUE(nobody.prior.covariance.diagonal().isApprox(variance, 1e-12));
    EXPECT_EQ(WeightedTouch{}.weight, 1.0) << "one observation";
}

TEST(TouchRosterBounds, SetsOfASessionThatAreAllAlikeCountAsOne)
{
    // By the definition: (4 g)^2 / (4 g^2) = 4, however little each of them says.
    for (const double share : {0.85, 0.60, 0.45}) {
        const std::vector<TouchReadings> one{TouchReadings(4, {0, 0, share, 1})};
        EXPECT_NEAR(learnTouch(one).clustering, 4.0, 1e-9) << share;
    }
}

TEST(TouchRosterBounds, DriftIsToldByNeighbouringWindowsOfADozenSets)
{
    // Windows of eight weeks, by the calendar.
    EXPECT_GT(driftOf(12, 12, 56), 0.0006);
    EXPECT_DOUBLE_EQ(driftOf(11, 12, 56), 0.0005) << "too few in the first";
    EXPECT_DOUBLE_EQ(driftOf(12, 11, 56), 0.0005);
    EXPECT_DOUBLE_EQ(driftOf(12, 12, 112), 0.0005) << "a window without sets between";
    EXPECT_DOUBLE_EQ(driftOf(12, 12, 44), 0.0005) << "both in one window";
    EXPECT_DOUBLE_EQ(driftOf(12, 12, 45), 0.0005) << "eleven of them in the first, and one";
}

TEST(TouchRosterBounds, ScoresAreOneToFiveAndSharesAboveNone)
{
    const auto data = [](double share, int score) {
        const WeightedTouch one{{0, 0, share, score}};
        return touchData({&one, 1});
    };
    EXPECT_EQ(data(0.8, 1).score, std::vector{0});
    EXPECT_EQ(data(0.8, 5).score, std::vector{4});
    EXPECT_NO_THROW((void)data(0.05, 1));
    EXPECT_NEAR(data(0.9, 1).covariates(0, 0), 1.0, 1e-12);
    EXPECT_NEAR(data(0.8, 1).covariates(0, 0), -1.0, 1e-12);
    EXPECT_THROW((void)data(0.8, 0), std::invalid_argument);
    EXPECT_THROW((void)data(0.8, 6), std::invalid_argument);
    EXPECT_THROW((void)data(0.0, 1), std::invalid_argument);
    const TouchReading blank;
    EXPECT_EQ(blank.score, 1);
    EXPECT_EQ(blank.share, 0.0);
    EXPECT_EQ(blank.day + blank.session, 0);
}
