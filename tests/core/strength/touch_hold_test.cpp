#include "core/strength/touch_hold.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <stdexcept>

using namespace strength;

namespace {

/// One lifter whose touch slips cleanly: light below `hold`, a step for each 4 % more.
std::vector<TouchReading> cleanTouch(double hold, double lowest, double highest)
{
    std::vector<TouchReading> readings;
    for (int session = 0; session < 12; ++session)
        for (int set = 0; set < 4; ++set) {
            const double share =
                lowest + (highest - lowest) * ((session * 4 + set * 13) % 48) / 47.0;
            const double slip = (share - hold) / 0.04;
            readings.push_back(
                {7 * session, session, share, std::clamp(2 + int(std::ceil(slip)), 1, 5)});
        }
    return readings;
}

TouchRoster rosterOf(const std::vector<std::vector<TouchReading>> &lifters)
{
    return learnTouch(lifters);
}

} // namespace

TEST(TouchHold, IsWhereTheTouchSlips)
{
    const auto readings = cleanTouch(0.86, 0.70, 1.0);
    const TouchRoster roster = rosterOf({readings});
    const TouchHold hold = touchHold(readings, roster, 2, {80});
    EXPECT_EQ(hold.standing, TouchStanding::enough);
    EXPECT_NEAR(hold.share.value, 0.86, 0.01);
    EXPECT_LT(hold.share.low90, 0.86);
    EXPECT_GT(hold.share.high90, 0.86);
    // One step harder is kept one step of load longer.
    EXPECT_NEAR(touchHold(readings, roster, 3, {80}).share.value, 0.90, 0.012);
}

TEST(TouchHold, SaysWhyItHasNothingToSay)
{
    const auto readings = cleanTouch(0.86, 0.70, 1.0);
    const TouchRoster roster = rosterOf({readings});
    EXPECT_EQ(touchHold({}, roster, 2, {80}).standing, TouchStanding::none);
    EXPECT_EQ(touchHold(readings, roster, 2, {-1}).standing, TouchStanding::none)
        << "readings of later days do not count";
    EXPECT_EQ(
        touchHold(std::span(readings).first(6), roster, 2, {80}).standing, TouchStanding::few);

    const auto light = cleanTouch(0.95, 0.70, 0.88);
    EXPECT_EQ(
        touchHold(light, rosterOf({readings, light}), 2, {80}).standing, TouchStanding::beyond);
    const auto sinks = cleanTouch(0.70, 0.76, 0.95);
    EXPECT_EQ(
        touchHold(sinks, rosterOf({readings, sinks}), 2, {80}).standing, TouchStanding::below);
}

TEST(TouchHold, LeansOnTheRosterWhereALifterHasLittle)
{
    std::vector<std::vector<TouchReading>> many(10, cleanTouch(0.80, 0.70, 1.0));
    const auto own = cleanTouch(0.90, 0.70, 1.0);
    many.push_back(own);
    const TouchRoster roster = rosterOf(many);
    const double few = touchHold(std::span(own).first(4), roster, 2, {80}).share.value;
    const double all = touchHold(own, roster, 2, {80}).share.value;
    EXPECT_LT(few, all);
    EXPECT_NEAR(all, 0.90, 0.02);
}

TEST(TouchHold, TheOlderScoresFade)
{
    auto readings = cleanTouch(0.80, 0.70, 1.0);
    for (TouchReading later : cleanTouch(0.90, 0.70, 1.0)) {
        later.day += 365;
        later.session += 100;
        readings.push_back(later);
    }
    const TouchRoster roster = rosterOf({readings});
    EXPECT_GT(touchHold(readings, roster, 2, {450}).share.value,
        touchHold(readings, roster, 2, {450, std::nullopt}).share.value + 0.02);

    const auto path = touchHoldOverTime(readings, roster, 2);
    ASSERT_GT(path.size(), 5u);
    EXPECT_EQ(path.back().day, readings.back().day);
    EXPECT_NEAR(path.back().hold.share.value, 0.90, 0.02);
    for (const TouchHoldPoint &point : path) {
        if (point.day > 200 && point.day < 360) {
            EXPECT_EQ(point.hold.standing, TouchStanding::none) << "no scores, no line";
        }
    }
}

TEST(TouchHold, BadReadingsAreTheCallersBug)
{
    const TouchRoster roster = rosterOf({});
    const std::vector<TouchReading> zero{{0, 0, 0.0, 3}}, six{{0, 0, 0.8, 6}};
    EXPECT_THROW((void)touchHold(zero, roster, 2, {0}), std::invalid_argument);
    EXPECT_THROW((void)touchHold(six, roster, 2, {0}), std::invalid_argument);
    EXPECT_THROW((void)touchHold({}, roster, 5, {0}), std::invalid_argument);
}
