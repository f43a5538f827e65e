#pragma once

#include "tests/benchmarks/local_level.h"
#include "tests/simulators/lifter.h"

#include <span>

namespace benchmarks {

/// The best that can be done with a log, or nearly so: Bayes' rule on a grid of levels, told
/// everything but the level and the luck - the lifter's true rep curve, ratios and rep costs,
/// rating habit with its drift, fatigue before each set, spread of the day form and of the level's
/// steps. Shows how much of an error is the log's and how much the engine's. Shares no code with
/// the engine.
///
/// Not told: that layoffs sink the level, waves, soreness on a day, bar speed. So an engine may
/// beat it where it knows those.
struct ToldLevel
{
    LevelSeries filtered; ///< one value a Sunday
    LevelSeries smoothed;
};
[[nodiscard]] ToldLevel toldLevel(
    const simulators::SimulatedLifter &lifter, std::span<const int> sundays);

} // namespace benchmarks
