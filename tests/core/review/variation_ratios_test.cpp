#include "core/review/variation_ratios.h"

#include "tests/core/plan/plan_rows.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;

namespace {

const VariationId kComp{1}, kPause{2}, kTempo{3};
const QDate kFirstMonday(2026, 1, 5);

/// A max of 100 kg, and a curve by which a rep costs 3 % from the first on.
struct Ratios : testing::Test
{
    Ratios()
    {
        lift.rows = {kComp, kPause, kTempo};
        lift.priors = {{1.0, 0.0, 1.0}, {0.95, 0.03, 1.0}, {0.9, 0.03, 1.0}};
        lift.estimate.curve = {0.03, 1.0};
        lift.estimate.variations.resize(3);
        lift.estimate.variations[0].ratio = {1.0, 1.0, 1.0};
        lift.estimate.variations[1].ratio = {0.95, 0.93, 0.97};
        lift.estimate.variations[2].ratio = {0.9, 0.87, 0.93};
        strength::WeekEstimate week;
        week.sunday = engineDay(kFirstMonday) - 1;
        week.filtered = week.smoothed = {100, 97, 103};
        lift.estimate.weeks = {week};
    }
    void did(int day, std::vector<SetEntry> sets)
    {
        LoggedSession session;
        session.day = kFirstMonday.addDays(day);
        session.sets = std::move(sets);
        lift.readings.push_back(session);
    }

    LiftEstimate lift;
};

} // namespace

TEST_F(Ratios, ArePointsOfWhatTheVariationsOwnSetsSay)
{
    // Three with two in reserve: five reps could be done, so max = load exp(0.03 x 4).
    for (int day = 0; day < 4; ++day)
        did(day, {setOf(kPause, 85.0, 3, 8.0)});
    const std::vector<RatioPoint> points = ratiosOverTime(lift, 1);
    ASSERT_EQ(points.size(), 1u);
    EXPECT_NEAR(points[0].ratio.value, 0.85 * std::exp(0.12), 1e-9);
    EXPECT_NEAR(points[0].ratio.low90, points[0].ratio.value, 1e-9) << "all sets say the same";
    EXPECT_LE(std::abs(points[0].day - engineDay(kFirstMonday)), 56.0);
    EXPECT_TRUE(ratiosOverTime(lift, 2).empty());
}

TEST_F(Ratios, ScatterWidensTheInterval)
{
    // ln 0.80 and ln 0.90 twice each: SD of the mean = |ln 0.9 - ln 0.8| / 2 / sqrt(3).
    for (const double kg : {80.0, 90.0, 80.0, 90.0})
        did(int(lift.readings.size()), {setOf(kPause, kg, 1, 10.0)});
    const std::vector<RatioPoint> points = ratiosOverTime(lift, 1);
    ASSERT_EQ(points.size(), 1u);
    EXPECT_NEAR(points[0].ratio.value, std::sqrt(0.8 * 0.9), 1e-9);
    const double sd = std::log(0.9 / 0.8) / 2.0 / std::sqrt(3.0);
    EXPECT_NEAR(strength::sdOfLn(points[0].ratio.low90, points[0].ratio.high90), sd, 1e-9);
}

TEST_F(Ratios, NeedFourRatedSetsWithoutAMiss)
{
    SetEntry missed = setOf(kPause, 100.0, 1, 10.0);
    missed.failed = true;
    did(0,
        {setOf(kPause, 85.0, 3, 8.0), setOf(kPause, 85.0, 3, 8.0), setOf(kPause, 85.0, 3, 8.0),
            missed, setOf(kPause, 85.0, 3, std::nullopt), setOf(kComp, 95.0, 1, 9.0)});
    EXPECT_TRUE(ratiosOverTime(lift, 1).empty());
}

TEST_F(Ratios, VariationsWithTheMostSetsComeFirst)
{
    lift.estimate.variations[1].sets = 3;
    lift.estimate.variations[2].sets = 8;
    EXPECT_THAT(trainedRows(lift), ElementsAre(2, 1));
    lift.estimate.variations[2].sets = 0;
    EXPECT_THAT(trainedRows(lift), ElementsAre(1));
}

TEST_F(Ratios, EightWeeksAreAPointOfTheirMiddle)
{
    const int spanStart = (engineDay(kFirstMonday) / 56 + 1) * 56 - engineDay(kFirstMonday);
    for (const int day : {0, 20, 40, 55})
        did(spanStart + day, {setOf(kPause, 85.0, 3, 8.0)});
    const std::vector<RatioPoint> points = ratiosOverTime(lift, 1);
    ASSERT_EQ(points.size(), 1u);
    EXPECT_DOUBLE_EQ(points[0].day, engineDay(kFirstMonday) + spanStart + 28.0);
    lift.readings.back().day = kFirstMonday.addDays(spanStart + 56);
    EXPECT_TRUE(ratiosOverTime(lift, 1).empty()) << "three here, one in the next";
    lift.readings.clear();
    for (const int day : {-1, 0, 20, 40})
        did(spanStart + day, {setOf(kPause, 85.0, 3, 8.0)});
    EXPECT_TRUE(ratiosOverTime(lift, 1).empty()) << "one in those before";
}

TEST_F(Ratios, TheSetsBeforeCountAsFatigueAndEqualCountsStayInTheirOrder)
{
    lift.estimate.setFatigue = 0.02;
    for (int day = 0; day < 4; ++day)
        did(day,
            {setOf(kComp, 90.0, 1, {}), setOf(kTempo, 60.0, 3, {}), setOf(kPause, 85.0, 1, 10.0)});
    EXPECT_NEAR(ratiosOverTime(lift, 1)[0].ratio.value, 0.85 * std::exp(0.04), 1e-9);
    lift.estimate.variations[1].sets = lift.estimate.variations[2].sets = 4;
    EXPECT_THAT(trainedRows(lift), ElementsAre(1, 2));
}
