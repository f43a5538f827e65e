#include "core/strength/estimator.h"
#include "core/strength/prescription.h"
#include "tests/core/strength/training_samples.h"

#include <gmock/gmock.h>

#include <cmath>

using namespace samples;
using namespace strength;

namespace {

void expectFinite(const Band &band)
{
    EXPECT_TRUE(std::isfinite(band.kg) && std::isfinite(band.low90) && std::isfinite(band.high90));
    EXPECT_GT(band.low90, 0.0);
    EXPECT_LE(band.low90, band.kg);
    EXPECT_LE(band.kg, band.high90);
}

/// Every number that an estimate holds, and what is worked from it.
LifterEstimate soundEstimate(const LifterLog &log)
{
    const LifterEstimate estimate = estimateOf(log);
    for (const WeekEstimate &week : estimate.weeks) {
        expectFinite(week.filtered);
        expectFinite(week.smoothed);
    }
    for (const VariationEstimate &variation : estimate.variations) {
        EXPECT_TRUE(std::isfinite(variation.ratio.value)) << "ratio";
        EXPECT_TRUE(std::isfinite(variation.withMax));
        EXPECT_GT(variation.repCost, 0.0);
        if (!estimate.weeks.empty())
            expectFinite(variation.max);
    }
    for (const DayForm &form : estimate.form)
        EXPECT_TRUE(std::isfinite(form.factor.low90) && std::isfinite(form.factor.high90));
    for (const SetPull &pull : estimate.pulls)
        EXPECT_TRUE(std::isfinite(pull.pullKg) && std::isfinite(pull.surprise));
    EXPECT_TRUE(std::isfinite(estimate.rating.bias.value) && std::isfinite(estimate.rating.noise));
    EXPECT_GT(estimate.curve.kappa, 0.0);
    if (!estimate.weeks.empty()) {
        const int day = estimate.weeks.back().sunday + 1;
        expectFinite(loadFor(estimate, day, kVariations, {2, 3, 2.0, 1}).value());
        EXPECT_TRUE(
            std::isfinite(reserveAt(estimate, day, kVariations, {2, 3, 2.0, 1}, 80.0)->value));
    }
    return estimate;
}

double lastKg(const LifterEstimate &estimate)
{
    return estimate.weeks.back().filtered.kg;
}

} // namespace

TEST(DegenerateLogs, Empty)
{
    EXPECT_EQ(soundEstimate({}).standing, Standing::noData);
    LifterLog noSets;
    noSets.sessions.push_back({0, {}});
    EXPECT_EQ(soundEstimate(noSets).standing, Standing::noData);
}

TEST(DegenerateLogs, OneSet)
{
    LifterLog log;
    log.sessions.push_back({0, {rated(100, 3, 8)}});
    const LifterEstimate estimate = soundEstimate(log);
    EXPECT_NE(estimate.standing, Standing::enough);
    EXPECT_NEAR(lastKg(estimate), 114.0, 5.0); // five reps at 87 % by the handbook chart
}

TEST(DegenerateLogs, OnlyMisses)
{
    LifterLog log;
    for (int week = 0; week < 8; ++week)
        log.sessions.push_back({7 * week, {missed(100, 0), missed(95, 0), missed(90, 1)}});
    const LifterEstimate estimate = soundEstimate(log);
    EXPECT_LT(lastKg(estimate), 97.0);
    EXPECT_GT(lastKg(estimate), 85.0);
}

TEST(DegenerateLogs, OnlyUnrated)
{
    LifterLog log;
    for (int week = 0; week < 20; ++week)
        log.sessions.push_back({7 * week, {unrated(80, 5), unrated(80, 5), unrated(80, 5)}});
    const LifterEstimate estimate = soundEstimate(log);
    EXPECT_GT(lastKg(estimate), 80.0 / 0.87 * 0.99); // five were done
    EXPECT_NE(estimate.standing, Standing::enough);  // how many more is anybody's guess
}

TEST(DegenerateLogs, AllAtOneLoad)
{
    LifterLog log;
    for (int week = 0; week < 30; ++week)
        log.sessions.push_back({7 * week, {rated(80, 5, 7), rated(80, 5, 7), rated(80, 5, 7)}});
    const LifterEstimate estimate = soundEstimate(log);
    EXPECT_NEAR(lastKg(estimate), 100.0, 5.0); // eight reps at 80 % by the handbook chart
    // Curve, bias and max cannot be told apart at one load: the interval must say so.
    const Band band = estimate.weeks.back().filtered;
    EXPECT_GT(band.high90 / band.low90, 1.05);
}

