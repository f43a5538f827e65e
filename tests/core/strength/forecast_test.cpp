#include "core/strength/forecast.h"

#include "tests/core/strength/training_samples.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace samples;
using namespace strength;

namespace {

std::vector<SetForecast> forecastOf(const LifterLog &log)
{
    return forecastSessions(std::span(&log, 1), kVariations);
}

/// A set that is added to the end of a steady log of a lifter with a max of 100 kg.
SetForecast lastForecast(const TrainingSet &set)
{
    LifterLog log = steadyLog(20);
    log.sessions.push_back({7 * 20 + 4, {set}});
    return forecastOf(log).back();
}

TrainingSet planned(TrainingSet set, int reps)
{
    set.repsPlanned = reps;
    return set;
}

} // namespace

TEST(Forecast, EverySetButThoseOfTheFirstSession)
{
    const LifterLog log = steadyLog(20); // two sessions a week, four sets each
    EXPECT_EQ(forecastOf(log).size(), size_t(20 * 2 * 4 - 4));
    EXPECT_TRUE(forecastOf({}).empty());
}

TEST(Forecast, ExpectsWhatASteadyLifterKeepsSaying)
{
    for (const SetForecast &forecast : forecastOf(steadyLog(20)))
        if (forecast.day > 100) {
            EXPECT_NEAR(forecast.rir, *forecast.saidRir, 0.5);
            EXPECT_LT(forecast.missChance, 0.2);
        }
}

TEST(Forecast, AHeavierSetIsRatherMissed)
{
    double before = 0.0;
    for (const double loadKg : {80.0, 95.0, 100.0, 105.0, 120.0}) {
        const double chance = lastForecast(rated(loadKg, 1, 9)).missChance;
        EXPECT_GT(chance, before) << loadKg;
        before = chance;
    }
    EXPECT_LT(lastForecast(rated(80, 1, 9)).missChance, 0.001);
    EXPECT_NEAR(lastForecast(rated(100, 1, 9)).missChance, 0.5, 0.35);
    EXPECT_GT(lastForecast(rated(120, 1, 9)).missChance, 0.999);
}

TEST(Forecast, KnowsNothingOfTheSetItself)
{
    const SetForecast easy = lastForecast(planned(rated(90, 3, 6), 3));
    const SetForecast hard = lastForecast(planned(rated(90, 3, 10), 3));
    const SetForecast failed = lastForecast(planned(missed(90, 1), 3));
    EXPECT_DOUBLE_EQ(easy.rir, hard.rir);
    EXPECT_DOUBLE_EQ(easy.missChance, hard.missChance);
    EXPECT_DOUBLE_EQ(easy.missChance, failed.missChance);
    EXPECT_FALSE(easy.missed);
    EXPECT_TRUE(failed.missed);
    EXPECT_FALSE(failed.saidRir.has_value());
}

TEST(Forecast, ASetCutShortOfItsPlanIsMissed)
{
    EXPECT_TRUE(lastForecast(planned(rated(90, 2, 10), 3)).missed);
    EXPECT_FALSE(lastForecast(rated(90, 2, 10)).missed) << "without a plan nothing fell short";
}

TEST(Forecast, KnowsNothingOfLaterSessions)
{
    const auto cut = forecastOf(steadyLog(20));
    LifterLog log = steadyLog(40);
    for (TrainingSession &session : log.sessions)
        if (session.day > 7 * 20)
            for (TrainingSet &set : session.sets)
                set.loadKg *= 1.2;
    const auto whole = forecastOf(log);
    ASSERT_GT(whole.size(), cut.size());
    for (size_t i = 0; i < cut.size(); ++i)
        EXPECT_DOUBLE_EQ(whole[i].rir, cut[i].rir) << i;
}

TEST(Forecast, TheUsualReserveIsTheMeanOfWhatWasSaid)
{
    // Where nobody has said anything yet it is two reps (common practice, no source).
    LifterLog log;
    log.sessions = {{0, {unrated(80, 5)}}, {7, {rated(80, 5, 7), rated(80, 5, 9)}},
        {14, {rated(80, 5, 6)}}, {21, {rated(80, 5, 8)}}};
    const auto forecasts = forecastOf(log);
    ASSERT_EQ(forecasts.size(), 4u);
    EXPECT_DOUBLE_EQ(forecasts[0].usualRir, 2.0);
    EXPECT_DOUBLE_EQ(forecasts[1].usualRir, 2.0) << "a session does not know of itself";
    EXPECT_DOUBLE_EQ(forecasts[2].usualRir, (3.0 + 1.0) / 2);
    EXPECT_DOUBLE_EQ(forecasts[3].usualRir, (3.0 + 1.0 + 4.0) / 3);
}

TEST(Forecast, NeverExpectsMoreReserveThanTheLifterEverSays)
{
    // Ratings that end at 7: a light set is expected to be called 7 too.
    LifterLog log;
    for (int week = 0; week < 20; ++week)
        log.sessions.push_back({7 * week, {rated(80, 3, 7), rated(70, 3, 7), rated(60, 3, 7)}});
    for (const SetForecast &forecast : forecastOf(log)) {
        EXPECT_GE(forecast.rir, 0.0);
        if (forecast.day > 100) {
            EXPECT_LE(forecast.rir, 3.5);
        }
    }
}

TEST(Forecast, WithoutAPlanAMissIsOneRepBeyondThoseDone)
{
    const SetForecast tried = lastForecast(missed(97, 1));
    const SetForecast asked = lastForecast(planned(missed(97, 1), 2));
    EXPECT_DOUBLE_EQ(tried.missChance, asked.missChance);
    EXPECT_GT(asked.missChance, lastForecast(planned(rated(97, 1, 9), 1)).missChance);
    EXPECT_DOUBLE_EQ(lastForecast(missed(100, 0)).missChance,
        lastForecast(planned(missed(100, 0), 1)).missChance);
}

TEST(Forecast, RefusesWhatTheEngineRefuses)
{
    LifterLog log = steadyLog(2);
    log.sessions.back().sets.back().loadKg = -1.0;
    EXPECT_THROW(forecastOf(log), std::invalid_argument);
}
