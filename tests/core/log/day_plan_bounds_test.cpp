#include "core/log/day_plan.h"

#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"

#include <gmock/gmock.h>

// From when on, and up to when, a day changes what was planned.

using namespace core;
using namespace tests;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

const QDate kTrainingDay(2026, 3, 4);

/// A grown lifter of 100 kg whose loads follow the estimate.
struct BoundedDay
{
    Lifter lifter;
    std::vector<Card> cards{cardOf(1, kTrainingDay, 0, idOf("comp"), u"2x3 @8"_qs)};
    std::vector<SetEntry> done;
    std::vector<CheckIn> checkIns;
    LiftEstimate bench = plainEstimate(kTrainingDay);
    std::optional<strength::ReadinessEffect> readiness;

    BoundedDay()
    {
        lifter.id = {1};
        lifter.birthYear = 1990;
        lifter.gear = usualGear(Unit::kilogram);
    }

    CheckIn &said()
    {
        CheckIn &checkIn = checkIns.emplace_back();
        checkIn.id = {1};
        checkIn.lifter = lifter.id;
        checkIn.day = kTrainingDay;
        return checkIn;
    }
    strength::VariationEstimate &own(const char *code)
    {
        return bench.estimate.variations[size_t(bench.rowOf(idOf(code)))];
    }
    [[nodiscard]] DayInputs inputs() const
    {
        return {lifter, kTrainingDay, builtInCatalogue(), cards, {}, kTrainingDay, done, checkIns,
            [this](Lift lift) { return lift == Lift::bench ? &bench : nullptr; },
            readiness ? &*readiness : nullptr};
    }
    [[nodiscard]] DayPlan plan() const { return dayPlan(inputs()); }
    [[nodiscard]] double plannedKg() const { return plan().planned.at(0).loadKg.value(); }
    [[nodiscard]] double swappedKg(const char *code) const
    {
        return swapped(inputs(), plan(), 0, idOf(code)).loadKg.value();
    }
    [[nodiscard]] bool withholds(double loadKg, int reps) const
    {
        return !whyWithheld(inputs(), plan(), setOf(idOf("comp"), loadKg, reps)).isEmpty();
    }
};

} // namespace

TEST(DayPlanBounds, WhatOthersSaidOrTheLifterOnAnotherDayShiftsNothing)
{
    BoundedDay day;
    day.readiness.emplace();
    day.readiness->sessions = 40;
    day.readiness->lowest = 1.0;
    day.readiness->highest = 5.0;
    day.readiness->slope = {0.04, 0.04};
    day.readiness->covariance = Eigen::Matrix2d::Identity() * 1e-6;
    const double usual = day.plannedKg();
    EXPECT_TRUE(day.plan().shiftsLoads) << "down only, and there is nothing to shift by";
    CheckIn &tired = day.said();
    tired.sleep = tired.stress = tired.motivation = 1;
    EXPECT_LT(day.plannedKg(), usual);
    day.checkIns[0].day = kTrainingDay.addDays(-1);
    EXPECT_EQ(day.plannedKg(), usual);
    day.checkIns[0].day = kTrainingDay;
    day.checkIns[0].lifter = {2};
    EXPECT_EQ(day.plannedKg(), usual);
}

TEST(DayPlanBounds, ASwapForSorenessMayBeAsHeavyAsPlannedAndNoHeavier)
{
    BoundedDay day;
    day.said().soreness[BodyArea::legs] = 1;
    day.cards[0].setLine = u"2x3 80kg"_qs;
    ASSERT_THAT(day.plan().advice.swaps, SizeIs(1)) << "80 kg in either";
    EXPECT_EQ(day.plan().advice.swaps[0].spares, idOf("feet_up"));
    day.cards[0].setLine = u"2x3 80kg\n2x3 @8"_qs;
    EXPECT_THAT(day.plan().advice.swaps, SizeIs(1));
    day.own("feet_up").ratio = {1.1, 1.1, 1.1};
    ASSERT_THAT(day.plan().advice.swaps, SizeIs(1));
    EXPECT_NE(day.plan().advice.swaps[0].spares, idOf("feet_up")) << "stronger in it";
    day.bench.rows[0] = {999}; // the planned load is not known
    day.cards[0].setLine = u"2x3 @8"_qs;
    EXPECT_THAT(day.plan().advice.swaps, SizeIs(1));
}

