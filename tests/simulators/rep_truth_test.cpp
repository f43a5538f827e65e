#include "tests/simulators/rep_truth.h"

#include <cmath>
#include <gmock/gmock.h>
#include <vector>

using namespace simulators;

namespace {

/// Share at which `reps` can be done, by bisection.
double shareFor(const RepTruth &truth, double reps)
{
    double low = 0.3;
    double high = 1.0;
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (truth(middle) > reps ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

const std::vector<RepTruth> kCurves{
    hyperbola(30, 1.0), hyperbola(40, 0.88), fallToFloor(0.5, 0.07), handbookChart(1.0, 1.0)};

} // namespace

TEST(RepTruth, OneRepAtTheMaxAndEverMoreBelowIt)
{
    for (const RepTruth &truth : kCurves) {
        EXPECT_NEAR(truth(1.0), 1.0, 1e-9);
        EXPECT_LT(truth(1.01), 1.0);
        EXPECT_GE(truth(2.0), 0.0);
        for (double share = 0.99; share > 0.4; share -= 0.01)
            EXPECT_GE(truth(share), truth(share + 0.01)) << share;
    }
}

TEST(RepTruth, HyperbolaWithoutBendIsALineInLoadPerReps)
{
    // Same family as Epley (1985): max = load (1 + (N - 1) / 30), here with one rep at the max.
    EXPECT_NEAR(hyperbola(30, 1.0)(1.0 / (1.0 + 4.0 / 30.0)), 5.0, 1e-9);
}

TEST(RepTruth, ChartGoesThroughItsRows)
{
    // Haff & Triplett (2016), load-assignment chapter: 5 reps at 87 %, 10 at 75 %.
    const RepTruth chart = handbookChart(1.0, 1.0);
    EXPECT_NEAR(chart(0.87), 5.0, 1e-9);
    EXPECT_NEAR(chart(0.75), 10.0, 1e-9);
}

TEST(RepTruth, StaysNearTheHandbookSpread)
{
    // Usual lifters: eight reps lie within 7 points of the chart's 80 %.
    for (const RepTruth &truth : kCurves)
        EXPECT_NEAR(shareFor(truth, 8.0), 0.80, 0.07);
}

TEST(RepTruth, NoneIsThePowerLawOfTheEngine)
{
    // ln(share) = -kappa (N - 1)^c is a straight line of ln(-ln share) on ln(N - 1). Through 2 and
    // 12 reps, the truths leave that line by more than a rounding error in between.
    for (const RepTruth &truth : kCurves) {
        const auto height = [&](double reps) { return std::log(-std::log(shareFor(truth, reps))); };
        const double slope = (height(12) - height(2)) / std::log(11.0);
        double worst = 0.0;
        for (int reps = 3; reps < 12; ++reps)
            worst =
                std::max(worst, std::abs(height(reps) - height(2) - slope * std::log(reps - 1.0)));
        EXPECT_GT(worst, 0.02);
    }
}
