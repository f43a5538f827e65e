#include "core/loads/given_loads.h"

#include "core/loads/passed_days.h"
#include "core/loads/week_sheet.h"
#include "core/strength/pooling.h"
#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

const QDate kGivenDay(2026, 3, 4); // a Wednesday
const QDateTime kGivenAt(QDate(2026, 3, 2), QTime(12, 0), Qt::UTC);

struct GivenBounds : testing::Test
{
    GivenBounds()
    {
        lifter.id = {1};
        lifter.gear = usualGear(Unit::kilogram);
    }

    [[nodiscard]] PlanSources sources() const
    {
        return {lifter, builtInCatalogue(),
            [this](Lift lift) { return lift == Lift::bench && isFitted ? &bench : nullptr; },
            noCheckIns(), given, kGivenDay};
    }
    [[nodiscard]] std::vector<ResolvedCard> resolved() const
    {
        return resolveCards(cards, sources());
    }
    std::vector<GivenDay> give(const QDateTime &at = kGivenAt)
    {
        const std::vector<GivenDay> days = core::give(resolved(), sources(), given,
            {GivenBy::handOut, at, [this] { return GivenDayId{++lastId}; }});
        given.insert(given.end(), days.begin(), days.end());
        return days;
    }
    [[nodiscard]] QString dayOnSheet() const
    {
        return weekSheet(lifter, kGivenDay.addDays(-2), resolved(), builtInCatalogue(), {})
            .days.at(0)
            .day;
    }

    Lifter lifter;
    std::vector<Card> cards{cardOf(1, kGivenDay, 0, idOf("comp"), u"3x3 @8"_qs)};
    std::vector<GivenDay> given;
    LiftEstimate bench = plainEstimate(kGivenDay);
    bool isFitted = true;
    qint64 lastId = 0;
};

} // namespace

TEST_F(GivenBounds, ADayIsNumberedOnEachTimeItIsGiven)
{
    for (int number = 1; number <= 3; ++number) {
        cards[0].setLine = QStringLiteral("%1x3 @8").arg(number);
        EXPECT_EQ(give().at(0).number, number);
    }
}

TEST_F(GivenBounds, WithoutASetBehindItNoEstimateIsNamed)
{
    EXPECT_EQ(give().at(0).cards.at(0).from, std::nullopt);
    bench.readings = {sessionOf(kGivenDay.addDays(-5), {setOf(idOf("comp"), 90, 3, 8.0)})};
    cards[0].setLine = u"3x3 @9"_qs;
    ASSERT_TRUE(give().at(0).cards.at(0).from);
    EXPECT_EQ(given.back().cards[0].from->lastSet, kGivenDay.addDays(-5));
    cards[0].setLine = u"3x3 100kg"_qs;
    isFitted = false;
    EXPECT_EQ(give().at(0).cards.at(0).from, std::nullopt);
}

TEST_F(GivenBounds, OnlyWhatAsksForAnEstimateWaitsForIt)
{
    isFitted = false;
    EXPECT_THAT(give(), IsEmpty());
    cards[0].setLine = u"3x3"_qs;
    EXPECT_THAT(give(), SizeIs(1)) << "without a target there is nothing to wait for";
    cards[0].variation = {999};
    cards[0].setLine = u"3x3 @8"_qs;
    EXPECT_THAT(give(), SizeIs(1)) << "nor is there where the variation is gone";
}

TEST_F(GivenBounds, WhatWasGivenIsGivenOnThoughTheFitIsNotThereYet)
{
    const GivenDay first = give().at(0);
    isFitted = false;
    cards.push_back(cardOf(2, kGivenDay, 1, idOf("comp"), u"2x5 60kg"_qs));
    const std::vector<GivenDay> anew = give();
    ASSERT_THAT(anew, SizeIs(1));
    EXPECT_EQ(anew[0].cards.at(0), first.cards[0]);
    cards[1].setLine = u"2x5 @7"_qs;
    EXPECT_THAT(give(), IsEmpty()) << "the new card has to wait";
}

TEST_F(GivenBounds, ACardWithOtherLinesThanWereGivenIsNotTheOneGiven)
{
    give();
    given[0].cards[0].lines.emplace_back();
    EXPECT_TRUE(resolved()[0].changedSinceGiven);
    EXPECT_THAT(resolved()[0].lines, SizeIs(1));
    given[0].cards[0].lines.clear();
    EXPECT_TRUE(resolved()[0].changedSinceGiven);
    given[0].cards[0].card = {9};
    EXPECT_FALSE(resolved()[0].changedSinceGiven) << "another card was given";
    EXPECT_FALSE(resolved()[0].given);
}

TEST_F(GivenBounds, WhereNoLoadWasGivenNoneIsComparedWithIt)
{
    bench.estimate.standing = strength::Standing::priorOnly;
    give();
    bench.estimate.standing = strength::Standing::enough;
    const ResolvedLine line = resolved()[0].lines[0];
    EXPECT_FALSE(line.load);
    EXPECT_FALSE(line.now);
    given.clear();
    give();
    bench.estimate.standing = strength::Standing::priorOnly;
    EXPECT_TRUE(resolved()[0].lines[0].load);
    EXPECT_FALSE(resolved()[0].lines[0].now) << "the estimate asks for nothing";
}

TEST_F(GivenBounds, TheSheetSaysWhenADayWasGivenWhereAllOfItWasAtOnce)
{
    EXPECT_FALSE(dayOnSheet().contains(u"given"_qs));
    give();
    EXPECT_TRUE(dayOnSheet().contains(u"given"_qs));
    cards.push_back(cardOf(2, kGivenDay, 1, idOf("comp"), u"2x5 60kg"_qs));
    EXPECT_FALSE(dayOnSheet().contains(u"given"_qs)) << "the second card was not";
    give();
    EXPECT_TRUE(dayOnSheet().contains(u"given"_qs));
    cards.push_back(cardOf(3, kGivenDay.addDays(1), 0, idOf("comp"), u"2x5 60kg"_qs));
    EXPECT_TRUE(dayOnSheet().contains(u"given"_qs)) << "the next day is another";
}

TEST_F(GivenBounds, ThePassedDaysStopWhenTheyAreNotAwaitedAnyMore)
{
    const std::vector<LoggedSession> none;
    const LearntLifts learnt;
    const PassedDays passed{lifter, builtInCatalogue(), cards, none, {}, learnt};
    const Giving by{GivenBy::dayPassed, kGivenAt, [this] { return GivenDayId{++lastId}; }};
    std::stop_source stop;
    EXPECT_NO_THROW((void)givePassedDays(passed, by, stop.get_token()));
    stop.request_stop();
    EXPECT_THROW((void)givePassedDays(passed, by, stop.get_token()), strength::Stopped);
}
