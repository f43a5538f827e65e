#include "tests/core/advice/advice_desk.h"
#include "tests/support/days.h"

#include <gtest/gtest.h>

// How much each reason of the advisor weighs. The points are made up (common practice, no source)
// and mean nothing but an order; what coaches see on top hangs on them, so none changes unseen.

using namespace core;
using namespace tests;
using About = AdviceTerm::About;

namespace {

using Desk = AdviceDesk;

} // namespace

TEST(AdvisorWeights, OfTheTouch)
{
    Desk desk;
    EXPECT_DOUBLE_EQ(desk.points(About::touch, "comp"), 0.5);
    desk.lifter.touchStyle = TouchStyle::soft;
    EXPECT_DOUBLE_EQ(desk.points(About::touch, "off_chest_pause"), 2.0);
    EXPECT_DOUBLE_EQ(desk.points(About::touch, "long_pause"), -3.0);
    desk.slot.reps = 5;
    EXPECT_DOUBLE_EQ(desk.points(About::touch, "off_chest_pause"), 1.0);
}

TEST(AdvisorWeights, OfTheReps)
{
    Desk desk;
    const auto at = [&desk](int reps, const char *code, int leadReps = 0) {
        desk.slot.reps = reps;
        return desk.points(About::reps, code, leadReps);
    };
    EXPECT_DOUBLE_EQ(at(3, "tempo_4_2_0", 1), 1.5);
    EXPECT_DOUBLE_EQ(at(4, "tempo_4_2_0", 1), -1.5);
    EXPECT_DOUBLE_EQ(at(5, "tempo_4_2_0", 1), -3.0);
    EXPECT_DOUBLE_EQ(at(30, "tempo_4_2_0", 1), -6.0);
    EXPECT_DOUBLE_EQ(at(3, "off_chest_pause"), 1.5); // 1 to 3
    EXPECT_DOUBLE_EQ(at(5, "off_chest_pause"), -3.0);
    EXPECT_DOUBLE_EQ(at(2, "close_grip"), -1.5); // 3 to 12
    EXPECT_DOUBLE_EQ(at(3, "close_grip"), 0.25);
    EXPECT_DOUBLE_EQ(at(8, "close_grip"), 1.0);
    EXPECT_DOUBLE_EQ(at(40, "close_grip"), -6.0);
    EXPECT_DOUBLE_EQ(at(3, "comp"), 1.0) << "singles are usual in it";
    Variation wide = *find(builtInCatalogue(), idOf("close_grip"));
    wide.repsHigh = 7;
    EXPECT_DOUBLE_EQ((desk.slot.reps = 3, desk.points(About::reps, wide)), 0.25);
    wide.repsHigh = 6;
    EXPECT_DOUBLE_EQ(desk.points(About::reps, wide), 1.0) << "three is no low end of 3 to 6";
    wide.repsHigh = 4;
    EXPECT_DOUBLE_EQ(desk.points(About::reps, wide), 1.0);
    wide.repsHigh = 3;
    EXPECT_DOUBLE_EQ(desk.points(About::reps, wide), 1.5);
}

TEST(AdvisorWeights, OfWhatIsNotFresh)
{
    Desk desk;
    EXPECT_DOUBLE_EQ(desk.points(About::freshness, "feet_up"), -1.0) << "heavy without leg drive";
    desk.slot.reps = 4;
    EXPECT_DOUBLE_EQ(desk.points(About::freshness, "feet_up"), 0.0);
    desk.did(1, "squat");
    EXPECT_DOUBLE_EQ(desk.points(About::freshness, "feet_up"), 3.0) << "two guesses";
    EXPECT_DOUBLE_EQ(desk.points(About::freshness, "comp"), -0.75) << "some, not much";
    desk.checkIn.emplace();
    desk.checkIn->soreness = {{BodyArea::legs, 1}, {BodyArea::back, 5}};
    EXPECT_DOUBLE_EQ(desk.points(About::freshness, "feet_up"), 3.0) << "one said";
    EXPECT_DOUBLE_EQ(desk.points(About::freshness, "comp"), -0.75);
    desk.checkIn->soreness[BodyArea::back] = 1;
    EXPECT_DOUBLE_EQ(desk.points(About::freshness, "comp"), -1.5);
    desk.checkIn->soreness[BodyArea::chest] = 1;
    EXPECT_DOUBLE_EQ(desk.points(About::freshness, "comp"), -3.0) << "no more than that";
    desk.checkIn->soreness.clear();
    desk.sessions.clear();
    desk.checkIn->sleep = 2;
    EXPECT_DOUBLE_EQ(desk.points(About::freshness, "tempo_4_2_0"), -1.0) << "readiness of two";
}

