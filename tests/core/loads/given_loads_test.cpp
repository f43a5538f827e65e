#include "core/loads/given_loads.h"

#include "core/loads/passed_days.h"
#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

const QDateTime kNoon(QDate(2026, 3, 2), QTime(12, 0), Qt::UTC);

/// A day with one card that follows the estimate.
struct Plan
{
    Lifter lifter;
    std::vector<Card> cards{cardOf(1, kDay, 0, idOf("comp"), u"3x3 @8"_qs)};
    std::vector<GivenDay> given;
    LiftEstimate bench = plainEstimate(kDay, 150.0);
    bool isFitted = true;
    QDate today = kDay.addDays(-2);
    qint64 lastId = 0;

    Plan()
    {
        lifter.id = {1};
        lifter.gear = usualGear(Unit::kilogram);
        bench.readings = {sessionOf(kDay.addDays(-3), {setOf(idOf("comp"), 130, 3, 8.0)})};
    }
    [[nodiscard]] PlanSources sources() const
    {
        return {lifter, builtInCatalogue(),
            [this](Lift lift) { return lift == Lift::bench && isFitted ? &bench : nullptr; },
            noCheckIns(), given, today};
    }
    [[nodiscard]] std::vector<ResolvedCard> resolved() const
    {
        return resolveCards(cards, sources());
    }
    std::vector<GivenDay> give(GivenBy by = GivenBy::handOut)
    {
        std::vector<GivenDay> days = core::give(
            resolved(), sources(), given, {by, kNoon, [this] { return GivenDayId{++lastId}; }});
        given.insert(given.end(), days.begin(), days.end());
        return days;
    }
    [[nodiscard]] double loadKg(size_t card = 0) const
    {
        return resolved().at(card).lines.at(0).load->loadKg;
    }
};

} // namespace

TEST(GivenLoads, StayWhateverTheEstimateBecomes)
{
    Plan plan;
    const double before = plan.loadKg();
    plan.give();
    plan.bench = plainEstimate(kDay, 100.0);
    EXPECT_EQ(plan.loadKg(), before);
    plan.isFitted = false;
    EXPECT_EQ(plan.loadKg(), before);
    plan.lifter.gear.plates = {{25.0, 3}};
    EXPECT_EQ(plan.loadKg(), before) << "other plates at hand change no fact";
}

TEST(GivenLoads, KeepWhenHowAndFromWhichEstimate)
{
    Plan plan;
    plan.give(GivenBy::print);
    const ResolvedCard card = plan.resolved().front();
    ASSERT_TRUE(card.given);
    EXPECT_EQ(card.given->by, GivenBy::print);
    EXPECT_EQ(card.given->at, kNoon);
    ASSERT_TRUE(card.given->from);
    EXPECT_NEAR(card.given->from->maxKg.value, 150.0, 1e-9);
    EXPECT_EQ(card.given->from->lastSet, kDay.addDays(-3));
}

TEST(GivenLoads, SayWhatTheEstimateAsksForOnceItIsMoreThanAPlateAway)
{
    Plan plan;
    plan.give();
    const double given = plan.loadKg();
    EXPECT_FALSE(plan.resolved()[0].lines[0].now);
    plan.bench = plainEstimate(kDay, 150.0 * (given + 2.5) / given); // one jump of 2.5 kg
    EXPECT_FALSE(plan.resolved()[0].lines[0].now);
    plan.bench = plainEstimate(kDay, 150.0 * (given + 5.0) / given);
    const ResolvedLine moved = plan.resolved()[0].lines[0];
    ASSERT_TRUE(moved.now);
    EXPECT_EQ(moved.now->loadKg, given + 5.0);
    EXPECT_EQ(moved.load->loadKg, given);
    plan.today = kDay;
    EXPECT_TRUE(plan.resolved()[0].lines[0].now) << "the day can still be given anew";
    plan.today = kDay.addDays(1);
    EXPECT_FALSE(plan.resolved()[0].lines[0].now) << "a day that is over is not compared";
}

TEST(GivenLoads, AreNotThoseOfACardThatChangedSince)
{
    Plan plan;
    plan.give();
    plan.cards[0].setLine = u"3x3 @9"_qs;
    const ResolvedCard card = plan.resolved().front();
    EXPECT_FALSE(card.given);
    EXPECT_TRUE(card.changedSinceGiven);
    plan.cards[0].setLine = u"3x3 @8"_qs;
    EXPECT_TRUE(plan.resolved().front().given) << "back as it was given";
    plan.cards[0].variation = idOf("feet_up");
    EXPECT_TRUE(plan.resolved().front().changedSinceGiven);
}

TEST(GivenLoads, OfACardAddedLaterFollowTheEstimateAfterTheSetsGiven)
{
    Plan plan;
    plan.give();
    plan.cards.push_back(cardOf(2, kDay, 1, idOf("comp"), u"1x3 @8"_qs));
    const std::vector<ResolvedCard> both = plan.resolved();
    EXPECT_TRUE(both[0].given);
    EXPECT_FALSE(both[1].given);
    EXPECT_FALSE(both[1].changedSinceGiven);
    EXPECT_LT(both[1].lines[0].target->kg, both[0].lines[0].target->kg);
}

