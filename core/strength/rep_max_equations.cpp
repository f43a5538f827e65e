#include "core/strength/rep_max_equations.h"

#include <cmath>
#include <stdexcept>

namespace strength {

namespace {

double factor(RepMaxEquation equation, double r)
{
    switch (equation) {
    case RepMaxEquation::epley:
        return 1.0 + r / 30.0;
    case RepMaxEquation::brzycki:
        return 36.0 / (37.0 - r);
    case RepMaxEquation::lander:
        return 100.0 / (101.3 - 2.67123 * r);
    case RepMaxEquation::lombardi:
        return std::pow(r, 0.10);
    case RepMaxEquation::mayhew:
        return 100.0 / (52.2 + 41.9 * std::exp(-0.055 * r));
    case RepMaxEquation::oconner:
        return 1.0 + 0.025 * r;
    case RepMaxEquation::wathan:
        return 100.0 / (48.8 + 53.8 * std::exp(-0.075 * r));
    }
    throw std::invalid_argument("repMax: no such equation");
}

} // namespace

double repMax(RepMaxEquation equation, double loadKg, double reps)
{
    if (!(loadKg > 0.0) || !(reps >= 1.0))
        throw std::invalid_argument("repMax: the load must be above 0 and the reps at least 1");
    const double times = factor(equation, reps);
    if (!(times > 0.0) || !std::isfinite(times))
        throw std::invalid_argument("repMax: more reps than the equation allows");
    return loadKg * times;
}

double repMaxOrLift(RepMaxEquation equation, double loadKg, double reps)
{
    const double estimate = repMax(equation, loadKg, reps);
    return reps == 1.0 ? loadKg : estimate;
}

} // namespace strength
