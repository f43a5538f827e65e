#include "core/loads/week_sheet.h"

#include <gmock/gmock.h>

#include <QLocale>
#include <algorithm>
#include <cmath>

using namespace core;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

const QDate kSheetMonday(2026, 5, 4);
constexpr VariationId kBench{1}, kPaused{2}, kSquat{3};

Variation variation(VariationId id, const QString &name, Lift lift = Lift::bench)
{
    Variation v;
    v.id = id;
    v.name = name;
    v.lift = lift;
    v.competition = id != kPaused;
    v.purpose = QStringLiteral("Purpose of ") + name;
    return v;
}

class WeekSheetTest : public testing::Test
{
protected:
    WeekSheetTest()
    {
        QLocale::setDefault(QLocale::c());
        lifter.id = LifterId{1};
        lifter.name = QStringLiteral("Ada Example");
        lifter.gear = usualGear(Unit::kilogram);
        lifter.touchStyle = TouchStyle::soft;
        variations = {variation(kBench, QStringLiteral("Competition bench press")),
            variation(kPaused, QStringLiteral("Off-chest pause bench")),
            variation(kSquat, QStringLiteral("Competition squat"), Lift::squat)};
        variations[0].cautions = QStringLiteral("Stay tight. Do not bounce.");
        variations[1].cautions =
            QStringLiteral("Stay tight. Use a spotter or safeties set just below the chest.");
        variations[1].tempo = {0, 2, 0};

        bench.rows = {kBench, kPaused};
        bench.priors = {{1.0, 0.0, 1.0}, {1.0, 0.02, 1.0}};
        bench.estimate.standing = strength::Standing::enough;
        bench.estimate.curve = {0.03, 1.0};
        bench.estimate.setFatigue = 0.01;
        bench.estimate.variations.resize(2);
        for (strength::VariationEstimate &v : bench.estimate.variations)
            v.ratio = {1.0, 0.99, 1.01};
        bench.estimate.weeks = {
            {engineDay(kSheetMonday) - 1, {140, 137, 143}, {140, 138, 142}, 12}};
    }

    void add(int day, VariationId variationId, const QString &setLine, const QString &note = {})
    {
        Card card;
        card.lifter = lifter.id;
        card.day = kSheetMonday.addDays(day);
        card.variation = variationId;
        card.setLine = setLine;
        card.note = note;
        cards.push_back(card);
    }

    WeekSheet sheet() const
    {
        const auto estimateOf = [this](
                                    Lift lift) { return lift == Lift::bench ? &bench : nullptr; };
        return weekSheet(lifter, kSheetMonday,
            resolveCards(cards, {lifter, variations, estimateOf, checkIns, {}, {}}), variations,
            stops);
    }

    Lifter lifter;
    std::vector<Variation> variations;
    LiftEstimate bench;
    std::vector<Card> cards;
    std::vector<CheckIn> checkIns;
    std::vector<StopNote> stops;
};

} // namespace

TEST_F(WeekSheetTest, NamesLifterWeekTouchAndBar)
{
    lifter.meetDate = QDate(2026, 6, 14);
    const WeekSheet made = sheet();
    EXPECT_EQ(made.lifter, u"Ada Example");
    EXPECT_EQ(made.week, u"4 May to 10 May 2026");
    EXPECT_EQ(made.facts,
        (QStringList{QStringLiteral("soft touch"), QStringLiteral("meet on 14 June 2026"),
            QStringLiteral("bar 20 kg")}));
    EXPECT_THAT(made.days, IsEmpty());
    EXPECT_GE(made.cautions.size(), 5);
}

TEST_F(WeekSheetTest, WhatIsStoppedStandsInItsDayOrInTheHead)
{
    add(0, kBench, QStringLiteral("3x3 @8"));
    add(2, kBench, QStringLiteral("3x3 @8"));
    stops = {{kSheetMonday.addDays(2), QStringLiteral("Stop: pain.")},
        {kSheetMonday.addDays(2), QStringLiteral("Stop: pain.")},
        {{}, QStringLiteral("Stop: week.")}};
    const WeekSheet made = sheet();
    EXPECT_EQ(made.stops, QStringList{QStringLiteral("Stop: week.")});
    EXPECT_THAT(made.days[0].stops, IsEmpty());
    EXPECT_EQ(made.days[1].stops, QStringList{QStringLiteral("Stop: pain.")}) << "once";
}

TEST_F(WeekSheetTest, AMeetThatIsOverIsNotNamed)
{
    lifter.meetDate = kSheetMonday.addDays(-1);
    EXPECT_EQ(sheet().facts.size(), 2);
}

