#include "core/strength/estimator.h"
#include "core/strength/week.h"
#include "tests/core/strength/training_samples.h"

#include <gmock/gmock.h>

#include <cmath>
#include <limits>

using namespace samples;
using namespace strength;

TEST(Week, EndsOnSunday)
{
    static_assert(sundayOf(0) == 3);   // 1970-01-01 was a Thursday
    static_assert(sundayOf(3) == 3);   // Sunday itself
    static_assert(sundayOf(4) == 10);  // Monday
    static_assert(sundayOf(-1) == 3);  // Wednesday
    static_assert(sundayOf(-4) == -4); // the Sunday before
}

TEST(Estimator, SteadyLogGivesTheChartsMaxInsideItsInterval)
{
    const LifterEstimate estimate = estimateOf(steadyLog(30));
    ASSERT_EQ(estimate.weeks.size(), 30u);
    const WeekEstimate &last = estimate.weeks.back();
    EXPECT_EQ(last.sunday, sundayOf(7 * 29 + 4));
    EXPECT_EQ(last.sets, 8);
    EXPECT_NEAR(last.filtered.kg, 100.0, 2.5);
    EXPECT_LT(last.filtered.low90, last.filtered.kg);
    EXPECT_GT(last.filtered.high90, last.filtered.kg);
    EXPECT_EQ(estimate.standing, Standing::enough);
    EXPECT_EQ(estimate.variations[1].sets, 60);
    EXPECT_EQ(estimate.form.size(), 60u);
}

TEST(Estimator, FilteredEstimateKnowsNothingOfLaterWeeks)
{
    LifterLog log = steadyLog(12);
    const LifterEstimate before = estimateOf(log);
    for (int week = 12; week < 20; ++week)
        log.sessions.push_back({7 * week + 4, {rated(110, 3, 8)}});
    const LifterEstimate after = estimateOf(log);
    for (size_t week = 0; week < 12; ++week)
        EXPECT_NEAR(after.weeks[week].filtered.kg, before.weeks[week].filtered.kg, 1e-9);
    EXPECT_GT(after.weeks[11].smoothed.kg, before.weeks[11].smoothed.kg);
}

TEST(Estimator, OrderOfSessionsInTheLogDoesNotMatter)
{
    LifterLog log = steadyLog(6);
    const LifterEstimate inOrder = estimateOf(log);
    std::reverse(log.sessions.begin(), log.sessions.end());
    const LifterEstimate reversed = estimateOf(log);
    EXPECT_DOUBLE_EQ(inOrder.weeks.back().smoothed.kg, reversed.weeks.back().smoothed.kg);
}

TEST(Estimator, MaxAheadKeepsTheMedianAndWidens)
{
    const LifterEstimate estimate = estimateOf(steadyLog(12));
    const int sunday = estimate.weeks.back().sunday;
    const auto soon = estimate.maxOn(sunday), later = estimate.maxOn(sunday + 70);
    ASSERT_TRUE(soon && later);
    EXPECT_NEAR(soon->kg, estimate.weeks.back().filtered.kg, 1e-9);
    EXPECT_GT(later->high90 / later->low90, soon->high90 / soon->low90);
}

TEST(Estimator, ALayoffUntilTodaySinksTheMaxAndWidensIt)
{
    const LifterLog log = steadyLog(20);
    const int sunday = sundayOf(log.sessions.back().day);
    const LifterEstimate idle = estimateLifter(log, kVariations, sunday + 7 * 8 + 3);
    ASSERT_TRUE(idle.idle);
    EXPECT_EQ(idle.idle->until, sunday + 7 * 8) << "whole weeks";
    EXPECT_EQ(idle.asOf, sunday + 7 * 8 + 3);
    EXPECT_EQ(idle.lastSet, log.sessions.back().day);
    EXPECT_EQ(idle.standing, Standing::stale);
    const Band before = idle.weeks.back().filtered;
    EXPECT_LT(idle.idle->max.kg, 0.97 * before.kg);
    EXPECT_GT(idle.idle->max.high90 / idle.idle->max.low90, before.high90 / before.low90);
    EXPECT_NEAR(idle.maxOn(idle.idle->until + 7)->kg, idle.idle->max.kg, 1e-9);
}

