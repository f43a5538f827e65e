#include "core/strength/touch_hold.h"

#include "tests/core/strength/reference_values.h"
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

TEST(TouchHold, SaysOfAFixedLogWhatItAlwaysSaid)
{
    // Touches that slip at a hold of the lifter's own, which moves; days that are softer or harder.
    std::vector<std::vector<TouchReading>> lifters(3);
    for (int lifter = 0; lifter < 3; ++lifter)
        for (int session = 0; session < 60; ++session)
            for (int set = 0; set < 4; ++set) {
                const double share = 0.70 + 0.28 * ((session * 5 + set * 11) % 29) / 28.0;
                const double hold = 0.84 + 0.03 * lifter + 0.03 * std::sin(0.15 * session);
                const double slip =
                    (share - hold) / 0.05 + 0.7 * std::sin(1.9 * session) + 0.4 * (set % 2);
                lifters[size_t(lifter)].push_back(
                    {4 * session, session, share, std::clamp(2 + int(std::ceil(slip)), 1, 5)});
            }
    const TouchRoster roster = rosterOf(lifters);
    samples::Values found{{"clustering", roster.clustering}, {"drift", roster.driftPerWeek}};
    const auto add = [&found](const char *name, const Interval &share) {
        found.emplace_back(name, share.value);
        found.emplace_back("low", share.low90);
        found.emplace_back("high", share.high90);
    };
    for (const std::vector<TouchReading> &readings : lifters) {
        add("hold of 2", touchHold(readings, roster, 2, {240}).share);
        add("hold of 4", touchHold(readings, roster, 4, {300}).share);
        add("in spring", touchHoldOverTime(readings, roster, 2)[3].hold.share);
    }
    samples::expectReference(
        {{"clustering", 2.35132314}, {"drift", 0.00461409083}, {"hold of 2", 0.836586833},
            {"low", 0.811909844}, {"high", 0.861222894}, {"hold of 4", 0.943549319},
            {"low", 0.909906168}, {"high", 0.977905129}, {"in spring", 0.844375868},
            {"low", 0.820615488}, {"high", 0.867734463}, {"hold of 2", 0.869728351},
            {"low", 0.845100588}, {"high", 0.894306558}, {"hold of 4", 0.969120083},
            {"low", 0.934642598}, {"high", 1.00508138}, {"in spring", 0.869388116},
            {"low", 0.845374459}, {"high", 0.89330631}, {"hold of 2", 0.897791797},
            {"low", 0.873036551}, {"high", 0.922784931}, {"hold of 4", 0.995760002},
            {"low", 0.958281847}, {"high", 1.03710935}, {"in spring", 0.89835122},
            {"low", 0.874549716}, {"high", 0.922474615}},
        found);
}

TEST(TouchHold, TheWantedScoreIsOneToFour)
{
    const auto readings = cleanTouch(0.86, 0.70, 1.0);
    const TouchRoster roster = rosterOf({readings});
    for (const int wanted : {1, 4}) {
        EXPECT_NO_THROW((void)touchHold(readings, roster, wanted, {80}));
        EXPECT_NO_THROW((void)touchHoldOverTime(readings, roster, wanted));
    }
    for (const int wanted : {0, 5}) {
        EXPECT_THROW((void)touchHold(readings, roster, wanted, {80}), std::invalid_argument);
        EXPECT_THROW((void)touchHoldOverTime(readings, roster, wanted), std::invalid_argument);
    }
    EXPECT_NO_THROW((void)touchHoldOverTime(readings, roster, 2, 1, 1));
    EXPECT_THROW((void)touchHoldOverTime(readings, roster, 2, 0, 1), std::invalid_argument);
    EXPECT_THROW((void)touchHoldOverTime(readings, roster, 2, 1, 0), std::invalid_argument);
}

