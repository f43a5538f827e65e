#pragma once

#include "core/strength/state_belief.h"
#include "core/strength/training_log.h"

#include <vector>

namespace strength {

/// Where a lifter's own constants of a variation and of the bar's speed sit; -1 = not met yet, and
/// then the prior's mean stands.
struct OwnSlots
{
    std::vector<int> lnRatio;   ///< a row of the variation table
    std::vector<int> lnRepCost; ///< a row of the variation table
    int speedShift = -1;
    int speedStretch = -1;
};

/// A scalar that the model expects of a set, with its gradient by the state.
struct Expectation
{
    double value = 0.0;
    Gradient gradient;
    double byCap = 0.0; ///< derivative by ln of the momentary max
};

/// Computes what the model expects at one point of the state.
struct SetModel
{
    const Eigen::VectorXd &state;
    const OwnSlots &slots;
    const RosterPriors &priors;

    /// Reps that could be done in all in the set, lead reps included, after `hardBefore` hard sets.
    [[nodiscard]] Expectation possibleReps(const TrainingSet &set, double hardBefore) const;
    /// Mean velocity of the fastest rep, m/s.
    [[nodiscard]] Expectation speed(const TrainingSet &set, double hardBefore) const;
    /// Reps that the lifter says are left where `left` are, with its gradient.
    [[nodiscard]] Expectation saidReserve(const Expectation &left) const;

private:
    [[nodiscard]] double lnDrop(int variation, double loadKg, double hardBefore) const;
    [[nodiscard]] Expectation repsIn(int variation, double loadKg, double hardBefore) const;
    void addCap(Gradient &gradient, int variation, double hardBefore, double byCap) const;
};

} // namespace strength
