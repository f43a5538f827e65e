#include "tests/simulators/rater.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace simulators;

namespace {

struct Sayings
{
    double meanRir = 0.0;
    double rated = 0.0; ///< share
};

Sayings ask(const RaterTraits &traits, double reserve)
{
    const Rater rater(traits);
    Random random(42);
    Sayings sayings;
    int rated = 0;
    const int asked = 20000;
    for (int i = 0; i < asked; ++i)
        if (const auto rpe = rater.rate(reserve, random)) {
            ++rated;
            sayings.meanRir += 10.0 - *rpe;
            EXPECT_GE(*rpe, traits.lowest);
            EXPECT_LE(*rpe, 10.0);
            EXPECT_EQ(*rpe * 2.0, std::round(*rpe * 2.0));
        }
    sayings.meanRir /= rated;
    sayings.rated = double(rated) / asked;
    return sayings;
}

} // namespace

TEST(Rater, BiasIsInWhatIsSaid)
{
    RaterTraits traits;
    traits.bias = 0.5;
    EXPECT_NEAR(ask(traits, 1.0).meanRir, 1.5, 0.03);
    traits.bias = -0.5;
    EXPECT_NEAR(ask(traits, 2.0).meanRir, 1.0 + 0.9 - 0.5, 0.03);
}

TEST(Rater, FarFromFailureIsCompressedAndGoesMissing)
{
    RaterTraits traits;
    traits.compression = 0.8;
    EXPECT_LT(ask(traits, 4.0).meanRir, 3.7);
    EXPECT_NEAR(ask(traits, 0.0).rated, 0.95, 0.01);
    EXPECT_NEAR(ask(traits, 4.0).rated, 0.75, 0.02);
}

TEST(Rater, BiasDriftsByItsYearlySpread)
{
    RaterTraits traits;
    traits.biasDrift = 0.4;
    Random random(7);
    double sumOfSquares = 0.0;
    for (int i = 0; i < 2000; ++i) {
        Rater rater(traits);
        for (int week = 0; week < 52; ++week)
            rater.passWeek(random);
        sumOfSquares += rater.bias() * rater.bias();
    }
    EXPECT_NEAR(std::sqrt(sumOfSquares / 2000), 0.4, 0.03);
}

TEST(Rater, ChancesOfAllSayingsAddUpAndAreWhatIsSaid)
{
    RaterTraits traits;
    traits.bias = 0.3;
    const Rater rater(traits);
    for (const double reserve : {0.0, 0.4, 2.0, 6.0}) {
        double sum = rater.chanceOf(std::nullopt, reserve);
        double mean = 0.0;
        for (double rpe = traits.lowest; rpe <= 10.0; rpe += 0.5) {
            sum += rater.chanceOf(rpe, reserve);
            mean += rpe * rater.chanceOf(rpe, reserve);
        }
        EXPECT_NEAR(sum, 1.0, 1e-12);
        const Sayings said = ask(traits, reserve);
        EXPECT_NEAR(10.0 - mean / said.rated, said.meanRir, 0.05);
    }
}
