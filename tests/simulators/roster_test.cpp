#include "tests/simulators/truths.h"

#include <cmath>
#include <gmock/gmock.h>
#include <string>

using namespace simulators;

namespace {

struct Counts
{
    double sets = 0;
    double sessions = 0;
    double missed = 0;
    double rated = 0;
    double competition = 0;
};

Counts count(const SimulatedRoster &roster)
{
    Counts counts;
    for (const strength::LifterLog &log : roster.logs())
        for (const strength::TrainingSession &session : log.sessions) {
            ++counts.sessions;
            for (const strength::TrainingSet &set : session.sets) {
                ++counts.sets;
                counts.missed += set.missed ? 1 : 0;
                counts.rated += set.rpe ? 1 : 0;
                counts.competition += set.variation == competition ? 1 : 0;
            }
        }
    return counts;
}

/// All numbers of a log in a line, to compare two of them.
std::string fingerprint(const strength::LifterLog &log)
{
    std::string text;
    for (const strength::TrainingSession &session : log.sessions)
        for (const strength::TrainingSet &set : session.sets)
            text += std::to_string(session.day) + ' ' + std::to_string(set.loadKg) + ' '
                + std::to_string(set.reps) + ' ' + std::to_string(set.rpe.value_or(0)) + ';';
    return text;
}

class EveryTruth : public testing::TestWithParam<Truth>
{
protected:
    SimulatedRoster roster = simulateRoster(GetParam(), kTrainSeeds[0], 24, 52);
};

} // namespace

TEST_P(EveryTruth, IsTheSameForTheSameSeedAndNotForAnother)
{
    const auto again = simulateRoster(GetParam(), kTrainSeeds[0], 24, 52).logs();
    const auto other = simulateRoster(GetParam(), kTrainSeeds[1], 24, 52).logs();
    EXPECT_EQ(fingerprint(roster.lifters[7].log), fingerprint(again[7]));
    EXPECT_NE(fingerprint(roster.lifters[7].log), fingerprint(other[7]));
}

TEST_P(EveryTruth, AddsLiftersWithoutChangingTheFirst)
{
    const auto fewer = simulateRoster(GetParam(), kTrainSeeds[0], 3, 52).logs();
    EXPECT_EQ(fingerprint(roster.lifters[2].log), fingerprint(fewer[2]));
}

TEST_P(EveryTruth, HasATrueMaxForEveryDayThatMovesLikeOne)
{
    for (const SimulatedLifter &lifter : roster.lifters) {
        ASSERT_EQ(lifter.maxByDay.size(), 52u * 7u);
        for (size_t day = 1; day < lifter.maxByDay.size(); ++day) {
            ASSERT_TRUE(std::isfinite(lifter.maxByDay[day]));
            const double step = std::log(lifter.maxByDay[day] / lifter.maxByDay[day - 1]);
            EXPECT_LT(std::abs(step), 0.03) << "more than 3 % in a day";
        }
        const double year = lifter.maxByDay.back() / lifter.maxByDay.front();
        EXPECT_GT(year, 0.75);
        EXPECT_LT(year, 1.4);
    }
}

TEST_P(EveryTruth, TrainsAndRatesAsLiftersDo)
{
    const Counts counts = count(roster);
    const double sessionsAWeek = counts.sessions / (24 * 52);
    EXPECT_GT(sessionsAWeek, 1.3);
    EXPECT_LT(sessionsAWeek, 4.0);
    EXPECT_GT(counts.sets / counts.sessions, 3.0);
    EXPECT_LT(counts.sets / counts.sessions, 8.0);
    EXPECT_GT(counts.missed / counts.sets, 0.003);
    EXPECT_LT(counts.missed / counts.sets, 0.08);
    EXPECT_GT(counts.rated / counts.sets, 0.2);
    EXPECT_LT(counts.rated / counts.sets, 0.95);
    EXPECT_GT(counts.competition / counts.sets, 0.25);
    EXPECT_LT(counts.competition / counts.sets, 0.7);
}

TEST_P(EveryTruth, GivesSetsThatTheEngineAccepts)
{
    for (const strength::LifterLog &log : roster.logs())
        for (const strength::TrainingSession &session : log.sessions)
            for (const strength::TrainingSet &set : session.sets) {
                EXPECT_GT(set.loadKg, 0.0);
                EXPECT_TRUE(set.reps > 0 || set.missed);
                EXPECT_FALSE(set.missed && set.rpe);
                EXPECT_LE(set.leadReps, set.reps);
                EXPECT_TRUE(!set.rpe || (*set.rpe >= 1.0 && *set.rpe <= 10.0));
            }
}

INSTANTIATE_TEST_SUITE_P(Truths, EveryTruth, testing::ValuesIn(truths().begin(), truths().end()),
    [](const auto &truth) { return std::string(truth.param.name); });

TEST(Seeds, TrainAndHeldOutAreApart)
{
    for (const auto seed : kTrainSeeds)
        EXPECT_THAT(kHeldOutSeeds, testing::Not(testing::Contains(seed)));
}
