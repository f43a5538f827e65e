#pragma once

#include "core/strength/training_log.h"
#include "tests/simulators/bench_variations.h"
#include "tests/simulators/rep_truth.h"

#include <vector>

namespace simulators {

/// What a lifter can do with a load.
struct Capacity
{
    RepTruth reps;                          ///< in the competition lift
    std::vector<VariationTruth> variations; ///< one a row of the variation table

    /// Reps possible in a variation at a share of the competition max of the moment.
    [[nodiscard]] double in(int variation, double share) const;
    /// Reps possible in a set, lead reps included: these use up their part of what the lead
    /// variation would have allowed. Only the variations and lead reps of `set` are looked at.
    [[nodiscard]] double of(const strength::TrainingSet &set, double share) const;
};

} // namespace simulators
