#include "core/strength/moments.h"

#include <cmath>
#include <numbers>

namespace strength {

namespace {

constexpr double kRoot2Pi = 2.5066282746310002;

double density(double z)
{
    return std::exp(-0.5 * z * z) / kRoot2Pi;
}

/// P(low < Z < high), without loss of digits in the upper tail.
double probability(double low, double high)
{
    if (low > 0.0)
        return probability(-high, -low);
    const auto below = [](double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); };
    return below(high) - below(low);
}

/// Mixes the gross part in. `first` and `second` are Z'/Z and Z''/Z of the sound part by the mean.
Moments mix(double z, double first, double second, const Gross &gross)
{
    Moments moments;
    const double sound = (1.0 - gross.chance) * z;
    const double all = sound + gross.chance * gross.density;
    if (!(all > 0.0)) {
        moments.inlier = 0.0;
        moments.logEvidence = std::log(1e-300);
        return moments;
    }
    const double w = sound / all;
    moments.inlier = w;
    moments.logEvidence = std::log(all);
    if (w > 0.0) {
        moments.shift = w * first;
        moments.shrink = moments.shift * moments.shift - w * second;
    }
    return moments;
}

} // namespace

Moments readPoint(double y, double r, double mean, double variance, const Gross &gross)
{
    const double total = variance + r;
    const double sd = std::sqrt(total);
    const double z = (y - mean) / sd;
    Moments moments = mix(density(z) / sd, z / sd, (z * z - 1.0) / total, gross);
    moments.surprise = z;
    return moments;
}

Moments readInterval(
    double low, double high, double r, double mean, double variance, const Gross &gross)
{
    const double total = variance + r;
    const double sd = std::sqrt(total);
    const double a = (low - mean) / sd;
    const double b = (high - mean) / sd;
    const double z = probability(a, b);
    const double da = std::isinf(a) ? 0.0 : density(a);
    const double db = std::isinf(b) ? 0.0 : density(b);
    const double aDa = std::isinf(a) ? 0.0 : a * da;
    const double bDb = std::isinf(b) ? 0.0 : b * db;
    // So far out the quotients lose their digits; the sound part has no say there anyway.
    const bool hopeless = z < 1e-12;
    Moments moments = hopeless ? mix(0.0, 0.0, 0.0, gross)
                               : mix(z, (da - db) / (sd * z), (aDa - bDb) / (total * z), gross);
    moments.surprise = a > 0.0 ? a : b < 0.0 ? b : 0.0;
    return moments;
}

} // namespace strength
