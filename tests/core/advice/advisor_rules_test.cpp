#include "tests/core/advice/advice_desk.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>

// When each rule of the advisor speaks, and for or against. All are common practice, no source. How
// much each weighs: advisor_weights_test.cpp.

using namespace core;
using namespace tests;
using About = AdviceTerm::About;

namespace {

using Desk = AdviceDesk;

} // namespace

TEST(AdvisorRules, TheMeetIsNearForThreeWeeksAndVeryNearForTenDays)
{
    Desk desk;
    desk.did(40, "comp");
    desk.did(5, "comp");
    const auto at = [&desk](int days, const char *code) {
        desk.lifter.meetDate = kDay.addDays(days);
        return desk.points(About::meet, code);
    };
    EXPECT_EQ(at(22, "comp"), 0.0);
    EXPECT_GT(at(21, "comp"), 0.0);
    EXPECT_EQ(at(11, "comp"), at(21, "comp"));
    EXPECT_GT(at(10, "comp"), at(11, "comp"));
    EXPECT_EQ(at(0, "comp"), at(10, "comp")) << "on the day itself too";
    EXPECT_EQ(at(11, "board_5cm"), 0.0);
    EXPECT_LT(at(10, "board_5cm"), 0.0) << "nothing new";
    EXPECT_EQ(at(11, "tempo_4_2_0"), 0.0);
    const double untrained = at(10, "tempo_4_2_0");
    desk.did(28, "tempo_4_2_0");
    EXPECT_LT(at(10, "tempo_4_2_0"), 0.0) << "known, but costs too much";
    EXPECT_GT(at(10, "tempo_4_2_0"), untrained);
    desk.sessions.clear();
    EXPECT_EQ(at(10, "board_5cm"), 0.0) << "without a log nothing is known to be new";
}

TEST(AdvisorRules, AVariationIsTrainedForFourWeeks)
{
    Desk desk;
    desk.did(28, "feet_up");
    EXPECT_EQ(desk.situation().daysSince(idOf("feet_up")), 28);
    EXPECT_TRUE(desk.situation().hasLog());
    Desk longAgo;
    longAgo.did(29, "feet_up");
    EXPECT_EQ(longAgo.situation().daysSince(idOf("feet_up")), std::nullopt);
    EXPECT_FALSE(longAgo.situation().hasLog());
    Desk today;
    today.did(0, "feet_up");
    EXPECT_EQ(today.situation().daysSince(idOf("feet_up")), std::nullopt) << "of the days before";
    Desk led; // lead reps are training too
    led.did(3, "comp");
    led.sessions.back().sets.back().lead = LeadReps{idOf("tempo_4_2_0"), 1};
    EXPECT_EQ(led.situation().daysSince(idOf("tempo_4_2_0")), 3);
}

TEST(AdvisorRules, CompetitionRepsAreMissedAfterAWeek)
{
    Desk desk;
    desk.did(7, "comp");
    EXPECT_EQ(desk.points(About::lately, "comp"), 0.0);
    desk.sessions.clear();
    desk.did(8, "comp");
    EXPECT_GT(desk.points(About::lately, "comp"), 0.0);
    desk.sessions.clear();
    EXPECT_EQ(desk.points(About::lately, "comp"), 0.0) << "no log, no habit";
}

TEST(AdvisorRules, WhatWasDoneYesterdayOrTwiceInSixDaysIsNotDoneAgain)
{
    Desk desk;
    desk.did(1, "close_grip");
    EXPECT_LT(desk.points(About::lately, "close_grip"), 0.0);
    desk.sessions.clear();
    desk.did(2, "close_grip");
    EXPECT_EQ(desk.points(About::lately, "close_grip"), 0.0);
    desk.did(7, "close_grip");
    EXPECT_EQ(desk.situation().usesInSixDays(idOf("close_grip")), 1);
    EXPECT_EQ(desk.points(About::lately, "close_grip"), 0.0);
    desk.did(6, "close_grip");
    desk.did(6, "close_grip"); // twice on one day is one day
    EXPECT_EQ(desk.situation().usesInSixDays(idOf("close_grip")), 2);
    EXPECT_LT(desk.points(About::lately, "close_grip"), 0.0);
    desk.did(2, "comp");
    desk.did(4, "comp");
    EXPECT_EQ(desk.points(About::lately, "comp"), 0.0) << "competition reps are never too many";
}

