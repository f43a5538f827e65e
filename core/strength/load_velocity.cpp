#include "core/strength/load_velocity.h"

#include <algorithm>
#include <cmath>

namespace strength {

SpeedAt publishedSpeed(double share)
{
    constexpr double a = 8.4326;
    constexpr double b = -73.501;
    constexpr double kEnd = 1.1;
    const double c = 112.33 - 100.0 * std::min(share, kEnd);
    const double root = std::sqrt(b * b - 4.0 * a * c);
    return {(-b - root) / (2.0 * a), share > kEnd ? 0.0 : -100.0 / root};
}

} // namespace strength
