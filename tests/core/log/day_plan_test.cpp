#include "core/log/day_plan.h"

#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

/// A day of two cards: competition bench by RPE, and a squat.
struct Day
{
    Lifter lifter;
    std::vector<Card> cards{cardOf(1, kDay, 0, idOf("comp"), u"2x3 100kg"_qs),
        cardOf(2, kDay, 1, idOf("squat"), u"1x5 140kg"_qs)};
    std::vector<GivenDay> given;
    std::vector<SetEntry> done;
    CheckIn checkIn;
    std::vector<CheckIn> checkIns; ///< stored; the last one is `checkIn` once something is said
    std::optional<strength::ReadinessEffect> readiness;

    Day()
    {
        lifter.id = {1};
        lifter.gear = usualGear(Unit::kilogram);
        checkIn.lifter = lifter.id;
        checkIn.day = kDay;
    }

    /// A habit of a per cent a point, well known.
    void learn()
    {
        readiness.emplace();
        readiness->sessions = 40;
        readiness->lowest = 1.0;
        readiness->highest = 5.0;
        readiness->slope = {0.02, 0.02};
        readiness->covariance = Eigen::Matrix2d::Identity() * 1e-6;
    }
    void say(int answer)
    {
        checkIn.id = {1};
        checkIn.sleep = checkIn.stress = checkIn.motivation = answer;
        checkIns = {checkIn};
    }
    void hurts(std::optional<BodyArea> area)
    {
        checkIn.pain = PainFlag{area, u"neck"_qs};
        checkIns = {checkIn};
    }

    [[nodiscard]] DayInputs inputs() const
    {
        return {lifter, kDay, builtInCatalogue(), cards, given, kDay, done, checkIns,
            [](Lift) -> const LiftEstimate * { return nullptr; },
            readiness ? &*readiness : nullptr};
    }
    [[nodiscard]] DayPlan plan() const { return dayPlan(inputs()); }
};

} // namespace

TEST(DayPlan, HoldsThePlannedSetsBesideTheLoggedOnes)
{
    Day day;
    day.done = {setOf(idOf("comp"), 100, 3)};
    day.done[0].repsPlanned = 3;
    const DayPlan plan = day.plan();
    ASSERT_THAT(plan.planned, SizeIs(3));
    EXPECT_EQ(plan.planned[0].loadKg, 100.0);
    EXPECT_THAT(plan.rows,
        ElementsAre(SessionRow{0, 0}, SessionRow{1, std::nullopt}, SessionRow{2, std::nullopt}));
    EXPECT_THAT(plan.unreadable, IsEmpty());
    EXPECT_THAT(plan.advice.words, IsEmpty()) << "nothing was said";
}

TEST(DayPlan, NamesTheCardsThatCannotBeRead)
{
    Day day;
    day.cards[0].setLine = u"heavy"_qs;
    const DayPlan plan = day.plan();
    EXPECT_THAT(plan.planned, SizeIs(1));
    ASSERT_THAT(plan.unreadable, SizeIs(1));
    EXPECT_EQ(plan.unreadable[0], find(builtInCatalogue(), idOf("comp"))->name);
}

TEST(DayPlan, AStoredCheckInShiftsTheBenchUnlessTheCoachSaysOtherwise)
{
    Day day;
    day.learn();
    day.say(1);
    DayPlan plan = day.plan();
    EXPECT_EQ(plan.planned[0].loadKg, 95.0) << "two points below, four per cent off, on plates";
    EXPECT_EQ(plan.planned[0].planKg, 100.0);
    EXPECT_EQ(plan.planned[2].loadKg, 140.0) << "measured on the bench press";
    DayInputs kept = day.inputs();
    kept.shiftLoads = false;
    EXPECT_EQ(dayPlan(kept).planned[0].loadKg, 100.0);
    day.checkIns.clear();
    EXPECT_EQ(day.plan().planned[0].loadKg, 100.0) << "not said yet";
}

TEST(DayPlan, ASwappedSetHasTheSetsOfItsCardInTheOtherVariation)
{
    Day day;
    const DayPlan plan = day.plan();
    const DaySet swap = swapped(day.inputs(), plan, 1, idOf("feet_up"));
    EXPECT_EQ(swap.variation, idOf("feet_up"));
    EXPECT_EQ(swap.card, CardId{1});
    EXPECT_EQ(swap.reps, 3);
    EXPECT_EQ(swap.loadKg, 100.0) << "as it is written";

    day.cards[0] = cardOf(1, kDay, 0, idOf("tempo_4_2_0"), u"2x1+2 90kg"_qs);
    const DaySet led = swapped(day.inputs(), day.plan(), 0, idOf("feet_up"));
    EXPECT_EQ(led.variation, idOf("feet_up"));
    EXPECT_EQ(led.lead, std::nullopt);
    EXPECT_EQ(led.loadKg, std::nullopt) << "of a lead-rep set nobody knows";
}

