#pragma once

#include "tests/simulators/random.h"

#include <vector>

namespace simulators {

/// Sets alike, as a coach plans them.
struct Work
{
    int variation = 0;
    int sets = 1;
    int reps = 1;     ///< lead reps included
    double rir = 2.0; ///< asked for
    int leadVariation = -1;
    int leadReps = 0;
};

struct PlannedSession
{
    int weekday = 0; ///< 0 = Monday
    std::vector<Work> works;
};

/// How a lifter's weeks are laid out.
struct PlanTraits
{
    int sessionsPerWeek = 3;       ///< 2..4
    int blockWeeks = 5;            ///< the last one is a deload
    double singles = 0.4;          ///< chance that a week holds a heavy competition single
    double skipped = 0.05;         ///< chance that a session falls out
    double competitionShare = 0.5; ///< chance that a session's main work is the competition lift
    bool leadReps = false;         ///< uses lead-rep sets: one tempo rep, then competition reps
    /// Weeks without training, as first week and count.
    struct Layoff
    {
        int week = 0;
        int weeks = 0;
    };
    std::vector<Layoff> layoffs;
};

/// Traits as they vary between lifters: 2-4 sessions, blocks of 4-6 weeks, no layoff.
[[nodiscard]] PlanTraits drawPlanTraits(Random &random);

/// Sessions of week 0, 1, ...: each holds a main work and one or two others, three to eight sets in
/// all, with reps falling and effort rising along the block. Empty in a layoff.
[[nodiscard]] std::vector<PlannedSession> planWeek(
    const PlanTraits &traits, int week, Random &random);

} // namespace simulators
