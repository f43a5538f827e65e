#include "core/review/touch_review.h"

#include "core/loads/implied_max.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

using namespace core;
using strength::TouchReading;

namespace {

std::vector<TouchReading> slipping(double hold)
{
    std::vector<TouchReading> readings;
    for (int i = 0; i < 48; ++i) {
        const double share = 0.70 + 0.30 * ((i * 13) % 48) / 47.0;
        readings.push_back(
            {20000 + 2 * i, i, share, std::clamp(2 + int(std::ceil((share - hold) / 0.05)), 1, 5)});
    }
    return readings;
}

TouchSuggestion suggestionFor(double hold)
{
    const std::vector<std::vector<TouchReading>> all{slipping(hold)};
    return suggestTouchStyle(all[0], strength::learnTouch(all), fromEngineDay(20100));
}

} // namespace

TEST(TouchReview, SuggestsTheStyleThatTheScoresShow)
{
    EXPECT_EQ(suggestionFor(0.92).style, TouchStyle::soft);
    EXPECT_EQ(suggestionFor(0.70).style, TouchStyle::sinking);
    EXPECT_EQ(suggestionFor(0.80).style, TouchStyle::undecided);
    EXPECT_FALSE(suggestionFor(0.92).why.isEmpty());
}

TEST(TouchReview, WithoutScoresThereIsNoSuggestion)
{
    const TouchSuggestion none =
        suggestTouchStyle({}, strength::learnTouch({}), fromEngineDay(20100));
    EXPECT_EQ(none.style, std::nullopt);
    EXPECT_TRUE(none.why.contains(QStringLiteral("No touch score"))) << none.why.toStdString();
}

TEST(TouchReview, ConfirmingChangesTheStyleAndNothingElse)
{
    Lifter lifter;
    lifter.id = {4};
    lifter.name = QStringLiteral("Ada");
    const Edit edit = confirmTouchStyle(lifter, TouchStyle::sinking);
    ASSERT_EQ(edit.lifters.after.size(), 1u);
    EXPECT_EQ(edit.lifters.before.front(), lifter);
    lifter.touchStyle = TouchStyle::sinking;
    EXPECT_EQ(edit.lifters.after.front(), lifter);
    EXPECT_TRUE(confirmTouchStyle(lifter, TouchStyle::sinking).isEmpty());
}

TEST(TouchReview, ASetIsReadAsAShareOfItsVariationsMaxThatDay)
{
    Lifter lifter;
    lifter.id = {1};
    Variation comp, pause;
    comp.id = {1};
    comp.competition = true;
    pause.id = {2};
    pause.ratio = 0.9;
    std::vector<LoggedSession> sessions;
    for (int week = 0; week < 8; ++week) {
        LoggedSession session;
        session.id = {week + 1};
        session.lifter = lifter.id;
        session.day = QDate(2026, 3, 2).addDays(7 * week);
        for (const VariationId variation : {comp.id, pause.id}) {
            SetEntry set;
            set.variation = variation;
            set.loadKg = variation == comp.id ? 90.0 : 81.0;
            set.repsDone = 3;
            set.rpe = 8.0;
            set.touch = 2;
            session.sets.push_back(set);
        }
        session.sets.front().touch = week == 0 ? std::nullopt : std::optional(3);
        sessions.push_back(session);
    }
    const auto fits = estimateAll({lifter}, {comp, pause}, sessions, lastDayOf(sessions));
    const LiftEstimate &lift = fits.at({lifter.id, Lift::bench});
    const auto all = touchReadings(lift);
    EXPECT_EQ(all.size(), 15u);
    const auto paused = touchReadings(lift, pause.id);
    ASSERT_EQ(paused.size(), 8u);
    EXPECT_EQ(paused.back().score, 2);
    const double max =
        *knownMaxKg(lift, sessions.back().day) * lift.estimate.variations[1].ratio.value;
    EXPECT_NEAR(paused.back().share, 81.0 / max, 1e-12);
}

