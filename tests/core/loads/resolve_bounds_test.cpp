#include "core/loads/resolved_cards.h"
#include "core/loads/set_in_values.h"
#include "core/loads/week_sheet.h"
#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::HasSubstr;

namespace {

const QDate kResolvedDay(2026, 3, 4);

std::vector<ResolvedLine> linesOn(
    const Gear &gear, const QString &text, const LiftEstimate *lift = nullptr)
{
    const PlateTable plates(gear);
    return resolve(parseSetLines(text).lines, idOf("comp"),
        LoadBasis{lift, plates, Unit::kilogram, kResolvedDay, builtInCatalogue()}, 0);
}

std::string cautionOf(const Gear &gear, const QString &text, const LiftEstimate *lift = nullptr)
{
    return linesOn(gear, text, lift).back().caution.toStdString();
}

const Gear kFew{20.0, 0.0, {{10, 1}}}; // 20 and 40 kg

} // namespace

TEST(ResolveBounds, HalfAJumpBesideWhatCanBeLoadedIsStillAsNearAsThePlatesGo)
{
    EXPECT_THAT(cautionOf(kFew, u"1x1 9.9kg"_qs), HasSubstr("empty bar is heavier"));
    EXPECT_THAT(cautionOf(kFew, u"1x1 10kg"_qs), HasSubstr("10 kg cannot be loaded"));
    EXPECT_EQ(cautionOf(kFew, u"1x1 20kg"_qs), "");
    EXPECT_EQ(cautionOf(kFew, u"1x1 40kg"_qs), "");
    EXPECT_THAT(cautionOf(kFew, u"1x1 50kg"_qs), HasSubstr("50 kg cannot be loaded"));
    EXPECT_THAT(cautionOf(kFew, u"1x1 50.1kg"_qs), HasSubstr("end at 40 kg"));
    const Gear bare{20.0, 0.0, {}};
    EXPECT_THAT(cautionOf(bare, u"1x1 19.99kg"_qs), HasSubstr("empty bar is heavier"));
    EXPECT_THAT(cautionOf(bare, u"1x1 20.01kg"_qs), HasSubstr("end at 20 kg"));
}

TEST(ResolveBounds, ASetThatCanJustBeDoneIsNotLikelyToBeMissed)
{
    const LiftEstimate lift = plainEstimate(kResolvedDay);
    const Gear gear = usualGear(Unit::kilogram);
    EXPECT_EQ(cautionOf(gear, u"1x1 97.5kg"_qs, &lift), "");
    EXPECT_THAT(cautionOf(gear, u"1x1 102.5kg"_qs, &lift), HasSubstr("likely to be missed"));
}

TEST(ResolveBounds, ADropOfTheWholeTopSetLeavesNothing)
{
    const Gear gear = usualGear(Unit::kilogram);
    const ResolvedLine none = linesOn(gear, u"1x1 100kg\n1x1 -100kg"_qs).back();
    EXPECT_FALSE(none.load);
    EXPECT_THAT(none.why.toStdString(), HasSubstr("larger than the top set"));
    EXPECT_EQ(linesOn(gear, u"1x1 100kg\n1x1 -75kg"_qs).back().load->loadKg, 25.0);
}

TEST(ResolveBounds, SetsOfUnknownReserveAreAllHard)
{
    const auto lines = linesOn(usualGear(Unit::kilogram), u"5x3 60kg\n2x3 60kg\n1x3"_qs);
    EXPECT_EQ(lines[0].hardSetsAfter, 5.0);
    EXPECT_EQ(lines[1].hardSetsAfter, 7.0);
    EXPECT_EQ(lines[2].hardSetsAfter, 8.0);
}

TEST(ResolveBounds, TheChanceOfTheFirstSetIsThatOfOneAlone)
{
    const LiftEstimate lift = plainEstimate(kResolvedDay, 100.0, 0.02);
    const Gear gear = usualGear(Unit::kilogram);
    const ResolvedLine four = linesOn(gear, u"4x3 92.5kg"_qs, &lift)[0];
    const ResolvedLine one = linesOn(gear, u"1x3 92.5kg"_qs, &lift)[0];
    EXPECT_DOUBLE_EQ(*four.firstMade, *one.firstMade);
    EXPECT_DOUBLE_EQ(*one.allMade, *one.firstMade);
    EXPECT_LT(*four.allMade, *four.firstMade);
}