TEST(AdvisorRules, PlannedDaysCountUntilSomethingIsLoggedAfterThem)
{
    Desk desk;
    desk.cards = {cardOf(1, kDay.addDays(-2), 0, idOf("feet_up"), QStringLiteral("3x5 @7"))};
    EXPECT_EQ(desk.situation().daysSince(idOf("feet_up")), 2);
    desk.did(3, "comp");
    EXPECT_EQ(desk.situation().daysSince(idOf("feet_up")), 2);
    desk.did(2, "comp");
    EXPECT_EQ(desk.situation().daysSince(idOf("feet_up")), std::nullopt);
}

TEST(AdvisorRules, TheWeekIsFullAtTheFullestOfTheLastSixAndNearlyFullAtFourFifths)
{
    Desk desk;
    for (const int week : {1, 2, 3})
        desk.did(7 * week, "comp", week == 2 ? 10 : 6);
    desk.did(7 * 6 + 3, "comp", 40); // seven weeks before: no longer counted
    const auto with = [&desk](int planned) {
        desk.cards = {
            cardOf(1, kMonday.addDays(6), 0, idOf("comp"), QStringLiteral("%1x3 @7").arg(planned))};
        return *desk.situation().weekShare;
    };
    EXPECT_DOUBLE_EQ(with(5), 0.5);
    const double open = desk.points(About::fatigue, "tempo_4_2_0");
    EXPECT_LT(open, 0.0) << "what costs much is never free";
    EXPECT_EQ(desk.points(About::fatigue, "board_5cm"), 0.0);
    EXPECT_DOUBLE_EQ(with(8), 0.8);
    const double nearlyFull = desk.points(About::fatigue, "tempo_4_2_0");
    EXPECT_LT(nearlyFull, open);
    EXPECT_DOUBLE_EQ(with(9), 0.9);
    EXPECT_EQ(desk.points(About::fatigue, "tempo_4_2_0"), nearlyFull);
    EXPECT_DOUBLE_EQ(with(10), 1.0);
    const double full = desk.points(About::fatigue, "tempo_4_2_0");
    EXPECT_LT(full, nearlyFull);
    const double led = desk.points(About::fatigue, "tempo_4_2_0", 1);
    EXPECT_LT(led, 0.0);
    EXPECT_GT(led, full) << "only the lead rep costs so much";
}

TEST(AdvisorRules, AWeekIsMeasuredOnlyAgainstThreeTrainedWeeks)
{
    Desk desk;
    desk.did(7, "comp");
    desk.did(14, "comp");
    EXPECT_EQ(desk.situation().weekShare, std::nullopt);
    desk.did(6 * 7, "comp");
    EXPECT_NE(desk.situation().weekShare, std::nullopt);
    desk.did(1, "comp", 3);
    EXPECT_DOUBLE_EQ(*desk.situation().weekShare, 3.0) << "this week's sets count";
    desk.did(1, "squat", 5);
    EXPECT_DOUBLE_EQ(*desk.situation().weekShare, 3.0) << "those of another lift do not";
}

