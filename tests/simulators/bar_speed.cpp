#include "tests/simulators/bar_speed.h"

#include <algorithm>
#include <cmath>

namespace simulators {

double barSpeed(const BarSpeedTraits &traits, double share, Random &random)
{
    // The smaller root of the published line: velocity falls as the share grows.
    constexpr double a = 8.4326;
    constexpr double b = -73.501;
    const double c = 112.33 - 100.0 * std::min(share, 1.05);
    const double published = (-b - std::sqrt(b * b - 4.0 * a * c)) / (2.0 * a);
    const double atMax = 0.17;
    const double own = atMax + traits.shift + traits.stretch * (published - atMax);
    return std::max(own + random.normal(0.0, traits.noise), 0.05);
}

} // namespace simulators
