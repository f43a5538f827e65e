#include "core/domain/variation.h"
#include "core/loads/manner_cost.h"
#include "core/loads/odds.h"
#include "core/loads/resolve.h"
#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::HasSubstr;

namespace {

/// Lines on a 100 kg lifter; see plainEstimate().
std::vector<ResolvedLine> linesOf(
    const QString &text, const char *code = "comp", double maxSd = 0.0)
{
    const LiftEstimate lift = plainEstimate(kDay, 100.0, maxSd);
    const PlateTable plates(usualGear(Unit::kilogram));
    const ParsedSetLines parsed = parseSetLines(text);
    EXPECT_FALSE(parsed.error) << text.toStdString();
    return resolve(parsed.lines, idOf(code),
        LoadBasis{&lift, plates, Unit::kilogram, kDay, builtInCatalogue()}, 0);
}

double targetKg(const QString &text, const char *code = "comp")
{
    const std::vector<ResolvedLine> lines = linesOf(text, code);
    EXPECT_TRUE(lines.back().target) << lines.back().why.toStdString();
    return lines.back().target ? lines.back().target->kg : 0.0;
}

} // namespace

TEST(ResolveLines, ReserveIsTheOtherSideOfRpeAndRangesMeetInTheMiddle)
{
    EXPECT_DOUBLE_EQ(targetKg(u"3x5 2RIR"_qs), targetKg(u"3x5 @8"_qs));
    EXPECT_DOUBLE_EQ(targetKg(u"3x5 1-2RIR"_qs), targetKg(u"3x5 @8.5"_qs));
    EXPECT_DOUBLE_EQ(targetKg(u"3x5 @7-8"_qs), targetKg(u"3x5 @7.5"_qs));
    EXPECT_DOUBLE_EQ(targetKg(u"3x4-6 @8"_qs), targetKg(u"3x5 @8"_qs));
}

TEST(ResolveLines, ADropIsFromTheHeaviestLineAbove)
{
    // 1x1 @9: N = 2, 100 exp(-0.02) = 98.0 kg, loaded 97.5; ten percent less is 87.75, 20 lb less
    // 88.43.
    EXPECT_DOUBLE_EQ(linesOf(u"1x1 @9"_qs).front().load->loadKg, 97.5);
    EXPECT_NEAR(targetKg(u"1x1 @9\n3x3 -10%"_qs), 87.75, 1e-9);
    EXPECT_NEAR(targetKg(u"1x1 @9\n3x3 70%\n3x3 -10%"_qs), 87.75, 1e-9);
    EXPECT_NEAR(targetKg(u"1x1 @9\n3x3 -5kg"_qs), 92.5, 1e-9);
    EXPECT_NEAR(targetKg(u"1x1 @9\n3x3 -20lb"_qs), 97.5 - 20 * kKgPerPound, 1e-9);
    EXPECT_THAT(linesOf(u"3x3 -10%"_qs).front().why.toStdString(), HasSubstr("no line"));
    EXPECT_THAT(
        linesOf(u"1x1 @9\n3x3 -99kg"_qs).back().why.toStdString(), HasSubstr("larger than"));
}

TEST(ResolveLines, ALeadRepSetTakesTheLighterOfItsTwoParts)
{
    // One tempo rep (max 92) with two in reserve: 92 exp(-0.04) = 88.39. Three competition reps
    // with two in reserve: 100 exp(-0.08) = 92.31.
    EXPECT_NEAR(targetKg(u"1x1+2 @8"_qs, "tempo_4_2_0"), 92.0 * std::exp(-0.04), 1e-6);
    // After six competition reps these decide: 100 exp(-0.02 x 8) = 85.21.
    EXPECT_NEAR(targetKg(u"1x1+6 @8"_qs, "tempo_4_2_0"), 100.0 * std::exp(-0.16), 1e-6);
    // With feet-up reps (max 95) after one off-chest rep: 95 exp(-0.08).
    EXPECT_NEAR(targetKg(u"1x1+2(feet_up) @8"_qs, "off_chest_pause"), 95.0 * std::exp(-0.08), 1e-6);
    EXPECT_THAT(linesOf(u"1x1+2(nothing) @8"_qs).front().why.toStdString(), HasSubstr("nothing"));
}