TEST(AdvisorRules, OnlyHardSquatsAndPullsOfTheDayBeforeTire)
{
    const auto tired = [](int daysAgo, const char *code, double rpe) {
        Desk desk;
        desk.did(daysAgo, code, 3, rpe);
        return desk.situation().tired.size();
    };
    EXPECT_EQ(tired(1, "squat", 7.5), 2u);
    EXPECT_EQ(tired(1, "deadlift", 7.5), 2u);
    EXPECT_EQ(tired(1, "squat", 7.0), 0u);
    EXPECT_EQ(tired(2, "squat", 9.0), 0u);
    EXPECT_EQ(tired(1, "comp", 9.0), 0u);
    Desk failed;
    failed.did(1, "squat", 1, 6.0);
    failed.sessions.back().sets.back().failed = true;
    EXPECT_EQ(failed.situation().tired.size(), 2u);
    Desk unrated;
    unrated.did(1, "squat");
    unrated.sessions.back().sets.back().rpe.reset();
    EXPECT_EQ(unrated.situation().tired.size(), 2u) << "who knows";
}

TEST(AdvisorRules, WhatTheLifterSaysCountsMoreThanAGuess)
{
    Desk guessed;
    guessed.did(1, "squat", 3);
    guessed.checkIn.emplace();
    guessed.checkIn->soreness = {{BodyArea::back, 5}};
    Desk said = guessed;
    said.checkIn->soreness[BodyArea::legs] = 1;
    const auto points = [](const Desk &desk, const char *code) {
        return desk.points(About::freshness, code);
    };
    EXPECT_GT(points(guessed, "feet_up"), 0.0);
    EXPECT_GT(points(said, "feet_up"), points(guessed, "feet_up"));
    EXPECT_LT(points(guessed, "comp"), 0.0);
    EXPECT_LT(points(said, "comp"), points(guessed, "comp"));
    Desk both = said;
    both.checkIn->soreness[BodyArea::back] = 1;
    EXPECT_EQ(points(both, "feet_up"), points(said, "feet_up"))
        << "one sore area spared is enough to be chosen for";
    EXPECT_LT(points(both, "comp"), points(said, "comp"));
}

TEST(AdvisorRules, LowReadinessSpeaksAgainstWhatCostsMuch)
{
    Desk desk;
    desk.checkIn.emplace();
    desk.checkIn->sleep = 2;
    EXPECT_LT(desk.points(About::freshness, "tempo_4_2_0"), 0.0);
    EXPECT_EQ(desk.points(About::freshness, "comp"), 0.0);
    desk.checkIn->stress = 3;
    EXPECT_EQ(desk.points(About::freshness, "tempo_4_2_0"), 0.0);
}

TEST(AdvisorRules, RepsSpeakForWhatIsMadeForThem)
{
    Desk desk;
    const auto at = [&desk](int reps, const char *code, int leadReps = 0) {
        desk.slot.reps = reps;
        return desk.points(About::reps, code, leadReps);
    };
    const Variation &closeGrip = *find(builtInCatalogue(), idOf("close_grip")); // 3 to 12
    EXPECT_LT(at(closeGrip.repsLow - 1, "close_grip"), 0.0);
    EXPECT_GT(at(closeGrip.repsLow, "close_grip"), 0.0);
    EXPECT_LT(at(closeGrip.repsLow, "close_grip"), at(closeGrip.repsLow + 1, "close_grip"))
        << "heavy, it is at its low end";
    EXPECT_GT(at(closeGrip.repsHigh, "close_grip"), 0.0);
    const double oneMore = at(closeGrip.repsHigh + 1, "close_grip");
    EXPECT_LT(oneMore, 0.0);
    EXPECT_LT(at(closeGrip.repsHigh + 2, "close_grip"), oneMore);
    EXPECT_EQ(at(40, "close_grip"), at(50, "close_grip")) << "far out is far out";
    EXPECT_GT(at(3, "off_chest_pause"), at(3, "comp")) << "made for heavy sets";
    EXPECT_GT(at(kMostHeavyReps, "tempo_4_2_0", 1), 0.0);
    EXPECT_LT(at(kMostHeavyReps + 1, "tempo_4_2_0", 1), 0.0);
    EXPECT_LT(at(kMostHeavyReps + 2, "tempo_4_2_0", 1), at(kMostHeavyReps + 1, "tempo_4_2_0", 1));
}

