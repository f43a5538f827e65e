#include "core/advice/advisor.h"

#include "tests/core/advice/advice_desk.h"

#include <QLocale>
#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using About = AdviceTerm::About;

namespace {

const Variation &variationOf(const char *code)
{
    return *find(builtInCatalogue(), idOf(code));
}

QString wordsOf(const AdviceDesk &desk, About about, const char *code, int leadReps = 0)
{
    for (const AdviceTerm &term : termsFor({variationOf(code), leadReps}, desk.situation()))
        if (term.about == about)
            return term.words;
    return {};
}

LiftEstimate ownRatioOf(const char *code, double ratio)
{
    LiftEstimate lift;
    lift.rows = {idOf("comp"), idOf(code)};
    lift.estimate.variations.resize(2);
    lift.estimate.variations[1].ratio = {ratio, ratio - 0.01, ratio + 0.01};
    lift.estimate.variations[1].sets = 20;
    return lift;
}

} // namespace

TEST(AdvisorBounds, TheWeekIsNearlyFullFromFourFifthsOfTheFullest)
{
    AdviceDesk desk;
    for (const int week : {1, 2, 3})
        desk.did(7 * week, "comp", 19);
    const auto at = [&desk](int sets, const char *code) {
        desk.cards = {cardOf(1, desk.day, 0, idOf("comp"), QStringLiteral("%1x3 @7").arg(sets))};
        return desk.points(About::fatigue, code);
    };
    EXPECT_DOUBLE_EQ(at(15, "tempo_4_2_0"), -0.5) << "79 %";
    EXPECT_TRUE(wordsOf(desk, About::fatigue, "tempo_4_2_0").startsWith(u"Costs much"_qs));
    EXPECT_DOUBLE_EQ(at(15, "feet_up"), 0.0);
    EXPECT_DOUBLE_EQ(at(16, "tempo_4_2_0"), -1.0) << "84 %";
    EXPECT_TRUE(wordsOf(desk, About::fatigue, "tempo_4_2_0").contains(u"nearly full"_qs));
    EXPECT_DOUBLE_EQ(at(16, "feet_up"), 0.5);
    EXPECT_DOUBLE_EQ(at(18, "tempo_4_2_0"), -1.0) << "95 %";
    EXPECT_DOUBLE_EQ(at(19, "tempo_4_2_0"), -2.0);
    EXPECT_TRUE(wordsOf(desk, About::fatigue, "tempo_4_2_0").contains(u"already holds"_qs));
    EXPECT_FALSE(wordsOf(desk, About::fatigue, "tempo_4_2_0").contains(u"Only the lead"_qs));
    EXPECT_TRUE(wordsOf(desk, About::fatigue, "tempo_4_2_0", 1).contains(u"Only the lead"_qs));
    EXPECT_DOUBLE_EQ(at(20, "tempo_4_2_0"), -2.0);
}

TEST(AdvisorBounds, FreshnessCountsUpToThreePointsEitherWay)
{
    AdviceDesk desk;
    desk.slot.reps = 5;
    desk.checkIn.emplace();
    const auto with = [&desk](std::map<BodyArea, int> soreness, const char *code) {
        desk.checkIn->soreness = std::move(soreness);
        return desk.points(About::freshness, code);
    };
    EXPECT_DOUBLE_EQ(with({{BodyArea::chest, 1}}, "comp"), -1.5);
    EXPECT_DOUBLE_EQ(with({{BodyArea::legs, 1}}, "comp"), -0.75);
    EXPECT_DOUBLE_EQ(with({{BodyArea::shoulders, 1}}, "close_grip"), 1.5) << "works them less";
    EXPECT_DOUBLE_EQ(with({{BodyArea::shoulders, 1}}, "board_5cm"), -0.75) << "but it is heavier";
    EXPECT_DOUBLE_EQ(with({{BodyArea::legs, 1}, {BodyArea::back, 1}}, "feet_up"), 3.0);
    EXPECT_DOUBLE_EQ(
        with({{BodyArea::chest, 1}, {BodyArea::shoulders, 1}, {BodyArea::elbows, 1}}, "comp"),
        -3.0);
    EXPECT_DOUBLE_EQ(with({{BodyArea::chest, 3}}, "comp"), 0.0);
    EXPECT_DOUBLE_EQ(with({{BodyArea::chest, 1}}, "front_squat"), 0.0) << "it does not work it";
}

