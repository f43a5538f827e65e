#include "core/log/day_plan.h"

#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

const QDate kDay(2026, 3, 4);

/// A day of two cards: competition bench by RPE, and a squat.
struct Day
{
    Lifter lifter;
    std::vector<Card> cards{cardOf(1, kDay, 0, idOf("comp"), u"2x3 100kg"_qs),
        cardOf(2, kDay, 1, idOf("squat"), u"1x5 140kg"_qs)};
    std::vector<GivenDay> given;
    std::vector<SetEntry> done;
    CheckIn checkIn;
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
    }

    [[nodiscard]] DayInputs inputs() const
    {
        return {lifter, builtInCatalogue(), cards, given, kDay, done, checkIn,
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
    day.checkIn.id = {};
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
    day.checkIn.pain = PainFlag{BodyArea::chest, {}};
    EXPECT_FALSE(whyWithheld(day.inputs(), day.plan(), extra).isEmpty());
}
