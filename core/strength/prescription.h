#pragma once

#include "core/strength/estimator.h"
#include "core/strength/hard_sets.h"

/// From an estimate to a load.
namespace strength {

/// A set that is planned.
struct PlannedSet
{
    int variation = 0;
    int reps = 1;
    double rir = 0.0;            ///< reps that shall be left in reserve
    double hardSetsBefore = 0.0; ///< in the same session, as hardSetsAfter() counts them
};

/// Load at which the lifter is expected to finish with the reserve asked for, and its 90 % interval
/// (estimate, ratio and day form). Not rounded to plates.
/// Empty where the estimate has no data.
/// @throws std::invalid_argument for reps < 1, rir < 0 or a variation that is no row
[[nodiscard]] std::optional<Band> loadFor(const LifterEstimate &estimate, int day,
    std::span<const VariationPrior> variations, const PlannedSet &set);

/// The other way round: reps in reserve expected at `loadKg`; below 0 where the set would be
/// missed.
[[nodiscard]] std::optional<Interval> reserveAt(const LifterEstimate &estimate, int day,
    std::span<const VariationPrior> variations, const PlannedSet &set, double loadKg);

} // namespace strength