TEST(DegenerateLogs, TenYearGap)
{
    LifterLog log = steadyLog(20);
    log.sessions.push_back({4000, {rated(60, 5, 7)}});
    const LifterEstimate estimate = soundEstimate(log);
    EXPECT_GT(estimate.weeks.size(), 500u);
    const WeekEstimate &beforeReturn = estimate.weeks[estimate.weeks.size() - 2];
    EXPECT_LT(beforeReturn.filtered.kg, 95.0);                                  // sunk
    EXPECT_GT(beforeReturn.filtered.high90 / beforeReturn.filtered.low90, 1.3); // and uncertain
    EXPECT_LT(lastKg(estimate), 85.0);                                          // believed
}

TEST(DegenerateLogs, DatesOutOfOrder)
{
    LifterLog log = steadyLog(10);
    const double inOrder = lastKg(soundEstimate(log));
    std::swap(log.sessions[3], log.sessions[15]);
    std::swap(log.sessions[0], log.sessions[19]);
    EXPECT_DOUBLE_EQ(lastKg(soundEstimate(log)), inOrder);
}

TEST(DegenerateLogs, ALoadTypedInPoundsMovesNothing)
{
    LifterLog log = steadyLog(20);
    const double sound = lastKg(soundEstimate(log));
    log.sessions.back().sets[1].loadKg /= 0.45359237;
    EXPECT_NEAR(lastKg(soundEstimate(log)) / sound, 1.0, 0.01);
    // A whole session of them is flagged.
    for (TrainingSet &set : log.sessions.back().sets)
        set.loadKg = 87.0 / 0.45359237;
    const LifterEstimate estimate = soundEstimate(log);
    EXPECT_NEAR(lastKg(estimate) / sound, 1.0, 0.02);
    EXPECT_EQ(estimate.standing, Standing::conflicting);
}

TEST(DegenerateLogs, AFirstSessionTypedInPoundsIsGotOver)
{
    LifterLog log = steadyLog(12);
    for (TrainingSet &set : log.sessions.front().sets)
        set.loadKg /= 0.45359237;
    const LifterEstimate estimate = soundEstimate(log);
    EXPECT_NEAR(lastKg(estimate), 100.0, 5.0);
}

TEST(DegenerateLogs, WarmUpsThatAreLoggedMoveNothing)
{
    LifterLog log = steadyLog(20);
    const double sound = lastKg(soundEstimate(log));
    for (TrainingSession &session : log.sessions)
        session.sets.insert(
            session.sets.begin(), {unrated(20, 8), unrated(50, 5), rated(60, 3, 4)});
    const LifterEstimate estimate = soundEstimate(log);
    EXPECT_NEAR(lastKg(estimate) / sound, 1.0, 0.01);
    EXPECT_EQ(estimate.standing, Standing::enough);
}

TEST(DegenerateLogs, FiveThousandSetsInADay)
{
    LifterLog log;
    log.sessions.push_back({0, std::vector<TrainingSet>(5000, rated(80, 5, 8))});
    const LifterEstimate estimate = soundEstimate(log);
    EXPECT_GT(lastKg(estimate), 80.0);
    EXPECT_LT(lastKg(estimate), 140.0);
}

TEST(DegenerateLogs, ManyRepsAndExtremeLoads)
{
    LifterLog log;
    log.sessions.push_back({0, {rated(20, 100, 9), rated(1e-3, 3, 8), rated(1e6, 3, 8)}});
    soundEstimate(log);
    log.sessions.push_back({3, {missed(1e6, 0), rated(1e6, 1, 10), unrated(1e-3, 1000)}});
    soundEstimate(log);
    log.sessions.push_back({-70'000, {rated(100, 3, 8)}});
    soundEstimate(log);
}

TEST(DegenerateLogs, ASessionTooLongToBeRememberedNamesNoSetThatMovedTheMax)
{
    LifterLog log;
    log.sessions.push_back({0, std::vector<TrainingSet>(200, rated(80, 5, 8))});
    EXPECT_TRUE(soundEstimate(log).pulls.empty());
    log.sessions.push_back({2, {rated(85, 5, 8)}});
    const LifterEstimate estimate = soundEstimate(log);
    ASSERT_FALSE(estimate.pulls.empty());
    for (const SetPull &pull : estimate.pulls)
        EXPECT_EQ(pull.session, 1);
}
