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
