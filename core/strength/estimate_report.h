#pragma once

#include "core/strength/estimator.h"
#include "core/strength/lifter_fit.h"

namespace strength {

/// A fit in the words of the public interface.
/// @param today  as fitLifter() was given it
[[nodiscard]] LifterEstimate report(
    const LifterFit &fit, std::span<const VariationPrior> variations, int today);

} // namespace strength
