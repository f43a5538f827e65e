#include "core/strength/local_level.h"

#include <cmath>
#include <numbers>
#include <stdexcept>

namespace strength {

namespace {

/// Products of precisions rather than differences of variances: exact for a start as vague as
/// one likes.
Belief combine(const Belief &belief, const LevelReading &reading)
{
    const double sum = belief.variance + reading.variance;
    return {(belief.mean * reading.variance + reading.value * belief.variance) / sum,
        belief.variance * reading.variance / sum};
}

} // namespace

LevelPath followLevel(
    std::span<const LevelReading> readings, const Belief &start, double stepVariance)
{
    if (!(start.variance > 0.0) || !(stepVariance >= 0.0))
        throw std::invalid_argument("followLevel: the variances must be above 0");

    LevelPath path;
    Belief ahead = start;
    for (const LevelReading &reading : readings) {
        path.predicted.push_back(ahead);
        Belief now = ahead;
        if (!std::isnan(reading.value)) {
            if (!(reading.variance > 0.0))
                throw std::invalid_argument("followLevel: a reading's variance must be above 0");
            const double sum = ahead.variance + reading.variance;
            const double surprise = reading.value - ahead.mean;
            path.logLikelihood -=
                0.5 * (std::log(2.0 * std::numbers::pi * sum) + surprise * surprise / sum);
            now = combine(ahead, reading);
        }
        path.filtered.push_back(now);
        ahead = {now.mean, now.variance + stepVariance};
    }

    path.smoothed = path.filtered;
    for (size_t t = readings.size(); t-- > 1;) {
        const Belief &now = path.filtered[t - 1];
        const double next = now.variance + stepVariance;
        const double gain = now.variance / next;
        path.smoothed[t - 1].mean = now.mean + gain * (path.smoothed[t].mean - now.mean);
        path.smoothed[t - 1].variance =
            now.variance + gain * gain * (path.smoothed[t].variance - next);
    }
    return path;
}

} // namespace strength
