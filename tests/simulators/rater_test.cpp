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