TEST(TouchReview, EveryStandingHasItsWords)
{
    using strength::TouchStanding;
    QStringList said;
    for (const TouchStanding standing :
        {TouchStanding::none, TouchStanding::few, TouchStanding::flat, TouchStanding::beyond,
            TouchStanding::below, TouchStanding::enough})
        said << words({standing, {0.87, 0.84, 0.90}, 20, 0.7, 0.95}, 2);
    said.removeDuplicates();
    EXPECT_EQ(said.size(), 6);
    EXPECT_TRUE(said.last().contains(QStringLiteral("87 % (84 to 90)")));
}

TEST(TouchReview, ALightTouchToEightyFivePerCentIsSoftAndSinkingFromEightySinking)
{
    // By the end of the interval that speaks against it, on holds a per cent apart.
    int soft = 0, sinking = 0, between = 0;
    for (double hold = 0.70; hold < 0.96; hold += 0.01) {
        const std::vector<std::vector<TouchReading>> all{slipping(hold)};
        const strength::TouchRoster roster = strength::learnTouch(all);
        const strength::TouchHold light = touchHold(all[0], roster, 2, {20100});
        const strength::TouchHold rests = touchHold(all[0], roster, 3, {20100});
        const TouchStyle expected = light.share.low90 >= 0.85 ? TouchStyle::soft
            : rests.share.high90 <= 0.80                      ? TouchStyle::sinking
                                                              : TouchStyle::undecided;
        EXPECT_EQ(suggestTouchStyle(all[0], roster, fromEngineDay(20100)).style, expected)
            << "hold " << hold;
        soft += expected == TouchStyle::soft;
        sinking += expected == TouchStyle::sinking;
        between += expected == TouchStyle::undecided;
    }
    EXPECT_GT(soft, 0);
    EXPECT_GT(sinking, 0);
    EXPECT_GT(between, 0);
}

TEST(TouchReview, WordsNameTheSharesOfTheirStanding)
{
    using strength::TouchStanding;
    const auto said = [](TouchStanding standing) {
        return words({standing, {0.874, 0.836, 0.905}, 20, 0.704, 0.946}, 4).toStdString();
    };
    EXPECT_NE(said(TouchStanding::few).find("so far: 20."), std::string::npos);
    EXPECT_NE(said(TouchStanding::flat).find("70 to 95 %"), std::string::npos);
    EXPECT_NE(said(TouchStanding::beyond).find("\"sinks\" or softer"), std::string::npos);
    EXPECT_NE(said(TouchStanding::beyond).find("95 %"), std::string::npos);
    EXPECT_NE(said(TouchStanding::below).find("70 %"), std::string::npos);
    EXPECT_NE(said(TouchStanding::enough).find("87 % (84 to 91)"), std::string::npos);
}

TEST(TouchReview, ReadingsKeepDayAndSessionAndLeaveOutOtherLifts)
{
    LiftEstimate lift;
    lift.rows = {{1}};
    lift.estimate.variations.resize(1);
    lift.estimate.variations[0].ratio.value = 1.0;
    strength::WeekEstimate week;
    week.sunday = 100;
    week.filtered.kg = week.smoothed.kg = 100.0;
    lift.estimate.weeks = {week};
    SetEntry set;
    set.variation = {1};
    set.loadKg = 85.0;
    set.touch = 3;
    SetEntry other = set;
    other.variation = {9};
    LoggedSession first, second, third;
    first.day = fromEngineDay(101);
    first.sets = {other, set, set};
    second.day = fromEngineDay(102);
    third.day = fromEngineDay(103);
    third.sets = {set};
    lift.readings = {first, second, third};
    const auto readings = touchReadings(lift);
    ASSERT_EQ(readings.size(), 3u);
    EXPECT_EQ(readings[0], (TouchReading{101, 0, 0.85, 3}));
    EXPECT_EQ(readings[1], readings[0]);
    EXPECT_EQ(readings[2], (TouchReading{103, 2, 0.85, 3}));
    lift.estimate.weeks.clear();
    EXPECT_TRUE(touchReadings(lift).empty()) << "no max, no share";
}
