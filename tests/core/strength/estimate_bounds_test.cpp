#include "core/strength/estimate_report.h"
#include "core/strength/forecast.h"
#include "core/strength/hard_sets.h"
#include "tests/core/strength/training_samples.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>

// Edges of estimates and forecasts: days, weeks, and from where on words change.

using namespace samples;
using namespace strength;

namespace {

LifterFit publishedFit(const LifterLog &log, int today = 0)
{
    return fitLifter(log, publishedPriors(kVariations), today);
}

/// A log with so many sets that are far off at its end, then so many that are not.
LifterLog endingIn(int wrong, int right)
{
    LifterLog log = steadyLog(20);
    TrainingSession last{7 * 20 + 4, {}};
    for (int set = 0; set < wrong; ++set)
        last.sets.push_back(rated(400, 5, 7));
    for (int set = 0; set < right; ++set)
        last.sets.push_back(rated(87, 3, 8));
    log.sessions.push_back(last);
    return log;
}

} // namespace

TEST(EstimateBounds, AWeekWithoutASetIsOneFromItsSundayOn)
{
    const LifterLog log = steadyLog(12);
    const int sunday = 7 * 11 + 10;
    EXPECT_FALSE(estimateLifter(log, kVariations, sunday + 6).idle);
    const LifterEstimate estimate = estimateLifter(log, kVariations, sunday + 7);
    ASSERT_TRUE(estimate.idle);
    EXPECT_EQ(estimate.idle->until, sunday + 7);
    // Up to the last Sunday with a set the week itself is what is known.
    EXPECT_NEAR(estimate.maxOn(sunday)->low90, estimate.weeks.back().filtered.low90, 1e-9);
    EXPECT_NEAR(estimate.maxOn(sunday + 1)->low90, estimate.idle->max.low90, 1e-9);
    EXPECT_NEAR(estimate.maxOn(sunday + 7)->low90, estimate.idle->max.low90, 1e-9);
    EXPECT_LT(estimate.maxOn(sunday + 8)->low90, estimate.idle->max.low90);
}

TEST(EstimateBounds, ALoneLifterLearnsFromNobody)
{
    const RosterPriors published = publishedPriors(kVariations);
    const std::vector<LifterLog> one{steadyLog(12)}, two{steadyLog(12), steadyLog(12, 80.0)};
    EXPECT_EQ(learnRoster(one, kVariations).formSd, published.formSd);
    EXPECT_NE(learnRoster(two, kVariations).formSd, published.formSd);
}

TEST(EstimateBounds, TheLastDayIsThatOfTheLastSet)
{
    EXPECT_EQ(lastDayOf({}), std::numeric_limits<int>::min());
    std::vector<LifterLog> logs{steadyLog(2), steadyLog(1)};
    EXPECT_EQ(lastDayOf(logs), 14);
    logs[1].sessions.push_back({90, {}});
    EXPECT_EQ(lastDayOf(logs), 14) << "a session without sets is none";
    EXPECT_EQ(estimateOf(logs[1]).lastSet, 7);
}

TEST(EstimateBounds, AQuarterOfTheSetsOfLateIsWhatMayDisagree)
{
    int justBelow = 0, justAbove = 0;
    for (int wrong = 2; wrong <= 5; ++wrong)
        for (int right = 0; right <= 4; ++right) {
            const LifterFit fit = publishedFit(endingIn(wrong, right));
            const double conflict = fit.filter.conflict();
            EXPECT_EQ(report(fit, kVariations, 144).standing,
                conflict > 0.25 ? Standing::conflicting : Standing::enough)
                << conflict;
            justBelow += conflict > 0.225 && conflict <= 0.25;
            justAbove += conflict > 0.25 && conflict < 0.275;
        }
    EXPECT_GT(justBelow, 0);
    EXPECT_GT(justAbove, 0);
}