TEST(AdvisorRules, TheTouchDecidesAndMoreSoWhenHeavy)
{
    Desk desk;
    const auto at = [&desk](TouchStyle style, int reps, const char *code) {
        desk.lifter.touchStyle = style;
        desk.slot.reps = reps;
        return desk.points(About::touch, code);
    };
    EXPECT_GT(at(TouchStyle::soft, 5, "off_chest_pause"), 0.0);
    EXPECT_GT(
        at(TouchStyle::soft, 3, "off_chest_pause"), at(TouchStyle::soft, 4, "off_chest_pause"));
    EXPECT_LT(at(TouchStyle::sinking, 3, "off_chest_pause"), 0.0);
    EXPECT_GT(at(TouchStyle::sinking, 3, "long_pause"), 0.0);
    EXPECT_GT(at(TouchStyle::undecided, 3, "comp"), 0.0);
    EXPECT_EQ(at(TouchStyle::undecided, 3, "off_chest_pause"), 0.0);
    EXPECT_EQ(at(TouchStyle::soft, 3, "comp"), 0.0);
}

TEST(AdvisorRules, TheOwnRatioSpeaksOnceItIsKnown)
{
    Desk desk;
    LiftEstimate estimate;
    estimate.rows = {idOf("comp"), idOf("close_grip")};
    estimate.estimate.variations = {{{1.0, 1.0, 1.0}, {}, 50}, {{0.95, 0.93, 0.97}, {}, 20}};
    desk.estimate = estimate;
    strength::VariationEstimate &own = desk.estimate->estimate.variations[1];
    const auto with = [&](double low, double high, int sets) {
        own.ratio = {0.5 * (low + high), low, high};
        own.sets = sets;
        return desk.points(About::ownRatio, "close_grip"); // usually 0.95
    };
    EXPECT_EQ(with(0.93, 0.97, 20), 0.0) << "as most";
    EXPECT_GT(with(0.90, 0.94, 20), 0.0) << "weaker than most";
    EXPECT_LT(with(0.96, 0.99, 20), 0.0) << "stronger than most";
    EXPECT_EQ(with(0.90, 1.01, 20), 0.0);
    EXPECT_LT(with(0.89, 1.02, 20), 0.0) << "wider than 12 % of the competition max";
    EXPECT_LT(with(0.90, 0.94, 0), 0.0) << "nothing logged";
    EXPECT_EQ(desk.points(About::ownRatio, "comp"), 0.0);
    EXPECT_EQ(desk.points(About::ownRatio, "feet_up"), 0.0) << "no row";
}

TEST(AdvisorRules, WhatLeadsASetIsHeavyCostlyAndNotTheLiftItself)
{
    const auto &catalogue = builtInCatalogue();
    EXPECT_TRUE(leadsWell(*find(catalogue, idOf("tempo_4_2_0"))));
    for (const char *code : {"comp", "off_chest_pause", "close_grip", "feet_up"})
        EXPECT_FALSE(leadsWell(*find(catalogue, idOf(code)))) << code;
    Variation v = *find(catalogue, idOf("tempo_4_2_0"));
    v.repsHigh = kMostHeavyReps + 1;
    EXPECT_FALSE(leadsWell(v));
}

TEST(AdvisorRules, InPainNoSetIsHarderThanSix)
{
    Desk desk;
    desk.lifter.birthYear = 2010; // the lower of two caps holds
    desk.checkIn.emplace();
    desk.checkIn->pain = PainFlag{BodyArea::legs, {}};
    EXPECT_EQ(rankVariations(desk.slot,
                  {desk.lifter, builtInCatalogue(), desk.day, desk.cards, desk.sessions,
                      desk.said(), nullptr})
                  .mostRpe,
        6.0);
}
