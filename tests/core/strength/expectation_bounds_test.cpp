#include "core/strength/load_velocity.h"
#include "core/strength/moments.h"
#include "core/strength/rep_curve.h"
#include "core/strength/set_readings.h"
#include "tests/core/strength/training_samples.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

// Edges of what a set is expected to show and of what a reading says.

using namespace samples;
using namespace strength;

TEST(RepCurveBounds, NoRepIsTheLeastThatIsAskedFor)
{
    const RepCurve curve{0.04, 0.9};
    // Straight near and above the max: a rep is worth kappa x 0.25^(1 - 1 / power) there.
    const double rep = 0.04 * std::pow(0.25, 1.0 - 1.0 / 0.9);
    EXPECT_NEAR(curve.share(0.0), std::exp(rep), 1e-12);
    EXPECT_NEAR(curve.share(0.05), std::exp(0.95 * rep), 1e-12);
    EXPECT_EQ(curve.share(-2.0), curve.share(0.0));
    EXPECT_NEAR(curve.reps(curve.share(0.05)), 0.05, 1e-9);
}

TEST(RepCurveBounds, TheStraightPartEndsAtAQuarterOfKappa)
{
    // There the curve itself begins: 1 + q^(1 / power) and its derivative.
    const RepsAt at = repsAt(0.125, 0.5, 0.8);
    const double beyond = std::pow(0.25, 1.25);
    EXPECT_DOUBLE_EQ(at.reps, 1.0 + beyond);
    EXPECT_DOUBLE_EQ(at.byDrop, beyond / (0.8 * 0.125));
    const RepsAt below = repsAt(0.1249, 0.5, 0.8);
    EXPECT_NEAR(below.byDrop, beyond / 0.125, 1e-12) << "the chord from the max";
}

TEST(LoadVelocityBounds, TheLineEndsATenthAboveTheMax)
{
    const auto share = [](double v) { return ((8.4326 * v - 73.501) * v + 112.33) / 100.0; };
    EXPECT_NEAR(share(publishedSpeed(1.09).speed), 1.09, 1e-12);
    EXPECT_NEAR(share(publishedSpeed(1.1).speed), 1.1, 1e-12);
    EXPECT_EQ(publishedSpeed(1.11).speed, publishedSpeed(1.1).speed);
    EXPECT_LT(publishedSpeed(1.1).byShare, 0.0);
    EXPECT_EQ(publishedSpeed(1.1001).byShare, 0.0);
    EXPECT_NEAR(share(publishedSpeed(0.02).speed), 0.02, 1e-12);
    EXPECT_EQ(SpeedAt{}.speed, 0.0);
}

namespace {

/// The prior's lifter with a max of 100 kg and constants of their own in all variations.
struct Own
{
    RosterPriors priors = publishedPriors(kVariations);
    OwnSlots slots{
        {-1, firstOwnSlot, firstOwnSlot + 1}, {-1, firstOwnSlot + 2, firstOwnSlot + 3}, -1, -1};
    Eigen::VectorXd state;

    Own()
    {
        StateBelief belief(
            ChainVector(std::log(100.0), 0.0, 0.0, 0.0), ChainVector::Ones(), priors);
        for (const Prior &prior :
            {priors.lnRatio[1], priors.lnRatio[2], priors.lnRepCost[1], priors.lnRepCost[2]})
            belief.append(prior);
        state = belief.mean();
    }
    SetModel model() const { return {state, slots, priors}; }
};

TrainingSet withLead(double loadKg, int leadReps, int reps)
{
    TrainingSet set = rated(loadKg, reps, 8, 2);
    set.leadVariation = 1;
    set.leadReps = leadReps;
    return set;
}

} // namespace

TEST(SetModelBounds, LeadRepsTakeTheirShareOfWhatTheirVariationAllows)
{
    const Own lifter;
    const auto reps = [&lifter](const TrainingSet &set) {
        return lifter.model().possibleReps(set, 0.0).value;
    };
    const double alone = reps(rated(80, 1, 8, 2));
    TrainingSet leading = rated(80, 1, 8, 1);
    const double allowed = reps(leading);
    for (const int lead : {1, 2, 3})
        EXPECT_NEAR(reps(withLead(80, lead, 5)), lead + alone * (1.0 - lead / allowed), 1e-9);
    // One rep is possible and one was led with: nothing is left.
    const double single = 100.0 * 0.95;
    EXPECT_DOUBLE_EQ(reps(withLead(single + 0.01, 1, 3)), 1.0);
    EXPECT_GT(reps(withLead(single - 0.5, 1, 3)), 1.0);
}

TEST(SetModelBounds, ARatingBehindLeadRepsFeelsEverySlotThatAGradientHolds)
{
    const Own lifter;
    const Expectation possible = lifter.model().possibleReps(withLead(70, 2, 4), 1.0);
    EXPECT_EQ(lifter.model().saidReserve(possible).gradient.size, Gradient::kMost);
}

