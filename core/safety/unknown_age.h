#pragma once

#include "core/safety/day_limits.h"

namespace core {

/// Why the program writes no maximal work of its own accord for a lifter whose age is unknown, in a
/// sentence; empty when it is known. Whoever holds back or asks for that reason says this.
[[nodiscard]] QString whyNoMaximalYet(const DayLimits &limits);

} // namespace core