TEST(ResolveLines, TempoAndPauseCostLoad)
{
    // Competition pauses one count; three pause counts are two more, four percent.
    EXPECT_NEAR(targetKg(u"1x3 @8 pause 3"_qs) / targetKg(u"1x3 @8"_qs), 0.96, 1e-9);
    // 4-2-0: two lowering counts beyond free ones and one pause count more.
    EXPECT_NEAR(targetKg(u"1x3 @8 tempo 4-2-0"_qs) / targetKg(u"1x3 @8"_qs), 0.92, 1e-9);
    EXPECT_GT(targetKg(u"1x3 @8 pause 1"_qs, "long_pause"), targetKg(u"1x3 @8"_qs, "long_pause"));
    // The catalogue's own ratios for the same (see manner_cost.h).
    const auto ratio = [](const char *code) { return find(builtInCatalogue(), idOf(code))->ratio; };
    const Variation &comp = *find(builtInCatalogue(), idOf("comp"));
    EXPECT_NEAR(mannerFactor(comp, Pause{3}), ratio("long_pause"), 0.01);
    EXPECT_NEAR(mannerFactor(comp, Tempo{4, 2, 0}), ratio("tempo_4_2_0"), 0.01);
    EXPECT_EQ(mannerFactor(comp, {}), 1.0);
    EXPECT_GT(mannerFactor(comp, Tempo{20, 20, 20}), 0.0);
}

TEST(ResolveLines, AsManyAsPossibleNeedsToKnowHowHeavy)
{
    EXPECT_THAT(linesOf(u"1xAMRAP @9"_qs).front().why.toStdString(), HasSubstr("how heavy"));
    EXPECT_NEAR(targetKg(u"1xAMRAP 70%"_qs), 70.0, 1e-9);
    EXPECT_DOUBLE_EQ(targetKg(u"1x5+ @9"_qs), targetKg(u"1x5 @9"_qs));
}

TEST(ResolveLines, CountsWhatIsExpected)
{
    const auto lines = parseSetLines(u"2x4-6 @8\n3x1+2 @8\n1x5+ 60%"_qs).lines;
    EXPECT_EQ(setCount(lines), 6);
    EXPECT_EQ(liftCount(lines), 2 * 5 + 3 * 3 + 5);
}

TEST(ResolveLines, TheChanceFallsWithLoadSetsAndDoubt)
{
    const auto chance = [](const QString &text, double maxSd) {
        return linesOf(text, "comp", maxSd).front().allMade.value();
    };
    EXPECT_GT(chance(u"1x3 @7"_qs, 0.02), 0.95);
    EXPECT_LT(chance(u"1x3 95%"_qs, 0.02), chance(u"1x3 90%"_qs, 0.02));
    EXPECT_LT(chance(u"4x3 92.5%"_qs, 0.02), chance(u"1x3 92.5%"_qs, 0.02));
    EXPECT_LT(chance(u"1x1 97.5%"_qs, 0.04), chance(u"1x1 97.5%"_qs, 0.01));
    // At exactly the max it is a toss.
    EXPECT_NEAR(chance(u"1x1 100kg"_qs, 0.02), 0.5, 0.01);
}

TEST(ResolveLines, WithoutALoadFromOwnSetsThereAreNoOdds)
{
    LiftEstimate newcomer = plainEstimate(kDay);
    newcomer.estimate.standing = strength::Standing::priorOnly;
    const PlateTable plates(usualGear(Unit::kilogram));
    const auto lines = resolve(parseSetLines(u"3x3 90kg\n3x3 @8"_qs).lines, idOf("comp"),
        LoadBasis{&newcomer, plates, Unit::kilogram, kDay, builtInCatalogue()}, 0);
    EXPECT_TRUE(lines[0].load);
    EXPECT_FALSE(lines[0].allMade);
    EXPECT_FALSE(lines[1].load);
    EXPECT_FALSE(lines[1].why.isEmpty());
}

TEST(ResolveLines, TheChanceDoubtsTheCurveByAShareOfWhatTheRepsCost)
{
    // Three reps cost 2 x 2 % of ln load, of which 5 % is doubt. At 95 kg
    // there are ln(100 / 95) - 0.04 = 1.13 % to spare.
    const Margin margin{std::log(100.0 / 95.0) - 0.04, 0.05 * 0.04};
    EXPECT_NEAR(linesOf(u"1x3 95kg"_qs).front().allMade.value(), chanceOfAll({&margin, 1}), 1e-9);
}

TEST(ResolveLines, MannersCostTheirCountsAndNoMoreThanHalf)
{
    const Variation &comp = *find(builtInCatalogue(), idOf("comp"));
    ASSERT_EQ(comp.tempo, (Tempo{0, 1, 0}));
    EXPECT_DOUBLE_EQ(mannerFactor(comp, Tempo{2, 1, 0}), 1.0) << "two counts down are free";
    EXPECT_DOUBLE_EQ(mannerFactor(comp, Tempo{3, 1, 0}), 0.97);
    EXPECT_DOUBLE_EQ(mannerFactor(comp, Tempo{0, 1, 2}), 0.94);
    EXPECT_DOUBLE_EQ(mannerFactor(comp, Pause{0}), 1.02);
    EXPECT_EQ(mannerFactor(comp, Tempo{20, 20, 20}), 0.5);
}
