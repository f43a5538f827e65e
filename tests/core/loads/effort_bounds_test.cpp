#include "core/loads/effort.h"
#include "core/loads/far_above_max.h"
#include "core/loads/limited_lines.h"
#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"

#include <gmock/gmock.h>

// Loads below are worked out by hand on a max of 100 kg, two per cent a rep and one a set before.

using namespace core;
using namespace tests;

namespace {

const QDate kEffortDay(2026, 3, 4);

const Variation &builtIn(const char *code)
{
    return *find(builtInCatalogue(), idOf(code));
}

struct EffortBounds : testing::Test
{
    EffortBounds()
    {
        lifter.id = {1};
        lifter.birthYear = 2011;
        lifter.gear = usualGear(Unit::kilogram);
    }

    const ResolvedCard &resolved(const QString &setLine, const char *code = "comp")
    {
        card = resolveCards({cardOf(1, kEffortDay, 0, idOf(code), setLine)},
            {lifter, builtInCatalogue(),
                [this](Lift lift) { return lift == Lift::bench ? &bench : nullptr; }, noCheckIns(),
                {}, kEffortDay})
                   .front();
        return card;
    }
    ResolvedLine line(const QString &setLine, const char *code = "comp")
    {
        return resolved(setLine, code).lines.at(0);
    }
    SetEffort effort(const QString &setLine, const char *code = "comp")
    {
        return effortOf(line(setLine, code), builtIn(code), kEffortDay, &bench, builtInCatalogue());
    }
    /// kg; 0 where nothing stands in.
    double lighterKg(const QString &setLine, const char *code = "comp")
    {
        const auto lighter = line(setLine, code).lighter;
        return lighter ? lighter->loadKg : 0.0;
    }

    Lifter lifter;
    LiftEstimate bench = plainEstimate(kEffortDay);
    ResolvedCard card;
};

} // namespace

TEST_F(EffortBounds, AShareIsOfTodaysMaxForOneRepRested)
{
    EXPECT_EQ(shareOfMax(95.0, idOf("comp"), kEffortDay, &bench), 0.95);
    EXPECT_EQ(shareOfMax(95.0, idOf("feet_up"), kEffortDay, &bench), 1.0);
    EXPECT_EQ(shareOfMax(95.0, {999}, kEffortDay, &bench), std::nullopt);
    EXPECT_EQ(shareOfMax(95.0, idOf("comp"), kEffortDay, nullptr), std::nullopt);
    bench.estimate.standing = strength::Standing::priorOnly;
    EXPECT_EQ(shareOfMax(95.0, idOf("comp"), kEffortDay, &bench), std::nullopt);
}

TEST_F(EffortBounds, ALeadRepSetIsAsHardAsItsHarderPart)
{
    EXPECT_NEAR(*effort(u"1x1+2 80kg"_qs, "tempo_4_2_0").shareOfMax, 80.0 / 92.0, 1e-6);
    EXPECT_NEAR(*effort(u"1x1+2 80kg"_qs, "board_5cm").shareOfMax, 0.8, 1e-6)
        << "the competition reps after it";
    EXPECT_NEAR(*effort(u"1x1+2(feet_up) 76kg"_qs, "board_5cm").shareOfMax, 75.0 / 95.0, 1e-6);
    EXPECT_EQ(effort(u"1x3 80kg"_qs, "board_5cm").lead, nullptr);
    EXPECT_EQ(effort(u"1x1+2 80kg"_qs, "board_5cm").lead, &builtIn("board_5cm"));
    EXPECT_EQ(effort(u"1x1+2 80kg"_qs, "board_5cm").variation, &builtIn("comp"));
}

TEST_F(EffortBounds, TheLargerOfWhatIsAskedAndWhatIsExpectedCounts)
{
    EXPECT_EQ(effort(u"1x3 82.5%"_qs).shareOfMax, 0.825);
    EXPECT_EQ(effort(u"1x3 81.6%"_qs).shareOfMax, 0.825) << "rounded up to the plates";
    EXPECT_DOUBLE_EQ(*effort(u"1x3 83.4%"_qs).shareOfMax, 0.834) << "rounded down to 82.5 kg";
    // Nobody knows the max: what is asked for is all there is, and the other way round.
    bench.estimate.standing = strength::Standing::priorOnly;
    EXPECT_DOUBLE_EQ(*effort(u"1x3 83.4%"_qs).shareOfMax, 0.834);
    EXPECT_EQ(effort(u"1x3 80kg"_qs).shareOfMax, std::nullopt);
    EXPECT_EQ(effort(u"1x3 80kg"_qs).rpe, std::nullopt);
    EXPECT_EQ(effort(u"1x3 @7-8.5"_qs).rpe, 8.5);
    EXPECT_EQ(effort(u"1x3 1.5RIR"_qs).rpe, 8.5);
}

TEST_F(EffortBounds, TheRepsUpToACapLeaveThatManyFewerInReserve)
{
    // At 60 kg 1 - ln 0.6 / 0.02 = 26.5 reps are possible.
    EXPECT_EQ(effort(u"1xAMRAP max 25 60%"_qs).rpe, 8.5);
    EXPECT_EQ(effort(u"1xAMRAP max 26 60%"_qs).rpe, 9.5);
    EXPECT_FALSE(line(u"1xAMRAP max 25 60%"_qs).isMaximal);
    EXPECT_TRUE(line(u"1xAMRAP max 26 60%"_qs).isMaximal);
    EXPECT_EQ(effort(u"1x5+ max 25 60%"_qs).rpe, 8.5) << "from the fewest asked for on";
    EXPECT_EQ(effort(u"1x25 60%"_qs).rpe, 8.5);
}

