#include "core/strength/estimator.h"

#include <cmath>

namespace strength {

double RepCurve::share(double reps, double repCost) const
{
    return std::exp(-kappa * repCost * std::pow(std::fmax(reps - 1.0, 0.0), power));
}

double RepCurve::reps(double share, double repCost) const
{
    // Above the max no rep is made: the tangent at the max would be vertical or flat depending on
    // the power, so the reps fall linearly in ln(share) at the mean slope of the first rep.
    const double drop = -std::log(share) / (kappa * repCost);
    return drop >= 0.0 ? 1.0 + std::pow(drop, 1.0 / power) : std::fmax(1.0 + drop, 0.0);
}

} // namespace strength