TEST(Estimator, WhatOthersDidTodayMakesNoLogOlder)
{
    std::vector<LifterLog> logs{steadyLog(20), steadyLog(20, 80.0)};
    const int today = lastDayOf(logs) + 7;
    const RosterPriors learnt = learnRoster(logs, kVariations);
    const LifterEstimate before = estimateRoster(logs, kVariations, learnt, today).front();
    logs[1].sessions.push_back({today, {rated(70, 3, 8)}});
    logs[1].sessions.push_back({today + 4000, {rated(70, 3, 8)}}); // a slip in the year
    const LifterEstimate after = estimateRoster(logs, kVariations, learnt, today).front();
    EXPECT_EQ(before.standing, Standing::enough);
    EXPECT_EQ(after.standing, Standing::enough);
    EXPECT_EQ(after.asOf, today);
    EXPECT_DOUBLE_EQ(after.maxOn(today)->kg, before.maxOn(today)->kg);
}

TEST(Estimator, ASetDatedAfterTodayCountsAndTheEstimateIsOfItsDay)
{
    const LifterLog log = steadyLog(20);
    const int last = log.sessions.back().day;
    const LifterEstimate then = estimateOf(log);
    const LifterEstimate setBack = estimateLifter(log, kVariations, last - 200);
    EXPECT_EQ(setBack.asOf, last);
    EXPECT_EQ(setBack.lastSet, last);
    EXPECT_EQ(setBack.weeks.size(), then.weeks.size());
    EXPECT_FALSE(setBack.idle);
    EXPECT_EQ(setBack.standing, Standing::enough);
    EXPECT_DOUBLE_EQ(setBack.maxOn(last)->kg, then.maxOn(last)->kg);
}

TEST(Estimator, ABadDayIsFormAndNotLevel)
{
    LifterLog log = steadyLog(20);
    const LifterEstimate sound = estimateOf(log);
    for (TrainingSet &set : log.sessions[38].sets)
        set.loadKg *= 0.93; // the same reps and ratings with 7 % less
    const LifterEstimate estimate = estimateOf(log);
    EXPECT_LT(estimate.form[38].factor.value, 0.965);
    EXPECT_NEAR(estimate.weeks.back().smoothed.kg / sound.weeks.back().smoothed.kg, 1.0, 0.015);
}

TEST(Estimator, HeavySinglesAndMissesTellARatingHabitFromStrength)
{
    // Ratings two reps too easy: the same sets, rated two lower, and singles that are missed just
    // above the max.
    LifterLog log;
    for (int week = 0; week < 30; ++week)
        log.sessions.push_back(
            {7 * week, {missed(101.5, 0), rated(99, 1, 8), rated(87, 3, 6), rated(83, 5, 6)}});
    const LifterEstimate estimate = estimateOf(log);
    EXPECT_NEAR(estimate.weeks.back().filtered.kg, 100.0, 2.5);
    EXPECT_GT(estimate.rating.bias.value, 0.7);
}

TEST(Estimator, AVariationsOwnRatioIsLearned)
{
    LifterLog log;
    for (int week = 0; week < 30; ++week)
        log.sessions.push_back({7 * week, {rated(87, 3, 8), rated(87 * 0.88, 3, 8, 1)}});
    const LifterEstimate estimate = estimateOf(log);
    const Interval own = estimate.variations[1].ratio;
    const Interval prior = estimateOf({}).variations[1].ratio;
    EXPECT_NEAR(prior.value, 0.95, 1e-9);
    EXPECT_NEAR(own.value, 0.89, 0.015);
    EXPECT_LT(own.high90 - own.low90, prior.high90 - prior.low90);
    EXPECT_EQ(estimate.variations[1].sets, 30);
}