TEST_F(WeekSheetTest, ARowASetWithTheLoadOnThePlatesAtHand)
{
    add(0, kBench, QStringLiteral("3x3 @8"));
    const WeekSheet made = sheet();
    ASSERT_EQ(made.days.size(), 1U);
    EXPECT_EQ(made.days[0].day, u"Monday 4 May");
    const SheetCard &card = made.days[0].cards.at(0);
    ASSERT_EQ(card.sets.size(), 3U);
    // Five reps possible in the last set, two sets of fatigue: 140 exp(-0.03 * 4 - 0.01 * 2)
    // = 121.7 kg; the usual plates make 122.5 of it: 51.25 a side.
    EXPECT_EQ(card.sets[0].load, u"122.5");
    EXPECT_EQ(card.sets[0].plates, u"2 x 25 + 1.25");
    EXPECT_EQ(card.sets[0].reps, u"3");
    EXPECT_EQ(card.sets[0].target, u"@8");
    // At 122.5 kg 1 + ln(140 / 122.5) / 0.03 = 5.5 reps are possible fresh, 4.8 after two sets.
    EXPECT_EQ(card.sets[0].rpe, u"7.5");
    EXPECT_EQ(card.sets[2].rpe, u"8");
    EXPECT_EQ(card.setLine, u"3x3 @8");
}

TEST_F(WeekSheetTest, PoundsForALifterInPounds)
{
    lifter.unit = Unit::pound;
    lifter.gear = usualGear(Unit::pound);
    add(0, kBench, QStringLiteral("1x1 225lb"));
    const SheetSet set = sheet().days.at(0).cards.at(0).sets.at(0);
    EXPECT_EQ(sheet().unit, u"lb");
    EXPECT_EQ(set.load, u"225");
    EXPECT_EQ(set.plates, u"2 x 45");
}

TEST_F(WeekSheetTest, SetsOfTheSameLiftTireTheNextCardAndOthersDoNot)
{
    add(0, kBench, QStringLiteral("1x4 120kg"));
    const QString fresh = sheet().days[0].cards[0].sets[0].rpe;
    cards.clear();
    add(0, kSquat, QStringLiteral("10x5 100kg"));
    add(0, kBench, QStringLiteral("1x4 120kg"));
    EXPECT_EQ(sheet().days[0].cards[1].sets[0].rpe, fresh);
    cards.clear();
    add(0, kPaused, QStringLiteral("10x5 125kg"));
    add(0, kBench, QStringLiteral("1x4 120kg"));
    EXPECT_NE(sheet().days[0].cards[1].sets[0].rpe, fresh);
}

TEST_F(WeekSheetTest, WithoutAnEstimateTheLoadIsLeftForTheCoach)
{
    add(1, kSquat, QStringLiteral("2x5 @7"));
    const SheetCard card = sheet().days.at(0).cards.at(0);
    ASSERT_EQ(card.sets.size(), 2U);
    EXPECT_EQ(card.sets[0].load, QString());
    EXPECT_EQ(card.sets[0].rpe, QString());
    EXPECT_TRUE(card.cautions.contains(QStringLiteral("No load is given: ask the coach.")));
}

TEST_F(WeekSheetTest, ASetLineThatCannotBeReadIsPrintedAsWritten)
{
    add(0, kBench, QStringLiteral("five by five"));
    const SheetCard card = sheet().days.at(0).cards.at(0);
    EXPECT_EQ(card.setLine, u"five by five");
    EXPECT_THAT(card.sets, IsEmpty());
    EXPECT_TRUE(card.cautions.contains(QStringLiteral("The sets cannot be read: ask the coach.")));
}

TEST_F(WeekSheetTest, TheSameCautionIsSaidOnceAWeek)
{
    add(0, kBench, QStringLiteral("1x1 100kg"));
    add(2, kPaused, QStringLiteral("1x1 100kg"));
    const WeekSheet made = sheet();
    EXPECT_EQ(made.days[0].cards[0].cautions,
        (QStringList{QStringLiteral("Stay tight."), QStringLiteral("Do not bounce.")}));
    EXPECT_THAT(made.days[1].cards[0].cautions, IsEmpty());
}

TEST_F(WeekSheetTest, DaysRunFromMondayAndOtherWeeksCardsStayOut)
{
    add(0, kBench, QStringLiteral("1x1 100kg"));
    add(6, kBench, QStringLiteral("1x1 100kg"));
    add(7, kBench, QStringLiteral("1x1 100kg"));
    add(-1, kBench, QStringLiteral("1x1 100kg"));
    const WeekSheet made = sheet();
    ASSERT_EQ(made.days.size(), 2U);
    EXPECT_EQ(made.days[1].day, u"Sunday 10 May");
}

