#include "core/loads/effort.h"
#include "core/loads/far_above_max.h"
#include "core/loads/limited_lines.h"
#include "core/strength/prescription.h"
#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;

namespace {

struct Effort : testing::Test
{
    Effort()
    {
        lifter.id = {1};
        lifter.birthYear = 1990;
        lifter.gear = usualGear(Unit::kilogram);
    }

    [[nodiscard]] std::vector<ResolvedLine> lines(const QString &setLine, const char *code = "comp")
    {
        const PlanSources sources{lifter, builtInCatalogue(),
            [this](Lift lift) { return lift == Lift::bench && isKnown ? &bench : nullptr; },
            checkIns, {}, kDay};
        card = resolveCards({cardOf(1, kDay, 0, idOf(code), setLine)}, sources).front();
        return card.lines;
    }
    [[nodiscard]] bool isMaximal(const QString &setLine, const char *code = "comp")
    {
        return lines(setLine, code)[0].isMaximal;
    }
    void hurt(BodyArea area)
    {
        CheckIn checkIn;
        checkIn.lifter = lifter.id;
        checkIn.day = kDay.addDays(-3);
        checkIn.pain = PainFlag{area, {}};
        checkIns = {checkIn};
    }

    Lifter lifter;
    LiftEstimate bench = plainEstimate(kDay); // 100 kg
    bool isKnown = true;
    std::vector<CheckIn> checkIns;
    ResolvedCard card;
};

std::string easier(const QString &setLine)
{
    return setLineText(withoutMaximal(parseSetLines(setLine).lines.front())).toStdString();
}

} // namespace

TEST_F(Effort, WhatIsPlannedStandsBesideWhatIsWithheld)
{
    EXPECT_TRUE(lines(u"3x1 @9.5"_qs)[0].withheld.isEmpty());
    EXPECT_TRUE(card.lines[0].isMaximal);
    const double planned = card.lines[0].load->loadKg;
    lifter.birthYear = 2011;
    const ResolvedLine minor = lines(u"3x1 @9.5"_qs)[0];
    EXPECT_FALSE(minor.withheld.isEmpty());
    EXPECT_EQ(minor.load->loadKg, planned);
    ASSERT_TRUE(minor.lighter);
    // Three reps, two in reserve: at two percent a rep and one a set, about 100 exp(-0.10).
    EXPECT_LT(minor.lighter->loadKg, planned);
    EXPECT_LE(minor.lighter->loadKg, 100.0 * std::exp(-0.08));
    EXPECT_GE(minor.lighter->loadKg, 80.0);
    EXPECT_TRUE(withheldWords(minor, Unit::kilogram).contains(QStringLiteral("Lighter")));
}

TEST_F(Effort, InPainNothingStandsInForIt)
{
    hurt(BodyArea::wrists);
    const ResolvedLine line = lines(u"3x5 @7"_qs)[0];
    EXPECT_TRUE(line.withheld.contains(QStringLiteral("wrists")));
    EXPECT_FALSE(line.lighter);
    EXPECT_TRUE(line.load);
    hurt(BodyArea::legs);
    EXPECT_TRUE(lines(u"3x5 @7"_qs, "feet_up")[0].withheld.isEmpty());
    EXPECT_FALSE(lines(u"3x1+2 @7"_qs, "feet_up")[0].withheld.isEmpty())
        << "competition reps follow";
    EXPECT_TRUE(lines(u"3x1 @9.5"_qs, "feet_up")[0].withheld.contains(QStringLiteral("maximal")));
    EXPECT_FALSE(card.lines[0].lighter);
}

TEST_F(Effort, ALoadFrom95PercentOfTheVariationsMaxIsMaximalHoweverItIsWritten)
{
    for (const QString &line : {u"1x1 95kg"_qs, u"1x1 95%"_qs, u"1x1 110kg"_qs})
        EXPECT_TRUE(isMaximal(line)) << line.toStdString();
    EXPECT_FALSE(isMaximal(u"1x1 85kg"_qs));
    EXPECT_TRUE(isMaximal(u"1x1 80kg"_qs, "incline")) << "its max is 81";
    // Far from the share, but to the last rep: 10 reps leave none at 80 kg, 2 % a rep.
    EXPECT_TRUE(isMaximal(u"1x12 80kg"_qs));
}

