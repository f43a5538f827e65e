#include "core/loads/resolved_cards.h"

#include "core/loads/estimate_words.h"

#include "tests/support/days.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using strength::Standing;

namespace {

const VariationId kComp{1};
const VariationId kFeetUp{2};
const VariationId kOtherLift{3};

/// Competition max 100 kg on kDay without drift, feet-up bench at 0.95 of it, two percent a rep.
LiftEstimate hundred(Standing standing = Standing::enough)
{
    LiftEstimate lift;
    lift.rows = {kComp, kFeetUp};
    lift.priors = {{1.0, 0.0, 1.0}, {0.95, 0.03, 1.0}};
    strength::LifterEstimate &e = lift.estimate;
    e.standing = standing;
    const strength::Band max{100.0, 97.0, 103.0};
    e.weeks = {{engineDay(kDay), max, max, 10}};
    e.variations = {{{1.0, 1.0, 1.0}, max, 10}, {{0.95, 0.93, 0.97}, {95.0, 91.0, 99.0}, 5}};
    e.curve = {0.02, 1.0};
    e.setFatigue = 0.01;
    return lift;
}

std::vector<ResolvedLine> resolved(const QString &text, const LiftEstimate *lift,
    double hardSetsBefore = 0, VariationId variation = kComp,
    const Gear &gear = usualGear(Unit::kilogram))
{
    const PlateTable plates(gear);
    return resolve(parseSetLines(text).lines, variation,
        LoadBasis{lift, plates, Unit::kilogram, kDay}, hardSetsBefore);
}

Variation variation(VariationId id, Lift lift, int repsLow = 1, int repsHigh = 10)
{
    Variation v;
    v.id = id;
    v.lift = lift;
    v.repsLow = repsLow;
    v.repsHigh = repsHigh;
    return v;
}

} // namespace

TEST(Resolve, AnRpeTargetIsMetByTheLastSet)
{
    const LiftEstimate lift = hundred();
    // By hand: 3 reps and none in reserve are N = 3, share exp(-0.02 x 2); three sets before the
    // last, all hard, cost exp(-0.01 x 3): 100 x exp(-0.07) = 93.24, and 92.5 is the nearest load.
    const ResolvedLine line = resolved(u"4x3 @10"_qs, &lift).front();
    ASSERT_TRUE(line.load);
    EXPECT_NEAR(line.target->kg, 100.0 * std::exp(-0.07), 1e-6);
    EXPECT_DOUBLE_EQ(line.load->loadKg, 92.5);
    EXPECT_NEAR(line.firstReserve->value, 1.0 - std::log(0.925) / 0.02 - 3.0, 1e-6);
    EXPECT_NEAR(line.lastReserve->value, line.firstReserve->value - 1.5, 1e-6);
    EXPECT_DOUBLE_EQ(line.hardSetsAfter, 4.0);
    EXPECT_TRUE(line.why.isEmpty());
    EXPECT_TRUE(line.caution.isEmpty());
}

TEST(Resolve, SetsBeforeMakeTheLoadLighter)
{
    const LiftEstimate lift = hundred();
    const double fresh = resolved(u"1x3 @8"_qs, &lift, 0).front().target->kg;
    const double tired = resolved(u"1x3 @8"_qs, &lift, 5).front().target->kg;
    EXPECT_NEAR(tired / fresh, std::exp(-0.05), 1e-9);

    // The second line of a card counts the sets of the first by how hard they are.
    EXPECT_NEAR(resolved(u"5x3 92.5kg\n1x3 @8"_qs, &lift)[1].target->kg, tired, 1e-9);
    EXPECT_NEAR(resolved(u"5x3 70%\n1x3 @8"_qs, &lift)[1].target->kg, fresh, 0.002 * fresh);
}

TEST(Resolve, AShareIsOfTheVariationsOwnMaxRested)
{
    const LiftEstimate lift = hundred();
    EXPECT_NEAR(resolved(u"5x5 75%"_qs, &lift, 4).front().target->kg, 75.0, 1e-6);
    EXPECT_NEAR(resolved(u"5x5 75%"_qs, &lift, 0, kFeetUp).front().target->kg, 71.25, 1e-6);
}

TEST(Resolve, ALoadIsTakenAsWrittenOrAsNearAsThePlatesGo)
{
    const LiftEstimate lift = hundred();
    const ResolvedLine exact = resolved(u"3x3 90kg"_qs, &lift).front();
    EXPECT_DOUBLE_EQ(exact.load->loadKg, 90.0);
    EXPECT_TRUE(exact.caution.isEmpty());
    EXPECT_TRUE(exact.lastReserve);

    const ResolvedLine between = resolved(u"3x3 91kg"_qs, &lift).front();
    EXPECT_DOUBLE_EQ(between.load->loadKg, 90.0);
    EXPECT_THAT(between.caution.toStdString(), testing::HasSubstr("91 kg cannot be loaded"));
}

