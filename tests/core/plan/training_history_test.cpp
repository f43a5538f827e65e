#include "core/plan/training_history.h"

#include "tests/core/plan/bench_catalogue.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;

namespace {
const QDate kMonday(2026, 3, 2);
const std::vector<Variation> kCatalogue = benchCatalogue();
const VariationId kComp = idOf(kCatalogue, "comp");
const VariationId kFeetUp = idOf(kCatalogue, "feet_up");
const VariationId kSquat = idOf(kCatalogue, "squat");
} // namespace

TEST(TrainingHistory, WeeksBeginOnMonday)
{
    for (int day = 0; day < 7; ++day)
        EXPECT_EQ(mondayOf(kMonday.addDays(day)), kMonday);
    EXPECT_EQ(mondayOf(kMonday.addDays(-1)), kMonday.addDays(-7));
}

TEST(TrainingHistory, AddsUpOneLiftByWeeks)
{
    const std::vector<LoggedSession> log = {
        sessionOf(kMonday.addDays(-1), {setOf(kComp, 100, 3), setOf(kSquat, 150, 5)}),
        sessionOf(kMonday.addDays(-7), {setOf(kFeetUp, 80, 5)}),
        sessionOf(kMonday.addDays(-15), {setOf(kComp, 90, 2)}),
        sessionOf(kMonday, {setOf(kComp, 110, 1)}),
        sessionOf(kMonday.addDays(-22), {setOf(kComp, 110, 1)})};
    EXPECT_THAT(weeksBefore(kMonday, 3, log, kCatalogue, Lift::bench),
        ElementsAre(WeekLoad{kMonday.addDays(-21), 1, 2, 180.0},
            WeekLoad{kMonday.addDays(-14), 0, 0, 0.0}, WeekLoad{kMonday.addDays(-7), 2, 8, 700.0}));
}

TEST(TrainingHistory, AHabitNeedsTrainedWeeks)
{
    const std::vector<WeekLoad> weeks = {
        {kMonday, 4, 12, 1000.0}, {kMonday, 0, 0, 0.0}, {kMonday, 6, 20, 900.0}};
    const auto lifts = [](const WeekLoad &w) { return double(w.lifts); };
    const auto range = usualRange(std::span(weeks), 2, lifts);
    ASSERT_TRUE(range);
    EXPECT_EQ(range->low, 12.0);
    EXPECT_EQ(range->high, 20.0);
    EXPECT_EQ(range->weeks, 2);
    EXPECT_FALSE(usualRange(std::span(weeks), 3, lifts));
}

TEST(TrainingHistory, FindsWhenAVariationWasLastDone)
{
    const std::vector<LoggedSession> log = {sessionOf(kMonday.addDays(-3), {setOf(kComp, 100, 3)}),
        sessionOf(kMonday.addDays(-9), {setOf(kComp, 100, 3)}),
        sessionOf(kMonday, {setOf(kComp, 100, 3)})};
    EXPECT_EQ(lastDone(kComp, kMonday, log), kMonday.addDays(-3));
    EXPECT_FALSE(lastDone(kFeetUp, kMonday, log));
}
