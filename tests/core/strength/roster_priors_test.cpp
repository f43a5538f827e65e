#include "core/strength/roster_priors.h"

#include "core/strength/pooling.h"
#include "tests/core/strength/training_samples.h"

#include <atomic>
#include <cmath>
#include <gtest/gtest.h>
#include <stdexcept>
#include <stop_token>

using namespace samples;
using namespace strength;

namespace {

void expectPrior(const Prior &prior, double mean, double sd)
{
    EXPECT_DOUBLE_EQ(prior.mean, mean);
    EXPECT_DOUBLE_EQ(prior.sd, sd);
}

LifterLog shortLog(double maxKg)
{
    LifterLog log;
    log.sessions = {{4, {rated(0.87 * maxKg, 3, 8)}}, {11, {rated(0.93 * maxKg, 1, 8.5)}}};
    return log;
}

} // namespace

TEST(RosterPriors, TheRowsOfTheTableAreTakenInLogsWithAFloorForWhatIsSaidToBeExact)
{
    const std::vector<VariationPrior> table{{1.0, 0.0, 1.0}, {0.8, 0.04, 1.25}, {0.5, 0.0, 1.0}};
    const RosterPriors priors = publishedPriors(table);
    ASSERT_EQ(priors.lnRatio.size(), 3u);
    expectPrior(priors.lnRatio[0], 0.0, 0.001);
    expectPrior(priors.lnRatio[1], std::log(0.8), 0.05);
    expectPrior(priors.lnRatio[2], std::log(0.5), 0.001);
    expectPrior(priors.lnRepCost[1], std::log(1.25), 0.08);
    EXPECT_EQ(priors.ratingScale, 1.0);
}

TEST(RosterPriors, ALifterIsExpectedToLiftAMultipleOfTheBodyweight)
{
    // Common practice, no source: 0.9 times for a woman, 1.3 for a man, give or take a third; 66
    // and 80 kg where the bodyweight is not stated.
    using Sex = LifterLog::Sex;
    const auto expected = [](Sex sex, std::optional<double> bodyweight) {
        LifterLog log;
        log.sex = sex;
        log.bodyweightKg = bodyweight;
        return populationMax(log);
    };
    expectPrior(expected(Sex::female, 60.0), std::log(54.0), 0.33);
    expectPrior(expected(Sex::male, 100.0), std::log(130.0), 0.33);
    expectPrior(expected(Sex::unstated, 100.0), std::log(110.0), 0.33);
    expectPrior(expected(Sex::female, {}), std::log(0.9 * 66.0), 0.4);
    expectPrior(expected(Sex::male, {}), std::log(1.3 * 80.0), 0.4);
    expectPrior(expected(Sex::unstated, {}), std::log(1.1 * 80.0), 0.4);
}

TEST(Pooling, OfALargeRosterEverySecondLifterIsEnough)
{
    std::vector<LifterLog> logs;
    for (int lifter = 0; lifter < 64; ++lifter)
        logs.push_back(shortLog(80.0 + lifter));
    std::vector<LifterLog> half;
    for (size_t i = 0; i < logs.size(); i += 2)
        half.push_back(logs[i]);
    const RosterPriors published = publishedPriors(kVariations);
    EXPECT_EQ(pooledPriors(logs, published).ratingBias.mean,
        pooledPriors(half, published).ratingBias.mean);
    logs.pop_back();
    EXPECT_NE(pooledPriors(logs, published).ratingBias.mean,
        pooledPriors(half, published).ratingBias.mean)
        << "63 are read one by one";
}

TEST(Pooling, WorkOnAllProcessorsIsDoneOnceEachAndItsFirstFailureIsTold)
{
    std::vector<std::atomic<int>> done(100);
    forEachOnAllProcessors(done.size(), [&done](size_t i) { ++done[i]; });
    for (const std::atomic<int> &times : done)
        EXPECT_EQ(times, 1);
    EXPECT_NO_THROW(forEachOnAllProcessors(0, [](size_t) { FAIL(); }));
    EXPECT_THROW(forEachOnAllProcessors(10,
                     [](size_t i) {
                         if (i == 3)
                             throw std::invalid_argument("3");
                     }),
        std::invalid_argument);
    std::stop_source stop;
    stop.request_stop();
    EXPECT_THROW(forEachOnAllProcessors(
                     1, [](size_t) { FAIL(); }, stop.get_token()),
        Stopped);
    const std::vector<LifterLog> logs{shortLog(100), shortLog(90)};
    EXPECT_THROW((void)pooledPriors(logs, publishedPriors(kVariations), stop.get_token()), Stopped);
}