TEST(Resolve, ALoadNeedsNoEstimate)
{
    const LiftEstimate lift = hundred(Standing::priorOnly);
    for (const LiftEstimate *basis : {&lift, static_cast<const LiftEstimate *>(nullptr)}) {
        const ResolvedLine line = resolved(u"3x3 90kg"_qs, basis).front();
        EXPECT_DOUBLE_EQ(line.load->loadKg, 90.0);
        EXPECT_FALSE(line.lastReserve);
        EXPECT_TRUE(line.caution.isEmpty());
    }
}

TEST(Resolve, SaysWhyThereIsNoLoad)
{
    const LiftEstimate lift = hundred();
    EXPECT_THAT(resolved(u"3x3"_qs, &lift).front().why.toStdString(), testing::HasSubstr("@8"));
    EXPECT_FALSE(resolved(u"3x3 @8"_qs, nullptr).front().why.isEmpty());
    EXPECT_FALSE(resolved(u"3x3 @8"_qs, &lift, 0, kOtherLift).front().why.isEmpty());
    for (const Standing standing : {Standing::noData, Standing::priorOnly}) {
        const LiftEstimate doubtful = hundred(standing);
        for (const QString &text : {u"3x3 @8"_qs, u"3x3 75%"_qs}) {
            const ResolvedLine line = resolved(text, &doubtful).front();
            EXPECT_FALSE(line.load);
            EXPECT_EQ(line.why, advice(standing));
        }
    }
}

TEST(Resolve, ADoubtfulEstimateCarriesALoadWithACaution)
{
    for (const Standing standing : {Standing::thin, Standing::stale, Standing::conflicting}) {
        const LiftEstimate lift = hundred(standing);
        const ResolvedLine line = resolved(u"3x3 @8"_qs, &lift).front();
        EXPECT_TRUE(line.load);
        EXPECT_EQ(line.caution, advice(standing));
    }
}

TEST(Resolve, CautionsWhereThePlatesEndOrTheSetIsTooHeavy)
{
    const LiftEstimate lift = hundred();
    const auto caution = [&](const QString &text, const Gear &gear) {
        return resolved(text, &lift, 0, kComp, gear).front().caution.toStdString();
    };
    const Gear small{20.0, 0.0, {{10, 1}}};
    EXPECT_THAT(caution(u"3x3 @8"_qs, small), testing::HasSubstr("end at 40 kg"));
    EXPECT_THAT(caution(u"3x3 5%"_qs, small), testing::HasSubstr("empty bar is heavier"));
    // Half a jump beside what can be loaded is met as well as any load between.
    EXPECT_EQ(caution(u"1x1 16%"_qs, small), "");
    EXPECT_THAT(caution(u"1x1 9%"_qs, small), testing::HasSubstr("empty bar is heavier"));
    EXPECT_EQ(caution(u"1x1 22%"_qs, small), "");
    EXPECT_EQ(caution(u"1x1 48%"_qs, small), "");
    EXPECT_THAT(caution(u"1x1 51%"_qs, small), testing::HasSubstr("end at 40 kg"));
    EXPECT_THAT(caution(u"1x5 100kg"_qs, usualGear(Unit::kilogram)),
        testing::HasSubstr("likely to be missed"));
}

TEST(Resolve, EffortNeverLeavesTheScale)
{
    EXPECT_DOUBLE_EQ(rpeFromReserve(2.0), 8.0); // Zourdos et al. (2016)
    EXPECT_DOUBLE_EQ(rpeFromReserve(-1.0), 10.0);
    EXPECT_DOUBLE_EQ(rpeFromReserve(30.0), 1.0);
}

TEST(ResolvedCards, FatigueCountsWithinADayAndALift)
{
    Lifter lifter;
    lifter.gear = usualGear(Unit::kilogram);
    const std::vector<Variation> variations{variation(kComp, Lift::bench),
        variation(kFeetUp, Lift::bench), variation(kOtherLift, Lift::squat)};
    const LiftEstimate lift = hundred();
    const PlanSources sources{lifter, variations,
        [&](Lift which) { return which == Lift::bench ? &lift : nullptr; }, noCheckIns(), {}, {}};
    const auto card = [](int id, int day, int position, VariationId v, const QString &text) {
        return Card{{id}, {1}, kDay.addDays(day), position, v, text, {}};
    };
    // Out of order on purpose: position decides.
    const auto cards =
        resolveCards({card(2, 0, 2, kComp, u"1x3 @8"_qs), card(1, 0, 0, kComp, u"5x3 92.5kg"_qs),
                         card(3, 0, 1, kOtherLift, u"5x5 100kg"_qs),
                         card(4, 1, 0, kComp, u"1x3 @8"_qs), card(5, 1, 1, kComp, u"heavy"_qs)},
            sources);
    ASSERT_EQ(cards.size(), 5u);
    EXPECT_EQ(cards[0].card.id, CardId{1});
    EXPECT_EQ(cards[1].card.id, CardId{3});
    EXPECT_NEAR(cards[2].lines[0].target->kg / cards[3].lines[0].target->kg, std::exp(-0.05), 1e-9);
    EXPECT_TRUE(cards[4].parsed.error);
    EXPECT_TRUE(cards[4].lines.empty());
    EXPECT_DOUBLE_EQ(tonnageKg(cards[1].lines), 2500.0);
    EXPECT_EQ(liftCount(cards[1].parsed.lines), 25);
}