TEST(AdvisorWeights, OfAFullWeek)
{
    Desk desk;
    for (const int week : {1, 2, 3})
        desk.did(7 * week, "comp", 10);
    const auto at = [&desk](int sets, const char *code, int leadReps = 0) {
        desk.cards = {cardOf(1, kDay, 0, idOf("comp"), QStringLiteral("%1x3 @7").arg(sets))};
        return desk.points(About::fatigue, code, leadReps);
    };
    EXPECT_DOUBLE_EQ(at(7, "tempo_4_2_0"), -0.5);
    EXPECT_DOUBLE_EQ(at(8, "tempo_4_2_0"), -1.0);
    EXPECT_DOUBLE_EQ(at(10, "tempo_4_2_0"), -2.0);
    EXPECT_DOUBLE_EQ(at(10, "tempo_4_2_0", 1), -1.0) << "half for a lead rep";
    EXPECT_DOUBLE_EQ(at(7, "feet_up"), 0.0);
    EXPECT_DOUBLE_EQ(at(8, "feet_up"), 0.5) << "costs little";
    EXPECT_DOUBLE_EQ(at(10, "close_grip"), 0.0);
}

TEST(AdvisorWeights, OfAMeetAndOfWhatWasDoneLately)
{
    Desk desk;
    desk.did(5, "comp");
    desk.lifter.meetDate = kDay.addDays(15);
    EXPECT_DOUBLE_EQ(desk.points(About::meet, "comp"), 1.5);
    desk.lifter.meetDate = kDay.addDays(5);
    EXPECT_DOUBLE_EQ(desk.points(About::meet, "comp"), 3.0);
    EXPECT_DOUBLE_EQ(desk.points(About::meet, "board_5cm"), -3.0);
    EXPECT_DOUBLE_EQ(desk.points(About::meet, "tempo_4_2_0"), -4.5) << "new, and costs much";
    desk.sessions.clear();
    desk.did(8, "comp");
    desk.did(1, "feet_up");
    desk.did(2, "close_grip");
    desk.did(4, "close_grip");
    EXPECT_DOUBLE_EQ(desk.points(About::lately, "comp"), 0.75);
    EXPECT_DOUBLE_EQ(desk.points(About::lately, "feet_up"), -0.5);
    EXPECT_DOUBLE_EQ(desk.points(About::lately, "close_grip"), -0.75);
}

TEST(AdvisorWeights, OfTheOwnRatio)
{
    Desk desk;
    desk.estimate.emplace();
    desk.estimate->rows = {idOf("comp"), idOf("close_grip")};
    desk.estimate->estimate.variations.resize(2);
    strength::VariationEstimate &own = desk.estimate->estimate.variations[1];
    const auto with = [&](double low, double high, int sets) {
        own.ratio = {0.5 * (low + high), low, high};
        own.sets = sets;
        return desk.points(About::ownRatio, "close_grip"); // usually 0.95
    };
    EXPECT_DOUBLE_EQ(with(0.90, 0.94, 20), 0.75);
    EXPECT_DOUBLE_EQ(with(0.90, 0.95, 20), 0.0) << "the usual is within";
    EXPECT_DOUBLE_EQ(with(0.96, 0.99, 20), -0.25);
    EXPECT_DOUBLE_EQ(with(0.95, 0.99, 20), 0.0);
    EXPECT_DOUBLE_EQ(with(0.85, 1.05, 20), -0.25);
    EXPECT_DOUBLE_EQ(with(0.90, 0.94, 0), -0.25);
}

TEST(AdvisorWeights, TheStrongestReasonComesFirstAndEqualOnesInTheOrderOfTheRules)
{
    Desk desk;
    desk.lifter.touchStyle = TouchStyle::soft;
    desk.lifter.meetDate = kDay.addDays(5);
    desk.did(1, "long_pause");
    std::vector<About> order;
    for (const AdviceTerm &term :
        termsFor({*find(builtInCatalogue(), idOf("tempo_4_2_0")), 1}, desk.situation()))
        order.push_back(term.about);
    // -3 meet (new), 2 touch, 1.5 reps, -1.5 meet (costs much), -0.25 fatigue.
    EXPECT_EQ(
        order, (std::vector{About::meet, About::touch, About::reps, About::meet, About::fatigue}));
}
