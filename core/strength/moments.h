#pragma once

/// What one reading says of a scalar x that is believed normal, by matching the first two moments
/// of the posterior (assumed density filtering: Minka 2001, Expectation Propagation, sec. 3.1).
namespace strength {

/// Derivatives of the log evidence by the mean of the belief. The posterior has
///   mean = m + s^2 shift,   variance = s^2 - s^4 shrink.
struct Moments
{
    double shift = 0.0;
    double shrink = 0.0;
    double inlier = 1.0;   ///< probability that the reading is sound, 0..1
    double surprise = 0.0; ///< reading - expected, in SD of what was expected
    double logEvidence = 0.0;
};

/// A reading is gross with probability `chance`, and then its evidence is `density`, whatever x is:
/// it moves nothing. A typed error must not.
struct Gross
{
    double chance = 0.0;
    double density = 0.0;
};

/// y = x + e, e normal with variance r; x believed N(mean, variance).
[[nodiscard]] Moments readPoint(
    double y, double r, double mean, double variance, const Gross &gross);

/// low <= x + e < high; either end may be infinite. `gross.density` is a probability here.
[[nodiscard]] Moments readInterval(
    double low, double high, double r, double mean, double variance, const Gross &gross);

} // namespace strength