TEST(Giving, WhatIsGivenJustSoAlreadyGivesNothing)
{
    Plan plan;
    EXPECT_THAT(plan.give(), SizeIs(1));
    EXPECT_THAT(plan.give(), IsEmpty());
    plan.bench = plainEstimate(kDay, 100.0);
    EXPECT_THAT(plan.give(), IsEmpty()) << "a later estimate leaves it alone";
}

TEST(Giving, AnewKeepsWhatWasGivenBeforeAndTheLastHolds)
{
    Plan plan;
    plan.give();
    const double first = plan.loadKg();
    plan.cards[0].setLine = u"3x3 @9"_qs;
    const std::vector<GivenDay> anew = plan.give(GivenBy::word);
    ASSERT_THAT(anew, SizeIs(1));
    EXPECT_EQ(anew[0].number, 2);
    EXPECT_THAT(plan.given, SizeIs(2));
    EXPECT_GT(plan.loadKg(), first);
    std::swap(plan.given[0], plan.given[1]);
    EXPECT_GT(plan.loadKg(), first) << "the number decides, not where it stands";
}

TEST(Giving, IsADayAtATimeAndOneThatLostACardIsGivenAnew)
{
    Plan plan;
    plan.cards.push_back(cardOf(2, kDay, 1, idOf("comp"), u"2x5 100kg"_qs));
    plan.cards.push_back(cardOf(3, kDay.addDays(2), 0, idOf("comp"), u"2x5 100kg"_qs));
    const std::vector<GivenDay> days = plan.give();
    ASSERT_THAT(days, SizeIs(2));
    EXPECT_EQ(days[0].day, kDay);
    EXPECT_THAT(days[0].cards, SizeIs(2));
    plan.cards.erase(plan.cards.begin() + 1);
    ASSERT_THAT(plan.give(), SizeIs(1));
    EXPECT_EQ(plan.given.back().day, kDay);
    EXPECT_EQ(plan.given.back().number, 2);
}

TEST(Giving, WaitsForTheFirstFitButNotForALoadThatTheCoachWrote)
{
    Plan plan;
    plan.isFitted = false;
    EXPECT_THAT(plan.give(), IsEmpty());
    plan.cards[0].setLine = u"3x3 120kg"_qs;
    EXPECT_THAT(plan.give(), SizeIs(1));
}

TEST(Giving, ALineWithoutALoadIsAFactToo)
{
    Plan plan;
    plan.cards[0].setLine = u"3x3"_qs;
    plan.give();
    const ResolvedCard card = plan.resolved().front();
    ASSERT_TRUE(card.given);
    EXPECT_FALSE(card.lines[0].load);
    EXPECT_FALSE(card.lines[0].why.isEmpty());
    plan.cards[0].setLine = u"as heavy as it goes"_qs;
    plan.give();
    EXPECT_TRUE(plan.resolved().front().given) << "as it stood, though nobody can read it";
}

TEST(PassedDays, AreWorkedOutByWhatWasKnownOnTheDay)
{
    Plan plan;
    std::vector<LoggedSession> sessions;
    for (int week = -6; week < 6; ++week)
        sessions.push_back(sessionOf(kDay.addDays(7 * week - 1),
            {setOf(idOf("comp"), week < 0 ? 120 : 150, 3, 8.0),
                setOf(idOf("comp"), week < 0 ? 120 : 150, 3, 8.5)}));
    const std::vector<Variation> &catalogue = builtInCatalogue();
    const LearntLifts learnt = fitRoster({plan.lifter}, catalogue, sessions, kDay).learnt;
    const Giving by{GivenBy::dayPassed, kNoon, [&plan] { return GivenDayId{++plan.lastId}; }};
    const auto giveWith = [&](const std::vector<LoggedSession> &log) {
        return givePassedDays({plan.lifter, catalogue, plan.cards, log, {}, learnt}, by);
    };
    const std::vector<GivenDay> days = giveWith(sessions);
    ASSERT_THAT(days, SizeIs(1));
    ASSERT_TRUE(days[0].cards[0].from);
    EXPECT_EQ(days[0].cards[0].from->lastSet, kDay.addDays(-1)) << "the day before, no later one";
    // The session of that day itself, and those after it, change nothing.
    std::vector<LoggedSession> until(sessions.begin(), sessions.begin() + 7);
    EXPECT_EQ(giveWith(until)[0].cards, days[0].cards);
    until.push_back(sessionOf(kDay, {setOf(idOf("comp"), 200, 5, 6.0)}));
    EXPECT_EQ(giveWith(until)[0].cards, days[0].cards);
    until.insert(until.end() - 1, sessionOf(kDay.addDays(-1), {setOf(idOf("comp"), 170, 3, 6.0)}));
    EXPECT_NE(giveWith(until)[0].cards, days[0].cards) << "what came before does count";
}