TEST(ResolvedCards, AssistanceWorkHasNoLoadByTheEstimateAndTiresNoLift)
{
    Lifter lifter;
    lifter.gear = usualGear(Unit::kilogram);
    Variation row = variation(kFeetUp, Lift::bench);
    row.assistance = true;
    const std::vector<Variation> variations{variation(kComp, Lift::bench), row};
    const LiftEstimate lift = hundred();
    const PlanSources sources{
        lifter, variations, [&](Lift) { return &lift; }, noCheckIns(), {}, {}};
    const auto cards =
        resolveCards({Card{{1}, {1}, kDay, 0, kFeetUp, u"5x10 @8\n1x10 60kg"_qs, {}},
                         Card{{2}, {1}, kDay, 1, kComp, u"1x3 @8"_qs, {}},
                         Card{{3}, {1}, kDay.addDays(1), 0, kComp, u"1x3 @8"_qs, {}}},
            sources);
    EXPECT_FALSE(cards[0].lines[0].load);
    EXPECT_THAT(cards[0].lines[0].why.toStdString(), testing::HasSubstr("fits the effort"));
    EXPECT_DOUBLE_EQ(cards[0].lines[1].load->loadKg, 60.0) << "written by hand";
    EXPECT_DOUBLE_EQ(cards[1].lines[0].target->kg, cards[2].lines[0].target->kg);
}

TEST(ResolvedCards, UnsoundGearFallsBackToTheUsualPlates)
{
    Lifter lifter;
    lifter.gear = {0.0, 0.0, {}};
    EXPECT_DOUBLE_EQ(platesOf(lifter).lightestKg(), 20.0);
}

TEST(ResolvedCards, SuggestsWhatWasLastUsedElseTheUsualReps)
{
    const Variation tempo = variation(kComp, Lift::bench, 1, 3);
    EXPECT_EQ(suggestedSetLine(tempo, {}, kDay, {}), u"3x3 @8"_qs);
    EXPECT_EQ(suggestedSetLine(variation(kComp, Lift::bench), {}, kDay, {}), u"3x5 @8"_qs);

    Variation speed = tempo;
    speed.usualPercent = 60.0;
    EXPECT_EQ(suggestedSetLine(speed, {}, kDay, {}), u"6x3 60%"_qs)
        << "no effort: speed is the aim";

    const auto card = [](int day, const QString &text) {
        return Card{{1}, {1}, kDay.addDays(day), 0, kComp, text, {}};
    };
    const std::vector<Card> earlier{
        card(-7, u"4x2 @7"_qs), card(-14, u"5x1 @6"_qs), card(1, u"1x1 @9"_qs), card(-1, {})};
    EXPECT_EQ(suggestedSetLine(tempo, earlier, kDay, {}), u"4x2 @7"_qs);
    const std::vector<Card> today{card(-7, u"4x2 @7"_qs), card(0, u"2x2 @8"_qs)};
    EXPECT_EQ(suggestedSetLine(tempo, today, kDay, {}), u"2x2 @8"_qs) << "a second card of the day";

    const std::vector<Card> old{card(-kSuggestionDays, u"4x2 @7"_qs)};
    EXPECT_EQ(suggestedSetLine(tempo, old, kDay, {}), u"4x2 @7"_qs);
    EXPECT_EQ(suggestedSetLine(tempo, old, kDay.addDays(1), {}), u"3x3 @8"_qs);

    const std::vector<Card> heavy{card(-7, u"1x1 @9.5"_qs)};
    DayLimits unknown;
    unknown.isAgeUnknown = true;
    EXPECT_EQ(suggestedSetLine(tempo, heavy, kDay, {}), u"1x1 @9.5"_qs);
    EXPECT_EQ(suggestedSetLine(tempo, heavy, kDay, unknown), u"1x1 @8"_qs)
        << "the coach is asked for the age first";
}
