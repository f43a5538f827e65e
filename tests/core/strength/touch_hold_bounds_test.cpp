#include "core/strength/touch_hold.h"

#include "core/strength/interval.h"
#include "core/strength/touch_regression.h"

#include <cmath>
#include <gtest/gtest.h>

// Where the standing of a hold turns. Readings that weigh nothing leave the roster's belief as it
// is, so that the hold can be worked from it by hand.

using namespace strength;

namespace {

/// A belief in the first threshold and the slope; the gaps between thresholds are 1 and known.
TouchRoster weightless(
    double threshold, double slope, double vThreshold, double vSlope, double vBoth = 0.0)
{
    NormalBelief belief{Eigen::VectorXd::Zero(kTouchParameters),
        1e-9 * Eigen::MatrixXd::Identity(kTouchParameters, kTouchParameters)};
    belief.mean[0] = threshold;
    belief.mean[kTouchSlope] = slope;
    belief.covariance(0, 0) = vThreshold;
    belief.covariance(kTouchSlope, kTouchSlope) = vSlope;
    belief.covariance(0, kTouchSlope) = belief.covariance(kTouchSlope, 0) = vBoth;
    return {belief, 1e30, 0.0}; // so many sets of a session count as one
}

TouchHold holdAt(const TouchRoster &roster, double lowest, double highest, int wanted = 1)
{
    std::vector<TouchReading> readings(12, {0, 0, lowest, 2});
    readings.back().share = highest;
    return touchHold(readings, roster, wanted, {0});
}

TouchHold holdAt(const TouchRoster &roster, double share)
{
    return holdAt(roster, share, share);
}

} // namespace

TEST(TouchHoldBounds, ItsEndsAreWhereTheMarginIsSurelyKeptOrLost)
{
    // Fieller (1954): at an end (threshold - slope x)^2 = z^2 Var(threshold - slope x).
    const double t = 0.4, slope = 1.2, vT = 0.05, vS = 0.03, vBoth = 0.01;
    const TouchRoster roster = weightless(t, slope, vT, vS, vBoth);
    const TouchHold hold = holdAt(roster, 0.70, 1.0);
    EXPECT_EQ(hold.standing, TouchStanding::enough);
    EXPECT_NEAR(hold.share.value, 0.85 + 0.05 * t / slope, 1e-9);
    for (const double end : {hold.share.low90, hold.share.high90}) {
        const double x = (end - 0.85) / 0.05;
        EXPECT_NEAR(
            std::pow(t - slope * x, 2.0), kZ90 * kZ90 * (vT - 2.0 * x * vBoth + x * x * vS), 1e-6);
    }
    EXPECT_LT(hold.share.low90, hold.share.value);
    EXPECT_GT(hold.share.high90, hold.share.value);
    // Harder touches are as wanted for a gap of 1 = exp(0) more each.
    for (const int wanted : {2, 3, 4})
        EXPECT_NEAR(holdAt(roster, 0.70, 1.0, wanted).share.value,
            0.85 + 0.05 * (t + wanted - 1) / slope, 1e-9);
}

TEST(TouchHoldBounds, TheSlopeHasToBeSurelyAboveNone)
{
    // slope^2 against z^2 Var(slope), z = 1.6449.
    const auto standing = [](double slope, double slopes) {
        return holdAt(weightless(0.0, slope, 4e-4, std::pow(slope / slopes, 2.0)), 0.70, 1.0)
            .standing;
    };
    EXPECT_EQ(standing(1.0, 1.68), TouchStanding::enough);
    EXPECT_EQ(standing(1.0, 1.60), TouchStanding::flat);
    EXPECT_EQ(holdAt(weightless(0.0, -1.0, 4e-4, 0.01), 0.85).standing, TouchStanding::flat)
        << "a touch that mends with the load";
}

