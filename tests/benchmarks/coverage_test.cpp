#include "tests/benchmarks/coverage.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace benchmarks;

// Guards the coverage on few rosters of the train seeds; what is reported comes from many of the
// held-out ones, by the program `coverage_report`. The bounds leave room for the luck of a few.

TEST(Coverage, OfTheTouchHold)
{
    for (const Coverage &coverage : touchCoverage(kCoverageTrain, 4, 20)) {
        EXPECT_GT(coverage.percent(), 82.0) << coverage.world;
        EXPECT_LT(coverage.percent(), 98.0) << coverage.world;
        EXPECT_LT(std::abs(coverage.bias / coverage.judged), 0.004) << coverage.world;
        EXPECT_LT(coverage.silent, coverage.judged / 4) << coverage.world;
    }
}

TEST(Coverage, OfWhatCarriedOver)
{
    for (const Coverage &coverage : carryCoverage(kCoverageTrain, 30, 24)) {
        EXPECT_GT(coverage.percent(), 80.0) << coverage.world;
        EXPECT_LT(std::abs(coverage.bias / coverage.judged), 0.0015) << coverage.world;
    }
}

TEST(Coverage, OfReadiness)
{
    for (const Coverage &coverage : readinessCoverage(kCoverageTrain, 6, 24)) {
        EXPECT_GT(coverage.percent(), 80.0) << coverage.world;
        EXPECT_LT(std::abs(coverage.bias / coverage.judged), 0.003) << coverage.world;
    }
}