TEST(Estimator, PullsNameTheSetThatMovedTheEstimateMost)
{
    LifterLog log = steadyLog(12);
    log.sessions.back().sets.push_back(rated(97, 1, 7));
    const LifterEstimate estimate = estimateOf(log);
    ASSERT_EQ(estimate.pulls.size(), 5u);
    EXPECT_EQ(estimate.pulls.front().session, int(log.sessions.size()) - 1);
    EXPECT_EQ(estimate.pulls.front().set, 4);
    EXPECT_GT(estimate.pulls.front().pullKg, 0.0);
    EXPECT_GT(estimate.pulls.front().surprise, 0.0);
    // Close to what leaving it out does.
    log.sessions.back().sets.pop_back();
    const double without = estimateOf(log).weeks.back().filtered.kg;
    const double moved = estimate.weeks.back().filtered.kg - without;
    EXPECT_NEAR(estimate.pulls.front().pullKg, moved, 0.35 * moved);
}

TEST(Estimator, ARosterLendsItsHabitsToANewLifter)
{
    // Everybody in this gym is stronger on the second row than the table says.
    const auto gymLog = [](int weeks, double maxKg) {
        LifterLog log;
        for (int week = 0; week < weeks; ++week)
            log.sessions.push_back(
                {7 * week, {rated(0.87 * maxKg, 3, 8), rated(0.87 * maxKg, 3, 8, 1)}});
        return log;
    };
    std::vector<LifterLog> logs;
    for (int i = 0; i < 12; ++i)
        logs.push_back(gymLog(30, 80.0 + 5.0 * i));
    LifterLog fresh = gymLog(1, 100.0);
    fresh.sessions.front().sets.pop_back();
    logs.push_back(fresh);
    const double pooled =
        estimateRoster(logs, kVariations, lastDayOf(logs)).back().variations[1].ratio.value;
    EXPECT_GT(pooled, 0.965);
    EXPECT_LT(pooled, 1.0);
}

TEST(Estimator, EmptyLogHasNoEstimate)
{
    const LifterEstimate estimate = estimateOf({});
    EXPECT_EQ(estimate.standing, Standing::noData);
    EXPECT_TRUE(estimate.weeks.empty());
    EXPECT_FALSE(estimate.maxOn(0));
    EXPECT_FALSE(estimate.lastSet);
    EXPECT_EQ(estimateLifter({}, kVariations, 77).asOf, 77);
    EXPECT_EQ(estimate.variations.size(), kVariations.size());
}

TEST(Estimator, UnsoundInputIsRefusedByPlace)
{
    const auto messageOf = [](const TrainingSet &set) -> std::string {
        LifterLog log;
        log.sessions.push_back({0, {rated(100, 1, 8), set}});
        const std::vector<LifterLog> logs{{}, log};
        try {
            (void)estimateRoster(logs, kVariations, lastDayOf(logs));
        } catch (const std::invalid_argument &error) {
            return error.what();
        }
        return {};
    };
    EXPECT_THAT(
        messageOf(rated(0, 1, 8)), testing::StartsWith("log 1, session 0, set 1: the load"));
    EXPECT_THAT(messageOf(rated(std::numeric_limits<double>::infinity(), 1, 8)),
        testing::HasSubstr("the load"));
    EXPECT_THAT(messageOf(rated(100, 1, 11)), testing::HasSubstr("the rating"));
    EXPECT_THAT(messageOf(rated(100, 0, 8)), testing::HasSubstr("at least one rep"));
    EXPECT_THAT(messageOf(rated(100, 1, 8, 3)), testing::HasSubstr("no row"));
    EXPECT_EQ(messageOf(rated(100, 1, 8)), "");
    EXPECT_THROW((void)estimateRoster({}, {}, 0), std::invalid_argument);
    LifterLog alone;
    alone.sessions.push_back({0, {rated(100, 1, 11)}});
    try {
        (void)estimateLifter(alone, kVariations, publishedPriors(kVariations), 0);
        FAIL();
    } catch (const std::invalid_argument &error) {
        EXPECT_THAT(error.what(), testing::StartsWith("log 0, session 0, set 0: the rating"));
    }
}