TEST(SetsInValues, SayWhetherTheRepsAreACountARangeOrWithoutAnEnd)
{
    const Variation &comp = *find(builtInCatalogue(), idOf("comp"));
    const auto values = [&comp](const QString &text) {
        return setsInValues(
            linesOn(usualGear(Unit::kilogram), text).at(0), comp, builtInCatalogue());
    };
    ASSERT_EQ(values(u"3x5 100kg"_qs).size(), 3u);
    const SetInValues plain = values(u"1x5 100kg"_qs).at(0);
    EXPECT_TRUE(plain.isExact);
    EXPECT_FALSE(plain.isOpenEnded);
    EXPECT_EQ(plain.leadReps, 0);
    EXPECT_EQ(plain.code, u"comp");
    EXPECT_FALSE(plain.isMaximal);
    EXPECT_FALSE(values(u"1x4-6 100kg"_qs).at(0).isExact);
    EXPECT_FALSE(values(u"1x4-6 100kg"_qs).at(0).isOpenEnded);
    EXPECT_FALSE(values(u"1x5+ 100kg"_qs).at(0).isExact);
    EXPECT_TRUE(values(u"1x5+ 100kg"_qs).at(0).isOpenEnded);
    EXPECT_EQ(values(u"1x1+2(feet_up) 80kg"_qs).at(0).code, u"feet_up");
    EXPECT_EQ(values(u"1x1+2 80kg"_qs).at(0).leadReps, 1);
}

TEST(SetsInValues, RateEachSetAlongTheLineAndNoneOfUnknownReserve)
{
    const LiftEstimate lift = plainEstimate(kResolvedDay);
    const Variation &comp = *find(builtInCatalogue(), idOf("comp"));
    const auto rpes = [&](const QString &text, const LiftEstimate *estimate) {
        std::vector<std::optional<double>> all;
        for (const SetInValues &set :
            setsInValues(
                linesOn(usualGear(Unit::kilogram), text, estimate).at(0), comp, builtInCatalogue()))
            all.push_back(set.rpe);
        return all;
    };
    // 1 - ln 0.9 / 0.02 = 6.27 reps are possible fresh; a hard set before costs half a one.
    EXPECT_THAT(rpes(u"1x5 90kg"_qs, &lift), testing::ElementsAre(8.5));
    EXPECT_THAT(rpes(u"3x5 90kg"_qs, &lift), testing::ElementsAre(8.5, 9.0, 9.5));
    EXPECT_THAT(rpes(u"1x5 90kg"_qs, nullptr), testing::ElementsAre(std::nullopt));
}

TEST(SuggestedSetLine, IsWithoutMaximalWorkForThoseWhoGetNone)
{
    const Variation &comp = *find(builtInCatalogue(), idOf("comp"));
    const auto suggested = [&comp](const QString &last, bool mayGoMaximal) {
        DayLimits limits;
        if (!mayGoMaximal)
            limits.noMaximal = {NoMaximal::minor};
        return suggestedSetLine(
            comp, {cardOf(1, kResolvedDay, 0, comp.id, last)}, kResolvedDay, limits);
    };
    EXPECT_EQ(suggested(u"1x1 @9.5"_qs, true), u"1x1 @9.5"_qs);
    EXPECT_EQ(suggested(u"1x1 @9.5"_qs, false), u"1x1 @8"_qs);
    EXPECT_EQ(suggested(u"3x5 @8 ; as written"_qs, false), u"3x5 @8 ; as written"_qs);
    EXPECT_EQ(suggested(u"heavy"_qs, false), u"heavy"_qs);
}

TEST(WeekSheetNovice, IsNamedFirstAmongTheCautions)
{
    Lifter lifter;
    lifter.birthYear = 1990;
    lifter.gear = usualGear(Unit::kilogram);
    const auto isNamed = [&lifter] {
        return weekSheet(lifter, QDate(2026, 3, 2), {}, builtInCatalogue(), {})
            .cautions.first()
            .startsWith(QStringLiteral("In training for less than a year"));
    };
    EXPECT_FALSE(isNamed());
    lifter.trainingSince = QDate(2025, 3, 3);
    EXPECT_TRUE(isNamed());
    lifter.trainingSince = QDate(2025, 3, 2);
    EXPECT_FALSE(isNamed());
}