TEST_F(EffortBounds, WhatStandsInLeavesTwoInReserveOfThreeRepsAndMore)
{
    // Three reps, two in reserve, one set before: 100 exp(-0.02 x 4 - 0.01) = 91.4.
    EXPECT_EQ(lighterKg(u"1x1 @9.5"_qs), 90.0);
    EXPECT_EQ(lighterKg(u"1x3 @9.5"_qs), 90.0);
    // Five reps: 100 exp(-0.02 x 6 - 0.01) = 87.8.
    EXPECT_EQ(lighterKg(u"1x5 @9.5"_qs), 87.5);
    EXPECT_EQ(lighterKg(u"1x1 @8"_qs), 90.0) << "95 kg of 100, though @8";
    EXPECT_EQ(lighterKg(u"1x3 @8"_qs), 0.0) << "nothing is withheld";
    EXPECT_EQ(lighterKg(u"1xAMRAP 80%"_qs), 0.0) << "its load is not what is wrong";
    EXPECT_EQ(lighterKg(u"1x5+ 80%"_qs), 0.0);
}

TEST_F(EffortBounds, WhatStandsInSuitsBothPartsOfALeadRepSet)
{
    // Tempo at 92 kg: 92 exp(-0.09) = 84.1; the board press at 106 leaves the competition reps.
    EXPECT_EQ(lighterKg(u"1x1+2 @9.5"_qs, "tempo_4_2_0"), 82.5);
    EXPECT_EQ(lighterKg(u"1x1+2 @9.5"_qs, "board_5cm"), 90.0);
    bench.rows[0] = {999};
    EXPECT_EQ(lighterKg(u"1x1+2 95kg"_qs, "tempo_4_2_0"), 0.0) << "of one part nothing is known";
}

TEST_F(EffortBounds, AMannerMakesWhatStandsInLighterAndNeverHeavier)
{
    // Three pause counts are two more than usual: 91.4 x 0.96 = 87.7.
    EXPECT_EQ(lighterKg(u"1x1 95kg pause 3"_qs), 87.5);
    EXPECT_EQ(lighterKg(u"1x1 100kg pause 0"_qs), 90.0) << "not 91.4 x 1.02 = 93.2";
}

TEST_F(EffortBounds, NothingStandsInWhereTheBareBarIsTooHeavy)
{
    // 21.8 exp(-0.01) = 21.6 is loaded as 22.5 kg; 21.8 exp(-0.09) = 19.9 is below the bar.
    bench = plainEstimate(kEffortDay, 21.8);
    EXPECT_EQ(line(u"1x1 @9.5"_qs).load->loadKg, 22.5);
    EXPECT_EQ(lighterKg(u"1x1 @9.5"_qs), 0.0);
    bench = plainEstimate(kEffortDay, 22.2); // 22.2 exp(-0.09) = 20.3
    EXPECT_EQ(lighterKg(u"1x1 @9.5"_qs), 20.0);
}

TEST_F(EffortBounds, WithoutOwnSetsNothingStandsIn)
{
    bench.estimate.standing = strength::Standing::priorOnly;
    const ResolvedLine unknown = line(u"1x1 95kg"_qs);
    EXPECT_FALSE(unknown.withheld.isEmpty());
    EXPECT_FALSE(unknown.lighter);
    EXPECT_FALSE(line(u"1x1 @9.5"_qs).lighter) << "there is no load to be lighter than";
}

TEST_F(EffortBounds, OfSeveralLinesEachReasonIsSaidOnceWithItsSets)
{
    const auto said = [this](const QString &setLine) {
        return withheldWords(resolved(setLine), Unit::kilogram);
    };
    EXPECT_TRUE(said(u"3x5 @7"_qs).isEmpty());
    EXPECT_EQ(said(u"1x1 @9.5"_qs).size(), 1);
    EXPECT_FALSE(said(u"1x1 @9.5"_qs)[0].startsWith(u"1x1"_qs));
    const QStringList one = said(u"1x1 @9.5\n3x5 @7"_qs);
    ASSERT_EQ(one.size(), 1);
    EXPECT_TRUE(one[0].startsWith(u"1x1 @9.5: "_qs)) << one[0].toStdString();
    const QStringList alike = said(u"1xAMRAP 70%\n1xAMRAP 60%"_qs);
    ASSERT_EQ(alike.size(), 1);
    EXPECT_FALSE(alike[0].startsWith(u"1x"_qs));
    EXPECT_EQ(said(u"1x1 @9.5\n1xAMRAP 60%"_qs).size(), 2) << "one of them with a lighter load";
}

TEST_F(EffortBounds, FarAboveMaxIsAskedOfTheVariationAlone)
{
    const auto why = [&](double kg, VariationId id) {
        Variation variation = builtIn("comp");
        variation.id = id;
        return whyFarAboveMax(kg, 1, variation, kEffortDay, &bench, Lifter());
    };
    EXPECT_TRUE(why(112.0, {999}).isEmpty()) << "not of the lift, but likely";
    EXPECT_FALSE(why(113.0, {999}).isEmpty());
    EXPECT_FALSE(why(111.0, idOf("comp")).isEmpty());
    EXPECT_TRUE(why(109.9, idOf("comp")).isEmpty());
    bench.estimate.standing = strength::Standing::priorOnly;
    bench.readings = {sessionOf(kEffortDay.addDays(-3),
        {setOf(idOf("comp"), 100, 1), setOf(idOf("comp"), 200, 0), setOf(idOf("feet_up"), 200, 3),
            setOf(idOf("comp"), 90, 3)})};
    EXPECT_FALSE(why(110.1, idOf("comp")).isEmpty()) << "neither the miss nor the other counts";
    EXPECT_TRUE(why(109.9, idOf("comp")).isEmpty());
}
