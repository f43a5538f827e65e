#include "core/strength/set_expectation.h"

#include "core/strength/load_velocity.h"

#include <gmock/gmock.h>

#include <cmath>
#include <functional>

using namespace strength;

namespace {

const std::vector<VariationPrior> kExpected{{1.0, 0.0, 1.0}, {0.95, 0.03, 1.0}, {0.92, 0.04, 1.2}};

/// A lifter with a max of about 100 kg whose constants are all off their priors.
struct Fixture
{
    RosterPriors priors = publishedPriors(kExpected);
    OwnSlots slots;
    Eigen::VectorXd state = Eigen::VectorXd::Zero(firstOwnSlot + 6);

    Fixture()
    {
        slots.lnRatio = {-1, firstOwnSlot, firstOwnSlot + 1};
        slots.lnRepCost = {-1, firstOwnSlot + 2, firstOwnSlot + 3};
        slots.speedShift = firstOwnSlot + 4;
        slots.speedStretch = firstOwnSlot + 5;
        state.head(int(firstOwnSlot)) << std::log(102.0), 0.002, -0.01, 0.3, 0.01, std::log(0.037),
            0.93, 0.85, 0.004, 3.0;
        state.tail(6) << std::log(0.94), std::log(0.9), 0.05, 0.1, 0.02, 1.05;
    }
    SetModel model() const { return {state, slots, priors}; }

    /// Compares the gradient of `what` with central differences in every slot.
    void expectGradient(const std::function<Expectation(const SetModel &)> &what)
    {
        const Expectation at = what(model());
        Eigen::VectorXd gradient = Eigen::VectorXd::Zero(state.size());
        for (int k = 0; k < at.gradient.size; ++k)
            gradient[at.gradient.slot[size_t(k)]] += at.gradient.value[size_t(k)];
        constexpr double kStep = 1e-6;
        for (int slot = 0; slot < int(state.size()); ++slot) {
            const double here = state[slot];
            state[slot] = here + kStep;
            const double above = what(model()).value;
            state[slot] = here - kStep;
            const double below = what(model()).value;
            state[slot] = here;
            EXPECT_NEAR(gradient[slot], (above - below) / (2.0 * kStep), 1e-4) << "slot " << slot;
        }
        EXPECT_NEAR(at.byCap, gradient[dayForm], 1e-12);
    }
};

TrainingSet setOf(int variation, double loadKg, int reps)
{
    TrainingSet set;
    set.variation = variation;
    set.loadKg = loadKg;
    set.reps = reps;
    return set;
}

} // namespace

TEST(SetModel, GradientsAgreeWithFiniteDifferences)
{
    Fixture lifter;
    TrainingSet lead = setOf(0, 80.0, 5);
    lead.leadVariation = 2;
    lead.leadReps = 2;
    for (const TrainingSet &set :
        {setOf(0, 85.0, 4), setOf(1, 70.0, 6), setOf(0, 103.0, 1), setOf(2, 101.0, 1), lead}) {
        lifter.expectGradient([&](const SetModel &model) { return model.possibleReps(set, 2.5); });
        lifter.expectGradient([&](const SetModel &model) { return model.speed(set, 2.5); });
        lifter.expectGradient([&](const SetModel &model) {
            Expectation left = model.possibleReps(set, 2.5);
            left.value -= set.reps;
            return model.saidReserve(left);
        });
    }
}

TEST(SetModel, LeadRepsInTheSameLiftChangeNothing)
{
    const Fixture lifter;
    TrainingSet lead = setOf(2, 75.0, 5);
    lead.leadVariation = 2;
    lead.leadReps = 1;
    EXPECT_NEAR(lifter.model().possibleReps(lead, 0.0).value,
        lifter.model().possibleReps(setOf(2, 75.0, 5), 0.0).value, 1e-9);
    // A harder lead variation leaves fewer reps than none would, more than it alone would.
    lead.variation = 0;
    const double mixed = lifter.model().possibleReps(lead, 0.0).value;
    EXPECT_LT(mixed, lifter.model().possibleReps(setOf(0, 75.0, 5), 0.0).value);
    EXPECT_GT(mixed, lifter.model().possibleReps(setOf(2, 75.0, 5), 0.0).value);
}

TEST(LoadVelocity, ThePublishedLineAndItsInverse)
{
    // Gonzalez-Badillo & Sanchez-Medina (2010): worked from the published coefficients.
    constexpr std::pair<double, double> kLine[] = {
        {0.17, 1.0008}, {0.30, 0.9104}, {0.50, 0.7769}, {0.70, 0.6501}, {1.00, 0.4726}};
    for (const auto &[speed, share] : kLine) {
        const double published = ((8.4326 * speed - 73.501) * speed + 112.33) / 100.0;
        EXPECT_NEAR(published, share, 1e-4);
        EXPECT_NEAR(publishedSpeed(published).speed, speed, 1e-9);
    }
    EXPECT_NEAR(publishedSpeed(1.0).speed, kSpeedAtMax, 1e-7);
    EXPECT_EQ(publishedSpeed(1.5).byShare, 0.0);
    EXPECT_EQ(publishedSpeed(1.5).speed, publishedSpeed(1.2).speed);
}

TEST(SetModel, ThePowerOfACurveIsHalfAtTheLeast)
{
    Fixture lifter;
    const auto reps = [&lifter](double value) {
        lifter.state[power] = value;
        return lifter.model().possibleReps(setOf(0, 80.0, 5), 0.0).value;
    };
    EXPECT_EQ(reps(0.2), reps(0.5));
    EXPECT_NE(reps(0.51), reps(0.5));
}

TEST(SetModel, LeadRepsThatUseUpTheirVariationLeaveNothing)
{
    // So heavy that no rep of the lead variation is possible; two were done all the same.
    const Fixture lifter;
    TrainingSet lead = setOf(0, 130.0, 3);
    lead.leadVariation = 2;
    lead.leadReps = 2;
    const Expectation possible = lifter.model().possibleReps(lead, 0.0);
    EXPECT_DOUBLE_EQ(possible.value, 2.0);
    EXPECT_EQ(possible.byCap, 0.0) << "no load is told";
}

TEST(SetModel, UpToOneRepLeftIsSaidInFull)
{
    const Fixture lifter; // compression 0.85, bias 0.3
    const auto said = [&lifter](double left) {
        Expectation reserve;
        reserve.value = left;
        return lifter.model().saidReserve(reserve).value;
    };
    EXPECT_DOUBLE_EQ(said(0.5), 0.5 + 0.3);
    EXPECT_DOUBLE_EQ(said(1.0), 1.0 + 0.3);
    EXPECT_DOUBLE_EQ(said(3.0), 1.0 + 0.85 * 2.0 + 0.3);
}