TEST(TouchHoldBounds, KeptOrLostAtAllLoadsIsSaidFromNinetyPerCentOn)
{
    // No slope to speak of: at the shares seen, x = 1 and more, the margin over its SD decides.
    const auto at = [](double sds, double lowest, double highest) {
        const double vT = 1.0, vS = 1.0, vBoth = 0.2, slope = 0.1;
        const double x = ((sds > 0 ? highest : lowest) - 0.85) / 0.05;
        const double sd = std::sqrt(vT - 2.0 * x * vBoth + x * x * vS);
        return holdAt(weightless(sds * sd + slope * x, slope, vT, vS, vBoth), lowest, highest);
    };
    const TouchHold kept = at(1.66, 0.80, 0.90);
    EXPECT_EQ(kept.standing, TouchStanding::beyond);
    EXPECT_EQ(kept.share.value, 0.90);
    EXPECT_EQ(kept.share.low90, 0.90);
    EXPECT_EQ(kept.share.high90, 1.5) << "stands for an end that is not known";
    EXPECT_EQ(at(1.63, 0.80, 0.90).standing, TouchStanding::flat);
    const TouchHold lost = at(-1.66, 0.80, 0.90);
    EXPECT_EQ(lost.standing, TouchStanding::below);
    EXPECT_EQ(lost.share.value, 0.80);
    EXPECT_EQ(lost.share.low90, 0.0);
    EXPECT_EQ(lost.share.high90, 0.80);
    EXPECT_EQ(at(-1.63, 0.80, 0.90).standing, TouchStanding::flat);
}

TEST(TouchHoldBounds, AHoldAtTheLastLoadSeenIsStillInside)
{
    const TouchRoster roster = weightless(0.0, 1.0, 0.01, 0.01); // the hold is 85 %
    EXPECT_EQ(holdAt(roster, 0.85).standing, TouchStanding::enough);
    EXPECT_EQ(holdAt(roster, 0.849).standing, TouchStanding::beyond);
    EXPECT_EQ(holdAt(roster, 0.851).standing, TouchStanding::below);
}

TEST(TouchHoldBounds, AnIntervalOfMoreThanAQuarterOfTheMaxSaysNothing)
{
    TouchRoster roster = weightless(0.0, 1.0, 0.01, 0.01);
    const std::vector<TouchReading> readings(12, {0, 0, 0.85, 2});
    int few = 0, enough = 0;
    for (int step = 0; step < 200; ++step) {
        roster.driftPerWeek = 0.0005 * step;
        const TouchHold hold = touchHold(readings, roster, 1, {7, std::nullopt});
        const double width = hold.share.high90 - hold.share.low90;
        EXPECT_EQ(hold.standing, width > 0.25 ? TouchStanding::few : TouchStanding::enough)
            << width;
        few += hold.standing == TouchStanding::few;
        enough += hold.standing == TouchStanding::enough;
    }
    EXPECT_GT(few, 0);
    EXPECT_GT(enough, 0);
}

TEST(TouchHoldBounds, AHoldWandersSinceTheReadings)
{
    // All of one day: the step's SD grows by the root of the weeks since. Of two days, the older
    // half has missed the weeks between by a quarter (the square of the share that is older).
    TouchRoster roster = weightless(0.0, 1.0, 0.01, 0.01);
    const auto halfWidth = [&roster](const std::vector<TouchReading> &readings, int day) {
        const Interval share = touchHold(readings, roster, 1, {day, std::nullopt}).share;
        return share.high90 - share.value;
    };
    std::vector<TouchReading> readings(12, {0, 0, 0.85, 2});
    const double still = halfWidth(readings, 28);
    roster.driftPerWeek = 0.01;
    EXPECT_NEAR(halfWidth(readings, 28), std::hypot(still, kZ90 * 0.01 * 2.0), 1e-12);
    for (size_t i = 0; i < 6; ++i)
        readings[i].day = 14;
    EXPECT_NEAR(halfWidth(readings, 21),
        std::hypot(still, kZ90 * 0.01 * std::sqrt(1.0 + 0.25 * 2.0)), 1e-12);
}

TEST(TouchHoldBounds, OverTimeAPointStandsForThirtyDaysAndTheNinetyBefore)
{
    const TouchRoster roster = weightless(0.0, 1.0, 0.01, 0.01);
    std::vector<TouchReading> readings;
    for (const int day : {0, 30, 60, 90})
        readings.push_back({day, day, 0.85, 2});
    const auto path = touchHoldOverTime(readings, roster, 1);
    ASSERT_EQ(path.size(), 4u) << "the first day has its point too";
    for (size_t i = 0; i < path.size(); ++i)
        EXPECT_EQ(path[i].day, 30 * int(i));
    EXPECT_EQ(path[0].hold.sets, 1);
    EXPECT_EQ(path[2].hold.sets, 3);
    EXPECT_EQ(path[3].hold.sets, 3) << "90 days ago is too long ago";
    EXPECT_EQ(TouchHoldPoint{}.day, 0);
}
