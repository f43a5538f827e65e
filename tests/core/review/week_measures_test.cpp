#include "core/review/week_measures.h"

#include "tests/support/days.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;

namespace {

struct WeekMeasured : testing::Test
{
    WeekMeasured()
    {
        comp.id = {1};
        comp.competition = true;
        comp.tempo = {0, 1, 0};
        tempo.id = {2};
        tempo.tempo = {4, 2, 0};
        lift.rows = {comp.id, tempo.id};
        lift.priors.resize(2);
        lift.estimate.variations.resize(2);
        lift.estimate.variations[0].ratio.value = 1.0;
        lift.estimate.variations[1].ratio.value = 0.9;
        strength::WeekEstimate before;
        before.sunday = engineDay(kMonday) - 1;
        before.filtered.kg = before.smoothed.kg = 100.0;
        lift.estimate.weeks = {before};
    }
    void did(int day, VariationId variation, double loadKg, int reps)
    {
        LoggedSession session;
        session.day = kMonday.addDays(day);
        SetEntry set;
        set.variation = variation;
        set.loadKg = loadKg;
        set.repsDone = reps;
        session.sets = {set};
        lift.readings.push_back(session);
    }
    [[nodiscard]] std::vector<WeekMeasures> measures() const
    {
        const Variation catalogue[] = {comp, tempo};
        return weekMeasures(lift, catalogue, cards);
    }

    Variation comp, tempo;
    LiftEstimate lift;
    std::vector<Card> cards;
};

} // namespace

TEST_F(WeekMeasured, MonotonyAndStrainAreThePublishedOnesOfTheDailyTonnage)
{
    // Foster (1998), as worked in the tests of load_metrics: 480, 0, 600, 0, 420, 700, 0 gives
    // week 2200, monotony 1.0238, strain 2252.45. Here as tonnage: 10 reps a day.
    for (const auto &[day, kg] : {std::pair(0, 48.0), {2, 60.0}, {4, 42.0}, {5, 70.0}})
        did(day, comp.id, kg, 10);
    const auto weeks = measures();
    ASSERT_EQ(weeks.size(), 1u);
    EXPECT_DOUBLE_EQ(weeks[0].done.tonnageKg, 2200.0);
    EXPECT_NEAR(*weeks[0].monotony, 1.0238, 1e-4);
    EXPECT_NEAR(*weeks[0].strain, 2252.45, 0.01);
    // Average intensity = tonnage / (reps x max).
    EXPECT_DOUBLE_EQ(*weeks[0].averageIntensity, 2200.0 / (40 * 100.0));
}

TEST_F(WeekMeasured, RepsAreCountedByTheShareOfTheirOwnVariationsMax)
{
    did(0, comp.id, 90.0, 2);  // 90 %
    did(1, tempo.id, 81.0, 3); // 90 % of 90 kg
    did(2, comp.id, 89.9, 4);  // below 90
    did(3, comp.id, 50.0, 8);
    EXPECT_THAT(measures()[0].zones, testing::ElementsAre(8, 0, 0, 4, 5));
    EXPECT_EQ(zoneOf(0.70), 2u);
    EXPECT_EQ(zoneOf(1.05), 4u);
}

TEST_F(WeekMeasured, TimeUnderTensionFollowsTempoAndPause)
{
    EXPECT_DOUBLE_EQ(secondsUnderTension(tempo), 7.0); // 4 down, 2 pause, fast
    EXPECT_DOUBLE_EQ(secondsUnderTension(comp), 4.0);  // 2 down, 1 pause, fast
    did(0, tempo.id, 70.0, 3);
    EXPECT_DOUBLE_EQ(measures()[0].tensionSeconds, 21.0);
}

TEST_F(WeekMeasured, WeeksOffAreZeroAndPlannedOnesStandBesideThem)
{
    did(0, comp.id, 80.0, 5);
    Card card;
    card.variation = comp.id;
    card.day = kMonday.addDays(15);
    card.setLine = QStringLiteral("3x5 @8");
    cards = {card};
    card.setLine = QStringLiteral("nonsense");
    cards.push_back(card);
    const auto weeks = measures();
    ASSERT_EQ(weeks.size(), 3u);
    EXPECT_EQ(weeks[1].done.lifts, 0);
    EXPECT_EQ(weeks[1].averageIntensity, std::nullopt);
    EXPECT_EQ(weeks[1].monotony, std::nullopt);
    EXPECT_EQ(weeks[2].plannedLifts, 15);
    EXPECT_EQ(weeks[0].plannedLifts, 0);
}

TEST_F(WeekMeasured, WithoutAnEstimateThereIsWorkButNoShare)
{
    lift.estimate = {};
    did(0, comp.id, 80.0, 5);
    const auto weeks = measures();
    EXPECT_EQ(weeks[0].done.lifts, 5);
    EXPECT_EQ(weeks[0].averageIntensity, std::nullopt);
    EXPECT_THAT(weeks[0].zones, testing::Each(0));
    lift.readings.clear();
    EXPECT_TRUE(measures().empty());
}

TEST(Zones, BeginAtTheirLowerBound)
{
    // The zones that the trade counts in: common practice, no source.
    const double bounds[] = {0.55, 0.70, 0.80, 0.90};
    for (size_t zone = 0; zone < std::size(bounds); ++zone) {
        EXPECT_EQ(zoneOf(bounds[zone]), zone + 1);
        EXPECT_EQ(zoneOf(bounds[zone] - 1e-9), zone);
    }
}

TEST_F(WeekMeasured, ALiftingThatIsPrescribedTakesItsCountsAndWhatIsNotOfTheLiftNothing)
{
    Variation slow;
    slow.tempo = {3, 0, 4};
    EXPECT_DOUBLE_EQ(secondsUnderTension(slow), 7.0);
    did(0, VariationId{9}, 100.0, 5);
    did(6, comp.id, 80.0, 5);
    EXPECT_EQ(measures()[0].done.lifts, 5);
    Card card;
    card.variation = {9};
    card.day = kMonday;
    card.setLine = QStringLiteral("3x5 @8");
    cards = {card};
    EXPECT_EQ(measures()[0].plannedLifts, 0);
}

TEST_F(WeekMeasured, IntensityIsTheMeanOverTheRepsOfTheMaxesOfTheirDays)
{
    did(0, comp.id, 80.0, 5);
    did(1, tempo.id, 60.0, 3);
    EXPECT_DOUBLE_EQ(*measures()[0].averageIntensity, (400.0 + 180.0) / (8 * 100.0));
}
