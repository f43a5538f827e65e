#include "core/strength/rep_curve.h"

#include <cmath>

namespace strength {

namespace {

/// In units of kappa. Nearer to the max than this the curve is a straight line: the power's own
/// tangent at the max is flat or upright, and a tangent is all that a single would tell.
constexpr double kJoin = 0.25;

double slopeAtMax(double power)
{
    return std::pow(kJoin, 1.0 / power - 1.0);
}

} // namespace

RepsAt repsAt(double drop, double kappa, double power)
{
    const double q = drop / kappa;
    RepsAt at;
    if (q < kJoin) {
        const double slope = slopeAtMax(power);
        at.reps = 1.0 + slope * q;
        at.byDrop = slope / kappa;
        at.byLnKappa = -slope * q;
        at.byPower = -slope * q * std::log(kJoin) / (power * power);
        return at;
    }
    const double lnQ = std::log(q);
    const double beyondFirst = std::exp(lnQ / power);
    at.reps = 1.0 + beyondFirst;
    at.byDrop = beyondFirst / (power * drop);
    at.byLnKappa = -beyondFirst / power;
    at.byPower = -beyondFirst * lnQ / (power * power);
    return at;
}

double RepCurve::share(double reps, double repCost) const
{
    const double beyondFirst = std::fmax(reps, 0.0) - 1.0;
    const double line = beyondFirst / slopeAtMax(power);
    const double q = line < kJoin ? line : std::pow(beyondFirst, power);
    return std::exp(-kappa * repCost * q);
}

double RepCurve::reps(double share, double repCost) const
{
    return std::fmax(repsAt(-std::log(share), kappa * repCost, power).reps, 0.0);
}

} // namespace strength