TEST(AdvisorBounds, OnlyTheFreshMissTheirLegDriveAndOnlyOnTheBench)
{
    AdviceDesk desk;
    EXPECT_DOUBLE_EQ(desk.points(About::freshness, "feet_up"), -1.0);
    EXPECT_DOUBLE_EQ(desk.points(About::freshness, "comp"), 0.0);
    Variation pull = variationOf("feet_up");
    pull.lift = Lift::deadlift;
    EXPECT_DOUBLE_EQ(desk.points(About::freshness, pull), 0.0);
    desk.checkIn.emplace();
    desk.checkIn->soreness[BodyArea::legs] = 1;
    EXPECT_DOUBLE_EQ(desk.points(About::freshness, "feet_up"), 3.0);
}

TEST(AdvisorBounds, TheOwnRatioIsSaidInPerCentAndAskedOnlyWhereItWasWorkedOut)
{
    QLocale::setDefault(QLocale::c());
    AdviceDesk desk;
    desk.estimate = ownRatioOf("close_grip", 0.92);
    EXPECT_TRUE(wordsOf(desk, About::ownRatio, "close_grip")
                    .contains(u"92% of competition, usual is 95%"_qs));
    desk.estimate->estimate.variations.resize(1);
    EXPECT_DOUBLE_EQ(desk.points(About::ownRatio, "close_grip"), 0.0);
}

TEST(AdvisorBounds, HeavierIsAboveTheCompetitionLiftByTheUsualOrTheOwnRatio)
{
    Variation v = variationOf("close_grip");
    v.ratio = 1.0;
    EXPECT_FALSE(isHeavier(v, nullptr));
    v.ratio = 1.01;
    EXPECT_TRUE(isHeavier(v, nullptr));
    v.ratio = 0.95;
    LiftEstimate lift = ownRatioOf("close_grip", 1.0);
    EXPECT_FALSE(isHeavier(v, &lift));
    lift = ownRatioOf("close_grip", 1.01);
    EXPECT_TRUE(isHeavier(v, &lift));
    v.competition = true;
    EXPECT_FALSE(isHeavier(v, &lift)) << "it is the measure itself";
    v.competition = false;
    lift.estimate.variations.resize(1);
    EXPECT_FALSE(isHeavier(v, &lift));
    lift = ownRatioOf("feet_up", 1.01);
    EXPECT_FALSE(isHeavier(v, &lift));
}

TEST(AdvisorBounds, ALogIsOneWithSetsOfTheDaysBefore)
{
    AdviceDesk today;
    today.did(0, "comp");
    EXPECT_FALSE(today.situation().hasLog());
    AdviceDesk empty;
    empty.sessions = {sessionOf(empty.day.addDays(-1), {})};
    EXPECT_FALSE(empty.situation().hasLog());
    AdviceDesk yesterday;
    yesterday.did(1, "comp");
    EXPECT_TRUE(yesterday.situation().hasLog());
    yesterday.did(0, "comp");
    EXPECT_TRUE(yesterday.situation().hasLog());
}