TEST_F(WeekSheetTest, AMinorIsNamedFirstAmongTheCautions)
{
    const auto namesMinor = [this] {
        return sheet().cautions.first().startsWith(QStringLiteral("This lifter may be a minor"));
    };
    EXPECT_FALSE(namesMinor()); // birth year unknown: the general line must do
    lifter.birthYear = 2009;
    EXPECT_TRUE(namesMinor());
    lifter.birthYear = 2007;
    EXPECT_FALSE(namesMinor());
}

TEST(TempoWords, SayCountsAndPauses)
{
    EXPECT_EQ(tempoWords({4, 2, 0}), u"4 counts down, 2 held, then as fast as possible");
    EXPECT_EQ(tempoWords({3, 1, 2}), u"3 counts down, 1 held, 2 up");
    EXPECT_EQ(tempoWords({0, 2, 0}), u"2-count pause");
    EXPECT_EQ(tempoWords({}), QString());
}

TEST_F(WeekSheetTest, TargetsAndMannersAreInWords)
{
    for (const char *line : {"1x5 1-2RIR", "1x5 2.5RIR tempo 4-2-0", "1x5 72.5% pause 3",
             "1x5 @7-8", "1x5 100kg", "1x5 -10%", "1x4-6 pause 2"})
        add(0, kBench, QLatin1String(line));
    std::vector<std::string> targets;
    const WeekSheet made = sheet();
    for (const SheetCard &card : made.days.at(0).cards)
        targets.push_back(card.sets.at(0).target.toStdString());
    EXPECT_THAT(targets,
        testing::ElementsAre("1\u20132 in reserve", "2.5 in reserve, tempo 4-2-0", "72.5%, pause 3",
            "@7\u20138", "", "", "pause 2"));
}

TEST_F(WeekSheetTest, TheRatingRisesAlongTheSetsOfALine)
{
    // Fresh, 1 + ln(140 / 120) / 0.03 = 6.1 reps are possible at 120 kg; each set before costs a
    // third of a rep where it was hard.
    add(0, kBench, QStringLiteral("5x4 120kg"));
    const WeekSheet made = sheet();
    std::vector<std::string> ratings;
    for (const SheetSet &set : made.days.at(0).cards.at(0).sets)
        ratings.push_back(set.rpe.toStdString());
    EXPECT_THAT(ratings, testing::ElementsAre("8", "8", "8.5", "9", "9"));
}

TEST_F(WeekSheetTest, EffortIsInWordsAndFarFromFailureItIsEasy)
{
    add(0, kBench, QStringLiteral("3x3 50%"));
    add(1, kBench, QStringLiteral("1x1 @8 then 2x3 -10%"));
    const WeekSheet made = sheet();
    const SheetCard &light = made.days.at(0).cards.at(0);
    EXPECT_EQ(light.sets.at(0).rpe, u"easy") << "no RPE 1 on paper";
    EXPECT_EQ(light.effort, QStringList{QStringLiteral("expected to be easy")});
    const SheetCard &two = made.days.at(1).cards.at(0);
    EXPECT_EQ(two.setLine, u"1x1 @8 then 2x3 -10%");
    ASSERT_EQ(two.effort.size(), 2);
    EXPECT_TRUE(two.effort[0].startsWith(QStringLiteral("1x1 @8: ")))
        << two.effort[0].toStdString();
    EXPECT_TRUE(two.effort[1].startsWith(QStringLiteral("2x3 -10%: expected ")));
}

TEST_F(WeekSheetTest, CollarsAreNamedWithTheBarAndAMeetOnItsMonday)
{
    lifter.gear.collarsKg = 5.0;
    lifter.meetDate = kSheetMonday;
    EXPECT_EQ(sheet().facts,
        (QStringList{QStringLiteral("soft touch"), QStringLiteral("meet on 4 May 2026"),
            QStringLiteral("bar and collars 25 kg")}));
}

TEST_F(WeekSheetTest, AFileNameHasNothingThatAFileSystemMinds)
{
    lifter.name = QStringLiteral("A/da \"Q\": Ex-ample\u00e9?");
    EXPECT_EQ(
        weekFileName(sheet()), QStringLiteral("A da Q Ex-ample\u00e9 - 4 May to 10 May 2026"));
    lifter.name = QString(300, u'x');
    EXPECT_EQ(weekFileName(sheet()).size(), 100);
}

TEST(TempoWords, ALoweringOfOneCountIsATempoAndOfNoneAPause)
{
    EXPECT_EQ(tempoWords({1, 0, 0}), u"1 counts down, 0 held, then as fast as possible");
    EXPECT_EQ(tempoWords({1, 0, 1}), u"1 counts down, 0 held, 1 up");
    EXPECT_EQ(tempoWords({0, 1, 0}), u"1-count pause");
    EXPECT_EQ(tempoWords({0, 0, 3}), QString());
}
