#include "core/strength/set_expectation.h"

#include "core/strength/load_velocity.h"
#include "core/strength/rep_curve.h"

#include <algorithm>
#include <cmath>

namespace strength {

namespace {

double valueOr(const Eigen::VectorXd &state, int slot, double otherwise)
{
    return slot < 0 ? otherwise : state[slot];
}

} // namespace

double SetModel::lnDrop(int variation, double loadKg, double hardBefore) const
{
    const size_t v = size_t(variation);
    const double ratio = valueOr(state, slots.lnRatio[v], priors.lnRatio[v].mean);
    return lnMax(state) + state[dayForm] + ratio - state[fatigue] * hardBefore - std::log(loadKg);
}

void SetModel::addCap(Gradient &gradient, int variation, double hardBefore, double byCap) const
{
    gradient.add(level, byCap);
    gradient.add(layoff, byCap);
    gradient.add(dayForm, byCap);
    gradient.add(fatigue, -hardBefore * byCap);
    if (const int slot = slots.lnRatio[size_t(variation)]; slot >= 0)
        gradient.add(slot, byCap);
}

Expectation SetModel::repsIn(int variation, double loadKg, double hardBefore) const
{
    const size_t v = size_t(variation);
    const double repCost = valueOr(state, slots.lnRepCost[v], priors.lnRepCost[v].mean);
    const RepsAt at = repsAt(lnDrop(variation, loadKg, hardBefore),
        std::exp(state[lnKappa] + repCost), std::max(state[power], 0.5));
    Expectation expectation{at.reps, {}, at.byDrop};
    addCap(expectation.gradient, variation, hardBefore, at.byDrop);
    expectation.gradient.add(lnKappa, at.byLnKappa);
    expectation.gradient.add(power, at.byPower);
    if (const int slot = slots.lnRepCost[v]; slot >= 0)
        expectation.gradient.add(slot, at.byLnKappa);
    return expectation;
}

Expectation SetModel::possibleReps(const TrainingSet &set, double hardBefore) const
{
    Expectation main = repsIn(set.variation, set.loadKg, hardBefore);
    if (set.leadReps == 0)
        return main;
    // The lead reps use up their share of what the lead variation alone would allow; the rest of
    // the set has the rest of what its own variation would.
    const Expectation lead = repsIn(set.leadVariation, set.loadKg, hardBefore);
    if (lead.value <= set.leadReps)
        return {double(set.leadReps), {}, 0.0}; // all of it, and so the set tells of no load
    const double spent = set.leadReps / lead.value;
    const double byLead = main.value * spent / lead.value;
    Expectation sum{set.leadReps + main.value * (1.0 - spent), main.gradient,
        main.byCap * (1.0 - spent) + lead.byCap * byLead};
    sum.gradient.scale(1.0 - spent);
    sum.gradient.addScaled(lead.gradient, byLead);
    return sum;
}

Expectation SetModel::saidReserve(const Expectation &left) const
{
    Expectation said = left;
    const double beyondFirst = std::max(left.value - 1.0, 0.0);
    if (beyondFirst > 0.0) {
        said.value = 1.0 + state[compression] * beyondFirst;
        said.gradient.scale(state[compression]);
        said.gradient.add(compression, beyondFirst);
        said.byCap *= state[compression];
    }
    said.value += state[ratingBias];
    said.gradient.add(ratingBias, 1.0);
    return said;
}

Expectation SetModel::speed(const TrainingSet &set, double hardBefore) const
{
    const double share = std::exp(-lnDrop(set.variation, set.loadKg, hardBefore));
    const SpeedAt line = publishedSpeed(share);
    const double stretch = valueOr(state, slots.speedStretch, priors.speedStretch.mean);
    const double beyondMax = line.speed - kSpeedAtMax;
    Expectation expectation;
    expectation.value = kSpeedAtMax + valueOr(state, slots.speedShift, priors.speedShift.mean)
        + stretch * beyondMax;
    expectation.byCap = -stretch * line.byShare * share;
    addCap(expectation.gradient, set.variation, hardBefore, expectation.byCap);
    if (slots.speedShift >= 0)
        expectation.gradient.add(slots.speedShift, 1.0);
    if (slots.speedStretch >= 0)
        expectation.gradient.add(slots.speedStretch, beyondMax);
    return expectation;
}

} // namespace strength
