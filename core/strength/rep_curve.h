#pragma once

#include "core/strength/estimator.h"

namespace strength {

/// Reps that can be done with ln(max / load) = `drop`, and the derivatives; kappa taken with the
/// rep cost. See RepCurve.
struct RepsAt
{
    double reps = 0.0;
    double byDrop = 0.0;
    double byLnKappa = 0.0;
    double byPower = 0.0;
};
[[nodiscard]] RepsAt repsAt(double drop, double kappa, double power);

} // namespace strength