TEST(DayPlanBounds, ASwapIsHeldDownAfterAMissInPainSorenessLowReadinessAndForBeginners)
{
    // Board press at 1.06 of the competition lift.
    const double usual = BoundedDay().plannedKg();
    BoundedDay well;
    EXPECT_GT(well.swappedKg("board_5cm"), usual);
    well.said().sleep = 4;
    EXPECT_GT(well.swappedKg("board_5cm"), usual);
    BoundedDay sore;
    CheckIn &fine = sore.said(); // but for the shoulders
    fine.sleep = fine.stress = fine.motivation = 5;
    fine.soreness[BodyArea::shoulders] = 2;
    EXPECT_EQ(sore.swappedKg("board_5cm"), usual);
    BoundedDay tired;
    tired.said().sleep = 2;
    EXPECT_EQ(tired.swappedKg("board_5cm"), usual);
    BoundedDay novice;
    novice.lifter.trainingSince = kTrainingDay.addDays(-100);
    EXPECT_EQ(novice.swappedKg("board_5cm"), usual);
    BoundedDay missed;
    missed.done = {setOf(idOf("comp"), usual, 1)};
    missed.done[0].repsPlanned = 3;
    missed.done[0].failed = true;
    const DayPlan plan = missed.plan();
    ASSERT_FALSE(plan.planned[1].eased.isEmpty());
    const DaySet swap = swapped(missed.inputs(), plan, 1, idOf("board_5cm"));
    EXPECT_EQ(swap.loadKg, plan.planned[1].loadKg);
    EXPECT_EQ(swap.eased, plan.planned[1].eased);
}

TEST(DayPlanBounds, ASwapForWhatIsWithheldIsNoHeavierThanWhatWasPlanned)
{
    BoundedDay day;
    day.own("feet_up").ratio = {1.1, 1.1, 1.1};
    const double usual = day.plannedKg();
    EXPECT_GT(day.swappedKg("feet_up"), usual);
    day.said().pain = PainFlag{BodyArea::legs, {}};
    ASSERT_EQ(day.plan().planned[0].loadKg, std::nullopt);
    EXPECT_EQ(day.swappedKg("feet_up"), usual);
}

TEST(DayPlanBounds, ASwapToAVariationThatTheCatalogueLacksHasNoLoad)
{
    const BoundedDay day;
    const DaySet set = swapped(day.inputs(), day.plan(), 0, {999});
    EXPECT_EQ(set.variation, VariationId{999});
    EXPECT_EQ(set.loadKg, std::nullopt);
    EXPECT_EQ(set.reps, 3);
}

TEST(DayPlanBounds, ASetWithoutALoadHasNothingToTakeDownAfterAMiss)
{
    BoundedDay day;
    day.cards[0].setLine = u"2x3 @8\n1x3"_qs;
    day.done = {setOf(idOf("comp"), 90, 2)};
    day.done[0].repsPlanned = 3;
    day.done[0].failed = true;
    const DayPlan plan = day.plan();
    EXPECT_FALSE(plan.planned[1].eased.isEmpty());
    EXPECT_EQ(plan.planned[2].loadKg, std::nullopt);
    EXPECT_TRUE(plan.planned[2].eased.isEmpty());
}

TEST(DayPlanBounds, AfterAMissOfTheBareBarTheBarIsAllThereIs)
{
    BoundedDay day;
    day.done = {setOf(idOf("comp"), 20, 0)};
    day.done[0].failed = true;
    EXPECT_EQ(easedKg(day.inputs(), idOf("comp"), 20.0), 20.0);
    EXPECT_EQ(easedKg(day.inputs(), idOf("comp"), 15.0), 15.0) << "never more than planned";
    day.done[0].loadKg = 100.0;
    EXPECT_EQ(easedKg(day.inputs(), idOf("comp"), 100.0), 95.0);
    EXPECT_EQ(easedKg(day.inputs(), idOf("close_grip"), 80.0), 75.0) << "76, on plates below";
    day.done[0].variation = {999};
    EXPECT_EQ(easedKg(day.inputs(), idOf("comp"), 100.0), 100.0) << "of another lift";
}

TEST(DayPlanBounds, AnExtraSetIsMaximalFromNineteenTwentiethsOrWhereNothingIsKnown)
{
    BoundedDay day;
    day.lifter.birthYear = 2011;
    EXPECT_TRUE(day.withholds(95.0, 5));
    EXPECT_FALSE(day.withholds(94.9, 1)) << "known to be light enough";
    EXPECT_TRUE(day.withholds(0.0, 2)) << "without a load it may be an attempt";
    EXPECT_FALSE(day.withholds(0.0, 3));
    const SetEntry unknown = setOf({999}, 200, 3);
    EXPECT_TRUE(whyWithheld(day.inputs(), day.plan(), unknown).isEmpty());
    SetEntry led = setOf(idOf("feet_up"), 60, 3);
    day.lifter.birthYear = 1990;
    day.said().pain = PainFlag{BodyArea::legs, {}};
    EXPECT_TRUE(whyWithheld(day.inputs(), day.plan(), led).isEmpty());
    led.lead = LeadReps{idOf("comp"), 1};
    EXPECT_FALSE(whyWithheld(day.inputs(), day.plan(), led).isEmpty()) << "its lead works them";
}
