#include "core/strength/load_metrics.h"

#include "tests/core/strength/training_samples.h"

#include <gmock/gmock.h>

using namespace strength;

namespace {
const std::vector<TrainingSet> kSets{
    samples::unrated(100.0, 5), samples::unrated(80.0, 10), samples::missed(120.0, 0)};
/// A week of session loads (rating x minutes), days off as 0.
constexpr double kWeek[] = {480, 0, 600, 0, 420, 700, 0};
} // namespace

TEST(LoadMetrics, TonnageCountsCompletedReps)
{
    EXPECT_DOUBLE_EQ(tonnage(kSets), 1300.0);
    EXPECT_EQ(numberOfLifts(kSets), 15);
    EXPECT_DOUBLE_EQ(*averageIntensity(kSets, 130.0), 1300.0 / (15 * 130.0));
    EXPECT_FALSE(averageIntensity({}, 130.0));
    EXPECT_THROW((void)averageIntensity(kSets, 0.0), std::invalid_argument);
}

TEST(LoadMetrics, MonotonyAndStrainOfAWeek)
{
    // Foster (1998): mean daily load / SD, and weekly load x monotony. Mean 314.286, SD (n - 1)
    // 306.967.
    EXPECT_NEAR(*monotony(kWeek), 1.0238, 1e-4);
    EXPECT_NEAR(*strain(kWeek), 2252.45, 0.01);
    const std::vector<double> alike{300, 300, 300};
    EXPECT_FALSE(monotony(alike));
    EXPECT_FALSE(strain(std::span(alike).first(1)));
}

TEST(LoadMetrics, SessionLoadIsRatingTimesMinutes)
{
    EXPECT_DOUBLE_EQ(sessionLoad(8, 60), 480.0);
    EXPECT_THROW((void)sessionLoad(11, 60), std::invalid_argument);
}

TEST(LoadMetrics, TheEndsOfTheScaleAreRatingsAndAWeekNeedsTwoDays)
{
    EXPECT_EQ(sessionLoad(0, 60), 0.0);
    EXPECT_EQ(sessionLoad(10, 60), 600.0);
    EXPECT_EQ(sessionLoad(5, 0), 0.0);
    EXPECT_THROW((void)sessionLoad(10.1, 60), std::invalid_argument);
    EXPECT_THROW((void)sessionLoad(-0.1, 60), std::invalid_argument);
    EXPECT_THROW((void)sessionLoad(5, -1), std::invalid_argument);
    // Of 100 and 300 the mean is 200 and the SD (n - 1) 141.42.
    const std::vector<double> two{100, 300};
    EXPECT_NEAR(*monotony(two), 200.0 / 141.421356, 1e-6);
    EXPECT_FALSE(monotony(std::span(two).first(1)));
}
