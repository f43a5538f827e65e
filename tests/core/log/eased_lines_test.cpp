#include "core/log/eased_lines.h"

#include "core/loads/limited_lines.h"
#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

const QDate kToday(2026, 3, 4);

/// Bench today and tomorrow, and a squat today; max 120 kg.
struct Week
{
    Lifter lifter;
    std::vector<Card> cards{cardOf(1, kToday, 0, idOf("comp"), u"1x1 105kg\n3x3 100kg"_qs),
        cardOf(2, kToday, 1, idOf("squat"), u"1x5 140kg"_qs),
        cardOf(3, kToday.addDays(1), 0, idOf("comp"), u"3x3 100kg"_qs)};
    std::vector<CheckIn> checkIns;
    LiftEstimate bench = plainEstimate(kToday, 120.0);
    strength::ReadinessEffect readiness;

    Week()
    {
        lifter.id = {1};
        lifter.isAdult = true;
        lifter.gear = usualGear(Unit::kilogram);
        // A habit of two per cent a point, well known.
        readiness.sessions = 40;
        readiness.lowest = 1.0;
        readiness.highest = 5.0;
        readiness.slope = {0.02, 0.02};
        readiness.covariance = Eigen::Matrix2d::Identity() * 1e-6;
    }

    void say(int answer)
    {
        CheckIn checkIn;
        checkIn.lifter = lifter.id;
        checkIn.day = kToday;
        checkIn.sleep = checkIn.stress = checkIn.motivation = answer;
        checkIns = {checkIn};
    }
    void miss(double loadKg)
    {
        SetEntry missed = setOf(idOf("comp"), loadKg, 0);
        missed.repsPlanned = 1;
        missed.failed = true;
        bench.readings = {sessionOf(kToday, {missed})};
    }

    [[nodiscard]] std::vector<ResolvedCard> eased() const
    {
        const PlanSources sources{lifter, builtInCatalogue(),
            [this](Lift lift) { return lift == Lift::bench ? &bench : nullptr; }, checkIns, {},
            kToday};
        std::vector<ResolvedCard> resolved = resolveCards(cards, sources);
        easeToday(resolved, sources, &readiness);
        return resolved;
    }
};

} // namespace

TEST(EasedLines, NothingIsLighterWhereNothingWasSaidOrMissed)
{
    const Week week;
    for (const ResolvedCard &card : week.eased())
        EXPECT_THAT(easedWords(card, Unit::kilogram), IsEmpty());
}

TEST(EasedLines, ALowCheckInMakesTodaysBenchLighterAndKeepsTheLoadBeside)
{
    Week week;
    week.say(2);
    const auto cards = week.eased();
    const ResolvedLine &line = cards[0].lines[1];
    EXPECT_EQ(line.load->loadKg, 100.0);
    // A point below the middle of the scale, 2 % off: 98 kg, on plates.
    ASSERT_TRUE(line.lighter);
    EXPECT_EQ(line.lighter->loadKg, 97.5);
    EXPECT_THAT(easedWords(cards[1], Unit::kilogram), IsEmpty()) << "measured on the bench press";
    EXPECT_THAT(easedWords(cards[2], Unit::kilogram), IsEmpty()) << "tomorrow is another day";
    ASSERT_THAT(easedWords(cards[0], Unit::kilogram), SizeIs(2));
    EXPECT_EQ(easedWords(cards[0], Unit::kilogram)[1],
        u"3x3 100kg: Lighter today, by the check-in: 97.5 kg."_qs);
}

TEST(EasedLines, GoodReadinessMakesNothingHeavier)
{
    Week week;
    week.say(5);
    for (const ResolvedCard &card : week.eased())
        for (const ResolvedLine &line : card.lines)
            EXPECT_FALSE(line.lighter);
}

TEST(EasedLines, AMissTakesTheSetsThatAreLeftDownAndLeavesWhatIsDoneAlone)
{
    Week week;
    week.miss(110.0);
    const auto cards = week.eased();
    EXPECT_TRUE(cards[0].lines[0].eased.isEmpty()) << "it is done";
    ASSERT_TRUE(cards[0].lines[1].lighter);
    EXPECT_EQ(cards[0].lines[1].lighter->loadKg, 95.0);
    EXPECT_TRUE(easedWords(cards[0], Unit::kilogram).first().contains(u"after the miss"_qs));
    EXPECT_TRUE(cards[1].lines[0].eased.isEmpty()) << "another lift";
    EXPECT_TRUE(cards[2].lines[0].eased.isEmpty()) << "another day";
}

TEST(EasedLines, WhatIsHeldBackStaysSo)
{
    Week week;
    week.say(1);
    week.cards[0].setLine = u"1x1 115kg"_qs; // low readiness: no maximal work
    const ResolvedLine line = week.eased()[0].lines[0];
    EXPECT_FALSE(line.withheld.isEmpty());
    EXPECT_TRUE(line.eased.isEmpty());
}
