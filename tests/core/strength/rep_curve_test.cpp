#include "core/strength/rep_curve.h"

#include "core/strength/roster_priors.h"

#include <gmock/gmock.h>

#include <cmath>

using namespace strength;

TEST(RepCurve, RepsAndShareAreInverse)
{
    for (const RepCurve curve : {RepCurve{0.04, 0.9}, RepCurve{0.03, 1.1}, RepCurve{0.05, 0.8}})
        for (double reps = 0.2; reps < 20.0; reps += 0.3)
            EXPECT_NEAR(curve.reps(curve.share(reps, 1.2), 1.2), reps, 1e-9);
}

TEST(RepCurve, ASingleIsTheMaxAndTheShareFallsWithTheReps)
{
    const RepCurve curve{0.04, 0.9};
    EXPECT_DOUBLE_EQ(curve.share(1.0), 1.0);
    for (double reps = 0.5; reps < 20.0; reps += 0.1)
        EXPECT_GT(curve.share(reps), curve.share(reps + 0.1));
    EXPECT_LT(curve.reps(1.02), 1.0); // heavier than the max: no rep
    EXPECT_EQ(curve.reps(1.5), 0.0);
}

TEST(RepCurve, DerivativesAgreeWithFiniteDifferences)
{
    constexpr double kStep = 1e-6;
    for (const double drop : {-0.05, 0.004, 0.05, 0.3})
        for (const double power : {0.8, 0.95, 1.1}) {
            const double kappa = 0.04;
            const RepsAt at = repsAt(drop, kappa, power);
            const auto difference = [](double above, double below) {
                return (above - below) / (2.0 * kStep);
            };
            EXPECT_NEAR(at.byDrop,
                difference(repsAt(drop + kStep, kappa, power).reps,
                    repsAt(drop - kStep, kappa, power).reps),
                1e-4);
            EXPECT_NEAR(at.byLnKappa,
                difference(repsAt(drop, kappa * std::exp(kStep), power).reps,
                    repsAt(drop, kappa * std::exp(-kStep), power).reps),
                1e-6);
            EXPECT_NEAR(at.byPower,
                difference(repsAt(drop, kappa, power + kStep).reps,
                    repsAt(drop, kappa, power - kStep).reps),
                1e-6);
        }
}

TEST(RepCurve, PriorRunsThroughTheHandbookChart)
{
    // Haff & Triplett eds., Essentials of Strength Training and Conditioning, 4th ed., 2016,
    // load-assignment chapter (from memory): reps and share of the max.
    constexpr std::pair<double, double> kChart[] = {{2, 0.95}, {3, 0.93}, {4, 0.90}, {5, 0.87},
        {6, 0.85}, {7, 0.83}, {8, 0.80}, {9, 0.77}, {10, 0.75}, {11, 0.70}, {12, 0.67}, {15, 0.65}};
    const RosterPriors priors = publishedPriors(std::vector<VariationPrior>{{1.0, 0.0, 1.0}});
    const auto curveAt = [&](double sds) {
        return RepCurve{std::exp(priors.lnKappa.mean + sds * priors.lnKappa.sd), priors.power.mean};
    };
    for (const auto &[reps, share] : kChart) {
        // The middle within 1.5 points up to ten reps; the 90 % of lifters hold the chart to 15.
        if (reps <= 10) {
            EXPECT_NEAR(curveAt(0.0).share(reps), share, 0.015) << reps << " reps";
        }
        EXPECT_GT(curveAt(-1.645).share(reps), share) << reps << " reps";
        EXPECT_LT(curveAt(1.645).share(reps), share) << reps << " reps";
    }
}
