#pragma once

#include "core/strength/estimator.h"

#include <vector>

/// Small logs for the engine's tests.
namespace samples {

inline const std::vector<strength::VariationPrior> kVariations{
    {1.0, 0.0, 1.0}, {0.95, 0.03, 1.0}, {0.92, 0.04, 1.2}};

inline strength::TrainingSet rated(double loadKg, int reps, double rpe, int variation = 0)
{
    strength::TrainingSet set;
    set.variation = variation;
    set.loadKg = loadKg;
    set.reps = reps;
    set.rpe = rpe;
    return set;
}

inline strength::TrainingSet unrated(double loadKg, int reps)
{
    strength::TrainingSet set;
    set.loadKg = loadKg;
    set.reps = reps;
    return set;
}

inline strength::TrainingSet missed(double loadKg, int repsDone)
{
    strength::TrainingSet set = unrated(loadKg, repsDone);
    set.missed = true;
    return set;
}

/// `weeks` weeks of two sessions from Monday, 1970-01-05: sets that a lifter with a max of 100 kg
/// rates as the handbook chart has them.
inline strength::LifterLog steadyLog(int weeks, double maxKg = 100.0)
{
    strength::LifterLog log;
    const double k = maxKg / 100.0;
    for (int week = 0; week < weeks; ++week)
        for (const int day : {4, 7})
            log.sessions.push_back({7 * week + day,
                {rated(93 * k, 1, 8), rated(87 * k, 3, 8), rated(80 * k, 5, 7),
                    rated(76 * k, 5, 6.5, 1)}});
    return log;
}

/// As of the last day of the log.
inline strength::LifterEstimate estimateOf(const strength::LifterLog &log)
{
    return strength::estimateLifter(log, kVariations, strength::lastDayOf(std::span(&log, 1)));
}

} // namespace samples