TEST(TouchHold, ADozenSetsAreTheLeastThatSaySomething)
{
    const auto readings = cleanTouch(0.86, 0.70, 1.0);
    const TouchRoster roster = rosterOf({readings, readings, readings});
    const auto standing = [&](size_t sets) {
        return touchHold(std::span(readings).first(sets), roster, 2, {80}).standing;
    };
    EXPECT_EQ(standing(11), TouchStanding::few);
    EXPECT_NE(standing(12), TouchStanding::few);
}

TEST(TouchHold, AWindowHoldsItsLastDaysAndNoneBeforeOrAfter)
{
    const std::vector<TouchReading> one{{10, 0, 0.8, 2}};
    const TouchRoster roster = rosterOf({cleanTouch(0.86, 0.70, 1.0)});
    const auto sets = [&](int day) { return touchHold(one, roster, 2, {day, {}, 30}).sets; };
    EXPECT_EQ(sets(9), 0);
    EXPECT_EQ(sets(10), 1);
    EXPECT_EQ(sets(39), 1);
    EXPECT_EQ(sets(40), 0);
}

TEST(TouchHold, SetsOfADayThatGoTogetherCountAsFewer)
{
    // The same touches, once with each session of one mind, once mixed over the sessions.
    std::vector<TouchReading> alike, mixed;
    for (int session = 0; session < 30; ++session)
        for (int set = 0; set < 4; ++set) {
            const double share = 0.80 + 0.01 * ((7 * session + set) % 13);
            alike.push_back({3 * session, session, share, session % 2 == 0 ? 2 : 4});
            mixed.push_back({3 * session, session, share, (session + set) % 2 == 0 ? 2 : 4});
        }
    EXPECT_GT(rosterOf({alike}).clustering, 2.0);
    EXPECT_EQ(rosterOf({mixed}).clustering, 1.0) << "never below one set a set";
}

TEST(TouchHold, KeptAtEveryLoadOrAtNoneIsSaidWithoutAShare)
{
    // Without a roster, and with one score only: how the touch falls cannot be told.
    const TouchRoster roster = rosterOf({});
    const auto all = [](int score) {
        std::vector<TouchReading> readings;
        for (int set = 0; set < 60; ++set)
            readings.push_back({set, set, 0.84 + 0.001 * (set % 21), score});
        return readings;
    };
    const TouchHold kept = touchHold(all(1), roster, 4, {60});
    EXPECT_EQ(kept.standing, TouchStanding::beyond);
    EXPECT_DOUBLE_EQ(kept.highestShare, 0.86);
    EXPECT_GT(kept.share.high90, 0.86);
    const TouchHold lost = touchHold(all(5), roster, 1, {60});
    EXPECT_EQ(lost.standing, TouchStanding::below);
    EXPECT_DOUBLE_EQ(lost.lowestShare, 0.84);
    EXPECT_LT(lost.share.low90, 0.84);
}

TEST(TouchHold, ATouchThatDoesNotFollowTheLoadHasNoHold)
{
    const TouchRoster roster = rosterOf({});
    std::vector<TouchReading> readings;
    for (int set = 0; set < 80; ++set)
        readings.push_back({set, set, 0.70 + 0.003 * set, set % 2 == 0 ? 1 : 4});
    const TouchHold hold = touchHold(readings, roster, 2, {90});
    EXPECT_EQ(hold.standing, TouchStanding::flat);
    EXPECT_EQ(hold.sets, 80);
}

TEST(TouchHold, AReadingOfMoreThanEightHalfLivesCostsOnlyTime)
{
    // 2^-8 of the weight of one of today, at the usual half-life of 90 days.
    const TouchRoster roster = rosterOf({});
    const std::vector<TouchReading> one{{0, 0, 0.8, 2}};
    EXPECT_EQ(touchHold(one, roster, 2, {8 * 90}).sets, 1);
    EXPECT_EQ(touchHold(one, roster, 2, {8 * 90 + 1}).sets, 0);
}
