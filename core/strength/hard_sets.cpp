#include "core/strength/hard_sets.h"

#include <algorithm>
#include <cmath>

namespace strength {

double hardSetsAfter(double before, double reserve)
{
    constexpr double kMost = 12.0;
    return std::min(before + std::exp(-std::max(reserve - 2.0, 0.0) / 3.0), kMost);
}

} // namespace strength