TEST(DayPlan, AnExtraSetIsWithheldLikeAPlannedOne)
{
    Day day;
    SetEntry extra = setOf(idOf("comp"), 100, 5, 8.0);
    EXPECT_TRUE(whyWithheld(day.inputs(), day.plan(), extra).isEmpty());
    day.say(1);
    extra.repsDone = 0;
    extra.rpe.reset();
    EXPECT_FALSE(whyWithheld(day.inputs(), day.plan(), extra).isEmpty()) << "a maximal attempt";
    extra.repsDone = 5;
    EXPECT_TRUE(whyWithheld(day.inputs(), day.plan(), extra).isEmpty());
    day.hurts(BodyArea::chest);
    EXPECT_FALSE(whyWithheld(day.inputs(), day.plan(), extra).isEmpty());
}

TEST(DayPlan, APainThatStandsWithholdsAndIsSaidThoughNothingWasSaidToday)
{
    Day day;
    day.hurts(BodyArea::chest);
    day.checkIns[0].day = kDay.addDays(-30);
    const DayPlan plan = day.plan();
    EXPECT_FALSE(plan.planned[0].withheld.isEmpty());
    EXPECT_EQ(plan.planned[0].loadKg, std::nullopt);
    EXPECT_EQ(plan.planned[0].planKg, 100.0) << "the planned load stays";
    EXPECT_TRUE(plan.planned[2].withheld.isEmpty()) << "squats do not work the chest";
    EXPECT_TRUE(plan.advice.stop);
    EXPECT_TRUE(plan.advice.words.front().contains(u"refer"_qs));
}

TEST(DayPlan, TheIncreaseIsOffUntilTheCoachSwitchesItOn)
{
    Day day;
    day.cards[0].setLine = u"2x3 100kg\n2x3 80%"_qs;
    day.learn();
    day.say(5);
    DayPlan plan = day.plan();
    EXPECT_GT(plan.advice.loadFactor, 1.0);
    EXPECT_FALSE(plan.shiftsLoads);
    EXPECT_EQ(plan.planned[0].loadKg, 100.0);
    DayInputs on = day.inputs();
    on.shiftLoads = true;
    plan = dayPlan(on);
    EXPECT_TRUE(plan.shiftsLoads);
    EXPECT_EQ(plan.planned[0].loadKg, 100.0) << "written by hand";
}

TEST(DayPlan, AfterAMissTheSetsOfTheLiftThatAreLeftComeDown)
{
    Day day;
    day.cards[0].setLine = u"3x3 100kg"_qs;
    day.done = {setOf(idOf("comp"), 100, 2)};
    day.done[0].repsPlanned = 3;
    EXPECT_EQ(day.plan().planned[1].loadKg, 100.0);
    day.done[0].failed = true;
    DayPlan plan = day.plan();
    EXPECT_EQ(plan.planned[0].loadKg, 100.0) << "what was done is measured against the plan";
    EXPECT_EQ(plan.planned[1].loadKg, 95.0);
    EXPECT_EQ(plan.planned[1].planKg, 100.0);
    EXPECT_FALSE(plan.planned[1].eased.isEmpty());
    EXPECT_EQ(plan.planned[3].loadKg, 140.0) << "the squat was not missed";
    EXPECT_TRUE(plan.planned[3].eased.isEmpty());

    day.done.push_back(day.done[0]);
    day.done[1].loadKg = 95;
    EXPECT_EQ(day.plan().planned[2].loadKg, 90.0) << "95 % twice, rounded down";
    EXPECT_EQ(easedKg(day.inputs(), idOf("comp"), 95.0), 85.0);
    EXPECT_EQ(easedKg(day.inputs(), idOf("squat"), 140.0), 140.0);

    day.cards[0].setLine = u"3x3 120kg"_qs; // heavier than what was missed
    EXPECT_LE(*day.plan().planned[2].loadKg, 0.95 * 95.0);
}

TEST(DayPlan, WhereSomethingIsSoreASwapIsNoHeavierThanPlanned)
{
    Day day;
    const LiftEstimate bench = plainEstimate(kDay);
    day.cards[0].setLine = u"2x3 @8"_qs;
    const auto swap = [&] {
        DayInputs inputs = day.inputs();
        inputs.estimateOf = [&](Lift lift) { return lift == Lift::bench ? &bench : nullptr; };
        const DayPlan plan = dayPlan(inputs);
        return std::pair(
            *swapped(inputs, plan, 0, idOf("board_5cm")).loadKg, *plan.planned[0].loadKg);
    };
    EXPECT_GT(swap().first, swap().second);
    day.say(4);
    day.checkIns[0].soreness[BodyArea::shoulders] = 1;
    EXPECT_EQ(swap().first, swap().second);
}
