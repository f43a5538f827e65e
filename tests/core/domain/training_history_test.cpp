#include "core/domain/training_history.h"
#include "core/domain/week.h"

#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;

TEST(TrainingHistory, WeeksBeginOnMonday)
{
    for (int day = 0; day < 7; ++day)
        EXPECT_EQ(mondayOf(kMonday.addDays(day)), kMonday);
    EXPECT_EQ(mondayOf(kMonday.addDays(-1)), kMonday.addDays(-7));
}

TEST(TrainingHistory, AddsUpOneLiftByWeeks)
{
    const std::vector<LoggedSession> log = {
        sessionOf(kMonday.addDays(-1), {setOf(idOf("comp"), 100, 3), setOf(idOf("squat"), 150, 5)}),
        sessionOf(kMonday.addDays(-7), {setOf(idOf("feet_up"), 80, 5)}),
        sessionOf(kMonday.addDays(-15), {setOf(idOf("comp"), 90, 2)}),
        sessionOf(kMonday, {setOf(idOf("comp"), 110, 1)}),
        sessionOf(kMonday.addDays(-22), {setOf(idOf("comp"), 110, 1)})};
    EXPECT_THAT(weeksBefore(kMonday, 3, log, builtInCatalogue(), Lift::bench),
        ElementsAre(WeekLoad{kMonday.addDays(-21), 1, 2, 180.0},
            WeekLoad{kMonday.addDays(-14), 0, 0, 0.0}, WeekLoad{kMonday.addDays(-7), 2, 8, 700.0}));
}

TEST(TrainingHistory, WeeksOffBetweenTrainedOnesAreZero)
{
    SetEntry missed = setOf(idOf("comp"), 120, 1);
    missed.failed = true;
    SetEntry nothing = setOf(idOf("comp"), 150, 0);
    nothing.failed = true;
    const std::vector<LoggedSession> log = {
        sessionOf(kMonday, {setOf(idOf("comp"), 100, 5), setOf(idOf("comp"), 110, 3)}),
        sessionOf(kMonday.addDays(6), {missed}), sessionOf(kMonday.addDays(14), {nothing}),
        sessionOf(kMonday.addDays(28), {setOf(idOf("squat"), 180, 5)})};
    EXPECT_THAT(weekLoads(log, builtInCatalogue(), Lift::bench),
        ElementsAre(WeekLoad{kMonday, 3, 9, 950.0, 1}, WeekLoad{kMonday.addDays(7)},
            WeekLoad{kMonday.addDays(14), 1, 0, 0.0, 1}));
    EXPECT_THAT(weekLoads(log, builtInCatalogue(), Lift::squat),
        ElementsAre(WeekLoad{kMonday.addDays(28), 1, 5, 900.0}));
    EXPECT_TRUE(weekLoads(log, builtInCatalogue(), Lift::deadlift).empty());
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
    const std::vector<LoggedSession> log = {
        sessionOf(kMonday.addDays(-3), {setOf(idOf("comp"), 100, 3)}),
        sessionOf(kMonday.addDays(-9), {setOf(idOf("comp"), 100, 3)}),
        sessionOf(kMonday, {setOf(idOf("comp"), 100, 3)})};
    EXPECT_EQ(lastDone(idOf("comp"), kMonday, log), kMonday.addDays(-3));
    EXPECT_FALSE(lastDone(idOf("feet_up"), kMonday, log));
    EXPECT_EQ(
        lastDone(idOf("comp"), kMonday, std::vector{log[1], log[0], log[1]}), kMonday.addDays(-3))
        << "in whatever order";
}

TEST(TrainingHistory, TheWeeksBeforeEndOnSundayAndBeginOnTheirOldestMonday)
{
    const std::vector<LoggedSession> log = {
        sessionOf(kMonday.addDays(-21), {setOf(idOf("comp"), 100, 1)}),
        sessionOf(kMonday.addDays(-14), {setOf(idOf("comp"), 100, 2)}),
        sessionOf(kMonday.addDays(-8), {setOf(idOf("comp"), 100, 4)})};
    EXPECT_THAT(weeksBefore(kMonday, 3, log, builtInCatalogue(), Lift::bench),
        ElementsAre(WeekLoad{kMonday.addDays(-21), 1, 1, 100.0},
            WeekLoad{kMonday.addDays(-14), 2, 6, 600.0}, WeekLoad{kMonday.addDays(-7)}));
}

TEST(TrainingHistory, AHabitOfOneWeekIsThatWeekAndWithoutAWeekThereIsNone)
{
    const auto lifts = [](const WeekLoad &w) { return double(w.lifts); };
    const std::vector<WeekLoad> one{{kMonday, 1, 7, 700.0}};
    const auto range = usualRange(std::span(one), 1, lifts);
    ASSERT_TRUE(range);
    EXPECT_EQ(range->low, 7.0);
    EXPECT_EQ(range->high, 7.0);
    EXPECT_FALSE(usualRange(std::span<const WeekLoad>(), 0, lifts));
    EXPECT_EQ(UsualRange{}.weeks, 0);
    EXPECT_EQ(UsualRange{}.low, 0.0);
    const auto none = usualRange(std::span(one), 1, [](const WeekLoad &) { return 0.0; });
    EXPECT_EQ(none->high, 0.0) << "a week that counts, of a figure that does not";
    const std::vector<WeekLoad> two{{kMonday, 1, 7, 0.0}, {kMonday, 1, 5, 0.0}};
    EXPECT_EQ(usualRange(std::span(two), 1, lifts)->low, 5.0);
}

TEST(TrainingHistory, AVariationIsAlsoDoneWhereItsRepsLeadASet)
{
    SetEntry led = setOf(idOf("comp"), 90, 3);
    led.lead = LeadReps{idOf("feet_up"), 1};
    std::vector<LoggedSession> log{
        sessionOf(kMonday.addDays(-2), {setOf(idOf("comp"), 100, 3), led}),
        sessionOf(kMonday.addDays(-1), {setOf(idOf("comp"), 100, 3)})};
    EXPECT_EQ(lastDone(idOf("feet_up"), kMonday, log), kMonday.addDays(-2));
    EXPECT_FALSE(lastDone(idOf("feet_up"), kMonday.addDays(-2), log))
        << "the day itself is no past";
    EXPECT_FALSE(lastDone(idOf("close_grip"), kMonday, log));
}