TEST_F(Effort, ACapBeyondReachIsNoCap)
{
    EXPECT_TRUE(isMaximal(u"1xAMRAP 60%"_qs));
    EXPECT_FALSE(isMaximal(u"1xAMRAP max 5 60%"_qs));
    EXPECT_TRUE(isMaximal(u"1xAMRAP max 40 60%"_qs));
    isKnown = false;
    EXPECT_TRUE(isMaximal(u"1x5+ 60kg"_qs));
    EXPECT_TRUE(isMaximal(u"3x3 @10"_qs));
    EXPECT_TRUE(isMaximal(u"1x3 0RIR"_qs));
    EXPECT_FALSE(isMaximal(u"3x3 60kg"_qs));
}

TEST(WithoutMaximal, TakesDownOnlyWhatIsMaximal)
{
    EXPECT_EQ(easier(u"3x3 @9"_qs), "3x3 @9");
    EXPECT_EQ(easier(u"3x3 @9.5"_qs), "3x3 @8");
    EXPECT_EQ(easier(u"3x3 @8-9.5"_qs), "3x3 @8");
    EXPECT_EQ(easier(u"3x3 1RIR"_qs), "3x3 1RIR");
    EXPECT_EQ(easier(u"3x3 0RIR"_qs), "3x3 2RIR");
    EXPECT_EQ(easier(u"1x1 94%"_qs), "1x1 94%");
    EXPECT_EQ(easier(u"1x1 95%"_qs), "1x1 85%");
    EXPECT_EQ(easier(u"1x5+ 75%"_qs), "1x5+ max 5 75%");
    EXPECT_EQ(easier(u"1xAMRAP 75%"_qs), "1xAMRAP max 3 75%");
    EXPECT_EQ(easier(u"1xAMRAP max 8 75%"_qs), "1xAMRAP max 8 75%");
    EXPECT_EQ(easier(u"3x5 100kg"_qs), "3x5 100kg");
}

TEST(FarAboveMax, IsATenthAboveTheUpperEndForTheReps)
{
    const LiftEstimate bench = plainEstimate(kDay, 100.0, 0.02);
    const Variation &comp = *find(builtInCatalogue(), idOf("comp"));
    const double most =
        strength::loadFor(bench.estimate, engineDay(kDay), bench.priors, {0, 3, 0.0, 0})->high90;
    const auto why = [&](double kg) { return whyFarAboveMax(kg, 3, comp, kDay, &bench, Lifter()); };
    EXPECT_TRUE(why(most * kFarAboveMax - 0.01).isEmpty());
    EXPECT_FALSE(why(most * kFarAboveMax + 0.01).isEmpty());
    EXPECT_FALSE(why(225.0).isEmpty());
}

TEST(FarAboveMax, OfALifterWithoutALogIsAskedByBodyweightAndAge)
{
    Lifter lifter;
    lifter.bodyweightKg = 80.0;
    const auto asksFrom = [&](const char *code, double kg) {
        const Variation &variation = *find(builtInCatalogue(), idOf(code));
        const auto why = [&](double load) {
            return whyFarAboveMax(load, 5, variation, kDay, nullptr, lifter);
        };
        EXPECT_TRUE(why(kg).isEmpty()) << code;
        EXPECT_TRUE(why(kg + 0.5).contains(variation.name)) << code;
    };
    asksFrom("comp", 120.0); // 1.5, 2 and 2.25 times the bodyweight
    asksFrom("feet_up", 120.0);
    asksFrom("squat", 160.0);
    asksFrom("deadlift", 180.0);
    lifter.birthYear = kDay.year() - 15;
    asksFrom("comp", 80.0); // 1, 1.5 and 1.75 times
    asksFrom("squat", 120.0);
    asksFrom("deadlift", 140.0);
    lifter.birthYear.reset();
    lifter.trainingSince = kDay.addDays(-30);
    asksFrom("comp", 80.0);
    lifter.bodyweightKg.reset();
    asksFrom("comp", 75.0); // a light one stands in
}

TEST(FarAboveMax, WithoutAnEstimateTheHeaviestDoneStandsInForIt)
{
    LiftEstimate bench = plainEstimate(kDay);
    bench.estimate.standing = strength::Standing::priorOnly;
    bench.readings = {sessionOf(kDay.addDays(-3), {setOf(idOf("comp"), 100, 3)})};
    const Variation &comp = *find(builtInCatalogue(), idOf("comp"));
    const auto isFar = [&](double kg) {
        return !whyFarAboveMax(kg, 3, comp, kDay, &bench, Lifter()).isEmpty();
    };
    EXPECT_FALSE(isFar(110.0));
    EXPECT_TRUE(isFar(110.5));
    bench.readings.clear();
    EXPECT_FALSE(isFar(112.5)) << "a first set that is likely";
    EXPECT_TRUE(isFar(113.0));
}
