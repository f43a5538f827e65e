#include "tests/simulators/set_capacity.h"

#include <algorithm>

namespace simulators {

double Capacity::in(int variation, double share) const
{
    const VariationTruth &own = variations[size_t(variation)];
    const double possible = reps(share / own.ratio);
    return possible > 1.0 ? 1.0 + (possible - 1.0) / own.repCost : possible;
}

double Capacity::of(const strength::TrainingSet &set, double share) const
{
    const double possible = in(set.variation, share);
    if (set.leadReps == 0)
        return possible;
    const double inLead = in(set.leadVariation, share);
    const double spent = std::min(set.leadReps / std::max(inLead, 0.5), 1.0);
    return std::min(inLead, double(set.leadReps)) + possible * (1.0 - spent);
}

} // namespace simulators
