#include "core/strength/score.h"

#include <cmath>
#include <gmock/gmock.h>
#include <limits>

using namespace strength;

namespace {

SetForecast forecast(double missChance, bool missed)
{
    SetForecast one;
    one.missChance = missChance;
    one.missed = missed;
    return one;
}

SetForecast rated(double expectedRir, double saidRir, double usualRir)
{
    SetForecast one;
    one.rir = expectedRir;
    one.saidRir = saidRir;
    one.usualRir = usualRir;
    return one;
}

} // namespace

TEST(Score, BrierIsTheMeanSquareOfChanceAgainstOutcome)
{
    // By hand: (0.1^2 + 0.3^2 + (0.8 - 1)^2 + (0.2 - 1)^2) / 4 = (0.01 + 0.09 + 0.04 + 0.64) / 4.
    const std::vector<SetForecast> forecasts{
        forecast(0.1, false), forecast(0.3, false), forecast(0.8, true), forecast(0.2, true)};
    const Score result = score(forecasts);
    EXPECT_NEAR(result.brier, 0.195, 1e-12);
    EXPECT_NEAR(result.baseBrier, 0.25, 1e-12) << "half are missed: 0.5 (1 - 0.5)";
    EXPECT_EQ(result.sets, 4);
    EXPECT_EQ(result.missed, 2);
}

TEST(Score, CertainAndRightIsZeroCertainAndWrongIsOne)
{
    EXPECT_EQ(score(std::vector{forecast(1.0, true), forecast(0.0, false)}).brier, 0.0);
    EXPECT_EQ(score(std::vector{forecast(1.0, false), forecast(0.0, true)}).brier, 1.0);
}

TEST(Score, RirErrorIsTheMeanDistanceFromWhatWasSaid)
{
    const Score result =
        score(std::vector{rated(2.0, 3.0, 2.0), rated(1.5, 1.0, 2.0), forecast(0.5, false)});
    EXPECT_EQ(result.rated, 2);
    EXPECT_NEAR(result.rirError, 0.75, 1e-12);
    EXPECT_NEAR(result.rirBias, 0.25, 1e-12);
    EXPECT_NEAR(result.usualError, 1.0, 1e-12);
}

TEST(Score, ReliabilityRowsHoldEveryForecastOnce)
{
    const Score result = score(std::vector{forecast(0.0, false), forecast(0.12, false),
        forecast(0.18, true), forecast(0.2, false), forecast(1.0, true)});
    ASSERT_EQ(result.reliability.size(), 4u);
    EXPECT_EQ(result.reliability[0].from, 0.0);
    EXPECT_EQ(result.reliability[1].from, 0.1);
    EXPECT_EQ(result.reliability[1].sets, 2);
    EXPECT_NEAR(result.reliability[1].meanChance, 0.15, 1e-12);
    EXPECT_NEAR(result.reliability[1].observed, 0.5, 1e-12);
    EXPECT_EQ(result.reliability[2].from, 0.2) << "a chance on an edge opens the upper row";
    EXPECT_EQ(result.reliability[3].to, 1.0);
    EXPECT_EQ(result.reliability[3].observed, 1.0);
}

TEST(Score, NothingForecastIsNotPerfect)
{
    const Score nothing = score({});
    EXPECT_TRUE(std::isnan(nothing.brier));
    EXPECT_TRUE(std::isnan(nothing.baseBrier));
    EXPECT_TRUE(std::isnan(nothing.rirError));
    EXPECT_TRUE(nothing.reliability.empty());
}

TEST(Score, RefusesWhatIsNoForecast)
{
    EXPECT_THROW(score(std::vector{forecast(1.1, false)}), std::invalid_argument);
    EXPECT_THROW(score(std::vector{forecast(NAN, false)}), std::invalid_argument);
    EXPECT_THROW(score(std::vector{rated(INFINITY, 1.0, 2.0)}), std::invalid_argument);
}

TEST(Score, RowsRunFromEdgeToEdgeAndTheLastTakesItsEnd)
{
    const double edges[] = {0.0, 0.01, 0.02, 0.05, 0.1, 0.2, 0.4, 0.6, 0.8};
    std::vector<SetForecast> forecasts;
    for (const double chance : edges) {
        SetForecast forecast;
        forecast.missChance = chance;
        forecasts.push_back(forecast);
    }
    const Score found = score(forecasts);
    ASSERT_EQ(found.reliability.size(), std::size(edges));
    for (size_t i = 0; i < std::size(edges); ++i) {
        EXPECT_EQ(found.reliability[i].from, edges[i]);
        EXPECT_EQ(found.reliability[i].meanChance, edges[i]);
        EXPECT_EQ(found.reliability[i].sets, 1);
        EXPECT_EQ(found.reliability[i].to, i + 1 < std::size(edges) ? edges[i + 1] : 1.0);
    }
    SetForecast sure;
    sure.missChance = 1.0;
    EXPECT_EQ(score({&sure, 1}).reliability[0].from, 0.8);
    sure.missChance = 1.01;
    EXPECT_THROW((void)score({&sure, 1}), std::invalid_argument);
    sure.missChance = -0.01;
    EXPECT_THROW((void)score({&sure, 1}), std::invalid_argument);
}
