#include "tests/benchmarks/baselines.h"

#include "tests/benchmarks/local_level.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace benchmarks;
using strength::LifterLog;
using strength::TrainingSet;

namespace {

TrainingSet done(double loadKg, int reps, std::optional<double> rpe)
{
    TrainingSet set;
    set.loadKg = loadKg;
    set.reps = reps;
    set.rpe = rpe;
    return set;
}

LifterLog logOf(std::vector<strength::TrainingSession> sessions)
{
    LifterLog log;
    log.sessions = std::move(sessions);
    return log;
}

double estimate(size_t baseline, const LifterLog &log, int day)
{
    return windowBaselines()[baseline].estimate(log, day).value_or(NAN);
}

} // namespace

TEST(Equations, GiveTheirPublishedValues)
{
    // Epley (1985) and Brzycki (1993), from memory: 100 kg for 1, 3, 5, 8, 10 reps.
    const std::vector<double> reps{1, 3, 5, 8, 10};
    const std::vector<double> epleyKg{100.0, 110.0, 116.667, 126.667, 133.333};
    const std::vector<double> brzyckiKg{100.0, 105.882, 112.5, 124.138, 133.333};
    for (size_t i = 0; i < reps.size(); ++i) {
        EXPECT_NEAR(epley(100.0, reps[i]), epleyKg[i], 1e-3);
        EXPECT_NEAR(brzycki(100.0, reps[i]), brzyckiKg[i], 1e-3);
    }
}

TEST(WindowBaselines, AddTheReserveAndTakeTheBestOrTheMean)
{
    const LifterLog log =
        logOf({{100, {done(100, 3, 8.0), done(100, 3, 10.0), done(110, 1, std::nullopt)}}});
    EXPECT_NEAR(estimate(0, log, 100), epley(100, 5), 1e-9);
    EXPECT_NEAR(estimate(1, log, 100), (epley(100, 5) + epley(100, 3)) / 2.0, 1e-9);
    EXPECT_NEAR(estimate(3, log, 100), (brzycki(100, 5) + brzycki(100, 3)) / 2.0, 1e-9);
}

TEST(WindowBaselines, SeeNeitherTheFutureNorBeyondTheWindow)
{
    const LifterLog log = logOf({{100, {done(100, 1, 10.0)}}, {110, {done(150, 1, 10.0)}}});
    EXPECT_DOUBLE_EQ(estimate(1, log, 105), 100.0);
    EXPECT_DOUBLE_EQ(estimate(1, log, 122), 150.0);
    EXPECT_TRUE(std::isnan(estimate(1, log, 131)));
    const std::vector<int> days{99, 105, 131};
    const auto carried = carriedForward(windowBaselines()[1], log, days);
    EXPECT_TRUE(std::isnan(carried[0]));
    EXPECT_DOUBLE_EQ(carried[1], 100.0);
    EXPECT_DOUBLE_EQ(carried[2], 100.0) << "nobody asked while day 110 was in the window";
}

TEST(WindowBaselines, LeaveOutWhatTheEquationsWereNotMadeFor)
{
    TrainingSet feetUp = done(90, 5, 9.0);
    feetUp.variation = 4;
    const LifterLog log = logOf({{100, {feetUp, done(60, 10, 8.0)}}});
    for (size_t i = 0; i < windowBaselines().size(); ++i)
        EXPECT_TRUE(std::isnan(estimate(i, log, 100))) << windowBaselines()[i].name;
}

TEST(LocalLevelByStatsmodels, FindsTheLevelOfAQuietSeries)
{
    const std::vector<std::vector<double>> series{
        {4.60, 4.61, NAN, 4.60, 4.62, 4.61, 4.60, 4.61}, {NAN, NAN, 4.6}};
    const std::optional<LocalLevel> level = localLevel(series);
    if (!level)
        GTEST_SKIP() << "needs /usr/bin/python3 with statsmodels (Debian: python3-statsmodels)";
    ASSERT_EQ(level->smoothed.size(), 2u);
    ASSERT_EQ(level->smoothed[0].mean.size(), 8u);
    EXPECT_NEAR(level->smoothed[0].mean[2], 4.607, 0.005);
    EXPECT_GT(level->smoothed[0].variance[2], 0.0);
    EXPECT_TRUE(std::isnan(level->smoothed[1].mean[2])) << "one value is no series";
    EXPECT_GT(level->smoothSeconds, 0.0);
}
