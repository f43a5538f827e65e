#pragma once

#include "core/strength/training_log.h"
#include "tests/simulators/random.h"

#include <vector>

namespace simulators {

/// Rows of the variation table that every simulated roster uses.
enum BenchVariation {
    competition,
    touchAndGo,
    offChestPause,
    tempo420,
    feetUp,
    longPause,
    closeGrip,
    deadStop,
    incline
};

/// Priors as the engine gets them: ratios and spreads between lifters by common practice (no
/// source); direction of tempo after Wilk et al. (2020), of the close grip after Lockie et al.
/// (2017).
[[nodiscard]] std::vector<strength::VariationPrior> benchVariations();

/// One lifter's own ratio and rep cost per variation.
struct VariationTruth
{
    double ratio = 1.0;
    double repCost = 1.0; ///< divides the reps beyond the first
};

/// Drawn around the priors: the ratio with the prior's spread, the rep cost with an SD of 8 %,
/// which the priors do not tell. The competition lift is 1 and 1.
[[nodiscard]] std::vector<VariationTruth> drawVariations(Random &random);

} // namespace simulators