TEST(AdvisorBounds, TheHardSetsOfTheDayBeforeAreCounted)
{
    AdviceDesk desk;
    desk.did(1, "squat", 3);
    desk.did(1, "squat", 2, 6.0);
    desk.did(1, "comp", 4);
    const std::vector<Tiredness> tired = desk.situation().tired;
    ASSERT_EQ(tired.size(), 2u);
    EXPECT_TRUE(tired[0].words.contains(u"hard sets: 3."_qs)) << tired[0].words.toStdString();
    EXPECT_DOUBLE_EQ(tired[0].weight, 0.5);
    AdviceDesk planned;
    planned.cards = {cardOf(1, planned.day.addDays(-1), 0, idOf("deadlift"), u"4x3 150kg"_qs)};
    ASSERT_EQ(planned.situation().tired.size(), 2u);
    EXPECT_TRUE(planned.situation().tired[0].words.contains(u"hard sets: 4."_qs));
}

TEST(AdvisorBounds, WhatWasSaidIsTheLiftersOwnOfTheDay)
{
    AdviceDesk desk;
    CheckIn checkIn;
    checkIn.lifter = desk.lifter.id = {1};
    checkIn.day = desk.day;
    checkIn.sleep = 2;
    const auto readinessWith = [&desk](const CheckIn &one) {
        const std::vector<CheckIn> said{one};
        return situationOf(
            desk.slot, {desk.lifter, builtInCatalogue(), desk.day, desk.cards, desk.sessions, said})
            .readiness;
    };
    EXPECT_EQ(readinessWith(checkIn), 2.0);
    CheckIn other = checkIn;
    other.lifter = {2};
    EXPECT_EQ(readinessWith(other), std::nullopt);
    checkIn.day = desk.day.addDays(-1);
    EXPECT_EQ(readinessWith(checkIn), std::nullopt);
}

TEST(AdvisorBounds, TheSetLineIsThreeSetsWithALeadOnlyWhereARepFollows)
{
    Advice advice;
    advice.leadReps = 1;
    Ranking ranking;
    const auto line = [&](int reps, std::optional<double> rpe, std::optional<double> most) {
        ranking.reps = reps;
        ranking.mostRpe = most;
        return adviceSetLine(advice, {Lift::bench, reps, rpe}, ranking);
    };
    EXPECT_EQ(line(1, {}, {}), u"3x1 @8"_qs);
    EXPECT_EQ(line(2, {}, {}), u"3x1+1 @8"_qs);
    EXPECT_EQ(line(2, 9.5, {}), u"3x1+1 @9.5"_qs);
    EXPECT_EQ(line(2, 9.5, 9.0), u"3x1+1 @9"_qs);
    EXPECT_EQ(line(2, 7.0, 9.0), u"3x1+1 @7"_qs);
    EXPECT_EQ(line(2, {}, 6.0), u"3x1+1 @6"_qs);
}

TEST(AdvisorBounds, EachCautionIsSaidWhereItIsTheReason)
{
    AdviceDesk desk;
    desk.lifter.id = {1};
    desk.lifter.birthYear = 1990;
    desk.checkIn.emplace();
    desk.checkIn->lifter = desk.lifter.id;
    const auto rank = [&desk] {
        const std::vector<CheckIn> said = desk.said();
        return rankVariations(desk.slot,
            {desk.lifter, builtInCatalogue(), desk.day, desk.cards, desk.sessions, said});
    };
    EXPECT_TRUE(rank().cautions.isEmpty());
    desk.checkIn->sleep = 2;
    EXPECT_EQ(rank().cautions.size(), 1);
    EXPECT_EQ(rank().mostRpe, 9.0);
    desk.checkIn->pain = PainFlag{BodyArea::chest, {}};
    EXPECT_EQ(rank().cautions.size(), 1) << "the pain says it all";
    EXPECT_TRUE(rank().advice.empty());
    EXPECT_EQ(rank().mostRpe, 6.0);
    desk.lifter.trainingSince = desk.day.addDays(-30);
    EXPECT_EQ(rank().cautions.size(), 2);
    desk.lifter.birthYear = 2011;
    EXPECT_EQ(rank().cautions.size(), 2) << "a minor, whatever the training age";
}