TEST(EstimateBounds, WhereNothingWasToldOfLateTheIntervalAllowsForOneRatingsError)
{
    // 4.5 %, and 0.11 % a rep that the curve has to reach down, besides what is believed.
    LifterLog log;
    for (int week = 0; week < 12; ++week)
        log.sessions.push_back({7 * week, {unrated(80, 5), unrated(85, 3)}});
    const LifterFit fit = publishedFit(log);
    ASSERT_EQ(fit.weeks.back().footing.toldOfLate, 0.0);
    const Band band = report(fit, kVariations, 0).weeks.back().filtered;
    const double misfit = 0.0011 * (fit.weeks.back().footing.reach - 1.0);
    EXPECT_NEAR(std::pow(sdOfLn(band.low90, band.high90), 2.0),
        fit.weeks.back().variance + misfit * misfit + 0.045 * 0.045, 1e-12);
    // With several it falls with the root of their number.
    const LifterFit told = publishedFit(steadyLog(12));
    const double number = told.weeks.back().footing.toldOfLate;
    EXPECT_GT(number, 10.0);
    const Band narrow = report(told, kVariations, 0).weeks.back().filtered;
    const double reach = 0.0011 * (told.weeks.back().footing.reach - 1.0);
    EXPECT_NEAR(std::pow(sdOfLn(narrow.low90, narrow.high90), 2.0),
        told.weeks.back().variance + reach * reach + 0.045 * 0.045 / number, 1e-12);
}

TEST(EstimateBounds, EightPerCentIsAGuessAndTwoPointSevenIsThin)
{
    // The belief of one log made wider and narrower, so that all widths are met.
    LifterFit fit = publishedFit(steadyLog(20));
    int guesses = 0, thin = 0, enough = 0;
    for (int step = 0; step < 200; ++step) {
        fit.weeks.back().variance = std::pow(0.0005 * step, 2.0);
        const LifterEstimate estimate = report(fit, kVariations, fit.lastDay);
        const Band band = estimate.weeks.back().filtered;
        const double sd = sdOfLn(band.low90, band.high90);
        EXPECT_EQ(estimate.standing,
            sd > 0.08        ? Standing::priorOnly
                : sd > 0.027 ? Standing::thin
                             : Standing::enough)
            << sd;
        guesses += estimate.standing == Standing::priorOnly;
        thin += estimate.standing == Standing::thin;
        enough += estimate.standing == Standing::enough;
    }
    EXPECT_GT(guesses, 0);
    EXPECT_GT(thin, 0);
    EXPECT_GT(enough, 0);
}

TEST(ForecastBounds, ALoneLiftersForecastsLeanOnThePublishedValuesAlone)
{
    // After more than a quarter too; worked by a filter that reads up to the last session.
    LifterLog log = steadyLog(40);
    const TrainingSet asked = rated(87, 3, 8);
    log.sessions.push_back({7 * 40 + 4, {asked}});
    LifterFilter filter(publishedPriors(kVariations), populationMax(log));
    for (size_t i = 0; i + 1 < log.sessions.size(); ++i) {
        filter.startWeeksUpTo(log.sessions[i].day);
        filter.addSession(log.sessions[i].day, log.sessions[i].sets);
    }
    filter.startWeeksUpTo(log.sessions.back().day);
    filter.expectSession(log.sessions.back().sets);
    const SetModel model{filter.belief().mean(), filter.slots(), filter.priors()};
    Expectation left = model.possibleReps(asked, 0.0);
    left.value -= 3.0;
    const double rir = std::min(model.saidReserve(left).value, 3.5);
    EXPECT_DOUBLE_EQ(forecastSessions({&log, 1}, kVariations).back().rir, rir);
}

TEST(ForecastBounds, NoLessThanNoRepIsExpectedToBeLeft)
{
    LifterLog log = steadyLog(20);
    log.sessions.push_back({144, {rated(120, 1, 10), rated(104, 1, 10)}});
    const auto forecasts = forecastSessions({&log, 1}, kVariations);
    EXPECT_EQ(forecasts.back().rir, 0.0);
    EXPECT_EQ(forecasts[forecasts.size() - 2].rir, 0.0);
}

TEST(ForecastBounds, OfALoadThatIsFarOffTheChanceIsStillSure)
{
    LifterLog log = steadyLog(20);
    TrainingSet led = rated(170, 3, 10, 2);
    led.leadVariation = 1;
    led.leadReps = 1;
    log.sessions.push_back({144, {rated(10, 1, 5), rated(500, 1, 10), led}});
    const auto forecasts = forecastSessions({&log, 1}, kVariations);
    EXPECT_LT(forecasts[forecasts.size() - 3].missChance, 1e-6);
    EXPECT_GT(forecasts[forecasts.size() - 2].missChance, 1.0 - 1e-6);
    EXPECT_GT(forecasts.back().missChance, 0.99);
}
