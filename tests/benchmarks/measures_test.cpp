#include "tests/benchmarks/measures.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace benchmarks;

TEST(Measures, ErrorsAreInPerCentOfTheTruth)
{
    const Measures m = measure({{0, 102.0, 100.0, 0.0}, {1, 196.0, 200.0, 0.0}});
    EXPECT_EQ(m.count, 2);
    EXPECT_NEAR(m.rmse, 2.0, 1e-12);
    EXPECT_NEAR(m.bias, 0.0, 1e-12);
    EXPECT_NEAR(m.crps, 2.0, 1e-12) << "a bare number is scored by its absolute error";
    EXPECT_TRUE(std::isnan(m.coverage90));
}

TEST(Measures, WorstDecileIsTheLifterWhomNineTenthsBeat)
{
    std::vector<Judged> judged;
    for (int lifter = 0; lifter < 10; ++lifter)
        judged.push_back({lifter, 101.0 + lifter, 100.0, 0.0});
    EXPECT_NEAR(measure(judged).worstDecile, 9.0, 1e-9);
}

TEST(Measures, CoverageCountsTruthsInTheInterval)
{
    // 90 % half width of an SD of 0.02 is 0.0329 in ln units.
    const Measures m = measure({{0, 100.0, 103.0, 0.02}, {0, 100.0, 104.0, 0.02}});
    EXPECT_NEAR(m.coverage90, 50.0, 1e-12);
}

TEST(Measures, NothingJudgedIsNotAPerfectScore)
{
    EXPECT_TRUE(std::isnan(measure({}).rmse));
}

TEST(Crps, OfTheStandardNormalAtItsMean)
{
    // Gneiting & Raftery (2007), eq. 21 at z = 0: (sqrt 2 - 1) / sqrt(pi) = 0.233695.
    EXPECT_NEAR(crpsNormal(0.0, 1.0), (std::sqrt(2.0) - 1.0) / std::sqrt(M_PI), 1e-12);
}

TEST(Crps, TendsToTheAbsoluteError)
{
    EXPECT_DOUBLE_EQ(crpsNormal(-3.0, 0.0), 3.0);
    EXPECT_NEAR(crpsNormal(-3.0, 1e-6), 3.0, 1e-5);
}

TEST(Crps, SumsTheSquaredDistanceOfTheDistributions)
{
    // The definition, by the trapezoid rule: integral of (F(x) - [x >= error])^2.
    const double error = 0.7;
    const double sd = 1.3;
    double sum = 0.0;
    for (double x = -15.0; x < 15.0; x += 1e-3) {
        const double below = 0.5 * std::erfc(-x / sd / std::sqrt(2.0));
        sum += 1e-3 * std::pow(below - (x >= error ? 1.0 : 0.0), 2.0);
    }
    EXPECT_NEAR(crpsNormal(error, sd), sum, 1e-3);
}

TEST(Bands, SdOfABandIsThatOfItsNormal)
{
    EXPECT_NEAR(sdOfBand(100.0 * std::exp(-1.6448536 * 0.03), 100.0 * std::exp(1.6448536 * 0.03)),
        0.03, 1e-9);
}
