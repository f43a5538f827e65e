#pragma once

#include <cmath>

/// Beliefs in ln units and the bands that are shown for them.
namespace strength {

/// A load and its 90 % interval, kg.
struct Band
{
    double kg = 0.0;
    double low90 = 0.0;
    double high90 = 0.0;

    friend bool operator==(const Band &, const Band &) = default;
};

/// A pure number and its 90 % interval.
struct Interval
{
    double value = 0.0;
    double low90 = 0.0;
    double high90 = 0.0;

    friend bool operator==(const Interval &, const Interval &) = default;
};

/// Half the width of a 90 % interval of a normal belief, in SDs.
inline constexpr double kZ90 = 1.6448536269514722;

/// Median and 90 % interval of exp(x), x normal.
[[nodiscard]] inline Band bandOf(double mean, double sd)
{
    return {std::exp(mean), std::exp(mean - kZ90 * sd), std::exp(mean + kZ90 * sd)};
}
[[nodiscard]] inline Interval factorOf(double mean, double sd)
{
    return {std::exp(mean), std::exp(mean - kZ90 * sd), std::exp(mean + kZ90 * sd)};
}
/// Mean and 90 % interval of x itself.
[[nodiscard]] inline Interval intervalOf(double mean, double sd)
{
    return {mean, mean - kZ90 * sd, mean + kZ90 * sd};
}

/// SD of ln x from the ends of a band.
[[nodiscard]] inline double sdOfLn(double low90, double high90)
{
    return std::log(high90 / low90) / (2.0 * kZ90);
}

} // namespace strength