TEST(Estimator, TheMaxOfADayGoneByIsWhatWasKnownOnTheSundayBefore)
{
    const LifterEstimate estimate = estimateOf(steadyLog(12));
    const auto at = [&estimate](int day) { return *estimate.maxOn(day); };
    const auto &weeks = estimate.weeks;
    const auto sameAs = [](const Band &a, const Band &b) {
        return std::abs(a.kg - b.kg) < 1e-9 && std::abs(a.low90 - b.low90) < 1e-9;
    };
    // A week of drift is added for each week ahead, in sevenths for its days.
    const auto ahead = [&estimate](const Band &band, double weeksAhead) {
        const double sd = sdOfLn(band.low90, band.high90);
        return bandOf(std::log(band.kg),
            std::sqrt(sd * sd + std::pow(estimate.driftPerWeek, 2.0) * weeksAhead));
    };
    EXPECT_TRUE(sameAs(at(weeks[5].sunday), ahead(weeks[4].filtered, 1.0)));
    EXPECT_TRUE(sameAs(at(weeks[5].sunday - 6), ahead(weeks[4].filtered, 1.0 / 7.0))) << "Monday";
    EXPECT_TRUE(sameAs(at(weeks[1].sunday), ahead(weeks[0].filtered, 1.0)));
    EXPECT_TRUE(sameAs(at(weeks[0].sunday), weeks[0].filtered)) << "nothing was known before";
    EXPECT_TRUE(sameAs(at(weeks[0].sunday - 30), weeks[0].filtered));
    EXPECT_TRUE(sameAs(at(weeks[11].sunday - 7), ahead(weeks[9].filtered, 1.0)));
    EXPECT_TRUE(sameAs(at(weeks[11].sunday - 6), weeks[11].filtered)) << "of this week all";
    EXPECT_TRUE(sameAs(at(weeks[11].sunday + 14), ahead(weeks[11].filtered, 2.0)));
}

TEST(Estimator, OneLifterAnewIsEstimatedAsInTheRosterAndUpToTheOwnLastDay)
{
    const std::vector<LifterLog> logs{steadyLog(20), steadyLog(12, 80.0)};
    const RosterPriors learnt = learnRoster(logs, kVariations);
    const int today = 7 * 19 + 7;
    const auto all = estimateRoster(logs, kVariations, learnt, today);
    const LifterEstimate alone = estimateLifter(logs[1], kVariations, learnt, today);
    EXPECT_EQ(alone.weeks.back().filtered, all[1].weeks.back().filtered);
    EXPECT_EQ(alone.idle->until, all[1].idle->until);
    LifterLog longer = logs[1];
    longer.sessions.push_back({7 * 30, {rated(70, 3, 8)}});
    EXPECT_FALSE(estimateLifter(longer, kVariations, learnt, today).idle)
        << "the log has outrun it";
}

TEST(Estimator, RatingsAreCountedWhereTheyWereGivenAndNotMissed)
{
    LifterLog log;
    TrainingSet ratedMiss = missed(105, 0);
    ratedMiss.rpe = 10.0;
    log.sessions = {{0, {rated(87, 3, 8), unrated(80, 5), ratedMiss, rated(80, 3, 8, 1)}}};
    const LifterEstimate estimate = estimateOf(log);
    EXPECT_EQ(estimate.rating.ratings, 2);
    EXPECT_EQ(estimate.variations[0].sets, 3);
    EXPECT_EQ(estimate.variations[1].sets, 1);
    EXPECT_EQ(estimate.weeks[0].sets, 4);
}
