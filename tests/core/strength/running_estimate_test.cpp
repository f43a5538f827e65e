#include "core/strength/running_estimate.h"

#include "tests/core/strength/training_samples.h"

#include <gmock/gmock.h>

using namespace samples;
using namespace strength;

TEST(RunningEstimate, SetBySetIsTheWholeLogAtOnce)
{
    const RosterPriors priors = publishedPriors(kVariations);
    const LifterLog log = steadyLog(10);
    LifterLog known = log;
    known.sessions.resize(12);
    RunningEstimate running(known, priors);
    for (size_t i = known.sessions.size(); i < log.sessions.size(); ++i)
        for (const TrainingSet &set : log.sessions[i].sets)
            running.add(log.sessions[i].day, set);
    const Band whole = estimateLifter(log, kVariations).weeks.back().filtered;
    EXPECT_NEAR(running.max()->kg, whole.kg, 1e-9);
    EXPECT_NEAR(running.max()->low90, whole.low90, 1e-9);
}

TEST(RunningEstimate, ASetGoesOnWithTheLastSessionOfTheLog)
{
    const RosterPriors priors = publishedPriors(kVariations);
    LifterLog log = steadyLog(4);
    RunningEstimate running(log, priors);
    running.add(log.sessions.back().day, rated(95, 1, 9));
    log.sessions.back().sets.push_back(rated(95, 1, 9));
    EXPECT_NEAR(running.max()->kg, estimateLifter(log, kVariations).weeks.back().filtered.kg, 1e-9);
}

TEST(RunningEstimate, StartsFromNothingAndRefusesWhatIsLate)
{
    RunningEstimate running({}, publishedPriors(kVariations));
    EXPECT_FALSE(running.max());
    running.add(100, rated(80, 5, 8));
    ASSERT_TRUE(running.max());
    EXPECT_THROW(running.add(99, rated(80, 5, 8)), std::invalid_argument);
    EXPECT_THROW(running.add(100, rated(-1, 5, 8)), std::invalid_argument);
    EXPECT_THROW(running.add(100, rated(80, 5, 8, 3)), std::invalid_argument);
}