TEST(SetModelBounds, CompressionBeginsRightBeyondTheFirstRep)
{
    const Own lifter;
    Expectation left;
    left.value = 1.05;
    EXPECT_DOUBLE_EQ(lifter.model().saidReserve(left).value, 1.0 + 0.88 * 0.05);
}

TEST(StateBeliefBounds, AWeeksStepForgetsTheFormOfTheDay)
{
    StateBelief belief(
        ChainVector(4.6, 0.0, 0.0, 0.0), ChainVector::Ones(), publishedPriors(kVariations));
    belief.startSession(0.01);
    EXPECT_EQ(belief.covariance()(dayForm, dayForm), 0.01);
    belief.advance({});
    EXPECT_EQ(belief.mean()[dayForm], 0.0);
    EXPECT_EQ(belief.covariance()(dayForm, dayForm), 0.0);
}

TEST(StateBeliefBounds, ALevelThatStartsAnewHasNoTrendAndNoTies)
{
    StateBelief belief(ChainVector(4.6, 0.01, -0.05, 0.2), ChainVector(0.1, 0.02, 0.03, 0.4),
        publishedPriors(kVariations));
    Gradient gradient;
    for (const int slot : {int(level), int(slope), int(layoff)})
        gradient.add(slot, 1.0);
    Eigen::VectorXd cross;
    belief.covarianceWith(gradient, cross);
    belief.update(cross, readPoint(4.5, 0.01, 4.56, belief.varianceOf(gradient), Gross{}));
    const double lost = belief.mean()[layoff];
    const double trendVariance = belief.covariance()(slope, slope);
    belief.restartLevel(5.0, 0.15);
    EXPECT_DOUBLE_EQ(lnMax(belief.mean()), 5.0);
    EXPECT_EQ(belief.mean()[layoff], lost);
    EXPECT_EQ(belief.mean()[slope], 0.0);
    EXPECT_DOUBLE_EQ(belief.covariance()(level, level), 0.15 * 0.15);
    EXPECT_EQ(belief.covariance()(slope, slope), trendVariance);
    EXPECT_EQ(belief.covariance()(level, slope), 0.0);
    EXPECT_EQ(belief.covariance()(level, layoff), 0.0);
    EXPECT_NE(belief.covariance()(layoff, layoff), 0.0);
}

TEST(MomentsBounds, AnIntervalThatIsHitOnceInABillionBillionsIsStillRead)
{
    // From a chance of 1e-12 down the quotients lose their digits; then nothing is said.
    const auto inlier = [](double chance) {
        double low = 5.0, high = 9.0; // SDs, the upper tail by halves
        for (int half = 0; half < 100; ++half) {
            const double middle = 0.5 * (low + high);
            (0.5 * std::erfc(middle / std::numbers::sqrt2) > chance ? low : high) = middle;
        }
        return readInterval(low, 1e9, 0.5, 0.0, 0.5, Gross{}).inlier;
    };
    EXPECT_EQ(inlier(1.05e-12), 1.0);
    EXPECT_EQ(inlier(0.95e-12), 0.0);
}

TEST(MomentsBounds, ASmallSurpriseIsOneToo)
{
    EXPECT_DOUBLE_EQ(readInterval(0.05, 2.0, 0.5, 0.0, 0.5, Gross{}).surprise, 0.05);
    EXPECT_DOUBLE_EQ(readInterval(-2.0, -0.05, 0.5, 0.0, 0.5, Gross{}).surprise, -0.05);
    EXPECT_EQ(readInterval(-0.05, 0.05, 0.5, 0.0, 0.5, Gross{}).surprise, 0.0);
}

TEST(MomentsBounds, WhereTheGrossPartHasNoDensityEvenAFarReadingIsSound)
{
    const Moments far = readPoint(30.0, 0.5, 0.0, 0.5, {0.02, 0.0});
    EXPECT_EQ(far.inlier, 1.0);
    EXPECT_NEAR(far.shift, 30.0, 1e-9);
}

TEST(IntervalBounds, NinetyPerCentLieWithinTheZOfTheTables)
{
    EXPECT_NEAR(std::erf(kZ90 / std::numbers::sqrt2), 0.9, 1e-15);
    const Interval plain = intervalOf(2.0, 0.5);
    EXPECT_DOUBLE_EQ(plain.low90, 2.0 - kZ90 * 0.5);
    EXPECT_DOUBLE_EQ(plain.high90, 2.0 + kZ90 * 0.5);
    const Band band = bandOf(std::log(100.0), 0.02);
    EXPECT_NEAR(sdOfLn(band.low90, band.high90), 0.02, 1e-14);
    const Interval factor = factorOf(0.01, 0.02);
    EXPECT_NEAR(sdOfLn(factor.low90, factor.high90), 0.02, 1e-14);
    EXPECT_EQ(Band{}, (Band{0.0, 0.0, 0.0}));
    EXPECT_EQ(Interval{}, (Interval{0.0, 0.0, 0.0}));
}
