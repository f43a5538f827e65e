#pragma once

#include "tests/simulators/random.h"

namespace simulators {

/// A lifter's own load-velocity line around the published one: %1RM = 8.4326 v^2 - 73.501 v +
/// 112.33, v the mean propulsive velocity in m/s (Gonzalez-Badillo & Sanchez-Medina 2010; from
/// memory).
struct BarSpeedTraits
{
    double shift = 0.0;   ///< m/s at every share; SD between lifters about 0.04
    double stretch = 1.0; ///< of the velocity lost per share; SD about 0.08
    double noise = 0.03;  ///< SD of a reading, m/s
};

/// A reading of the fastest rep at `share` of the momentary max; never below 0.05 m/s.
[[nodiscard]] double barSpeed(const BarSpeedTraits &traits, double share, Random &random);

} // namespace simulators
