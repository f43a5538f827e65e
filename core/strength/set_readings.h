#pragma once

#include "core/strength/set_expectation.h"

#include <array>
#include <limits>
#include <optional>

namespace strength {

/// One statement of a set about a scalar that the model expects: a point, or an interval.
struct Reading
{
    enum class Kind { finished, missed, rated, unrated, speed };

    Kind kind = Kind::rated;
    Expectation expectation;
    double low = 0.0;
    double high = 0.0;  ///< = low for a point
    double noise = 0.0; ///< variance
    Gross gross;

    /// What it says where its scalar is believed N(mean, variance).
    [[nodiscard]] Moments moments(double mean, double variance) const
    {
        return low == high ? readPoint(low, noise, mean, variance, gross)
                           : readInterval(low, high, noise, mean, variance, gross);
    }
};

/// SD between the sets of a session, ln units (common practice, no source).
inline constexpr double kSetNoise = 0.008;

/// What the reader of a set has to know of the lifter's ways of rating so far.
struct RatingWays
{
    double scale = 1.0;  ///< variance of a rating against the published one
    double lowest = 6.5; ///< lowest rating given so far; what lies below it is cut off
    /// Ratings come in steps: an end of the scale begins half a step before its last word.
    double halfStep = 0.25;
};

/// At most three: that it was finished, what it was rated, how fast the bar was. None for a light
/// set that went unrated.
struct SetReadings
{
    std::array<Reading, 3> list;
    int size = 0;
    double reserve = 0.0; ///< reps left in the model's view, below 0 where it expects a miss

    [[nodiscard]] std::span<const Reading> all() const { return {list.data(), size_t(size)}; }
};

/// All statements of a set at one point of the state.
/// @param vague  the max is hardly known: weigh the rating by the reserve that was said, since the
///               model has none to go by yet
[[nodiscard]] SetReadings readingsOf(const SetModel &model, const TrainingSet &set,
    double hardBefore, const RatingWays &ways, bool vague);

/// SD of a rating with `reserve` reps left, reps, before the lifter's own scale.
[[nodiscard]] double ratingNoise(double reserve);

} // namespace strength
