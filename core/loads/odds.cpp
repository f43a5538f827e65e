#include "core/loads/odds.h"

#include <cmath>
#include <numbers>

namespace core {

namespace {

constexpr double kReach = 6.0; // SDs; the normal density beyond is below 1e-8
constexpr double kStep = 0.05;

double density(double z)
{
    return std::exp(-0.5 * z * z) / std::sqrt(2.0 * std::numbers::pi);
}

double below(double z)
{
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

} // namespace

double chanceOfAll(std::span<const Margin> margins)
{
    double chance = 0.0;
    double weight = 0.0;
    for (double z = -kReach; z <= kReach; z += kStep) {
        double product = density(z);
        weight += product;
        for (const Margin &margin : margins)
            product *= below((margin.mean + margin.sd * z) / kSetNoise);
        chance += product;
    }
    return chance / weight;
}

} // namespace core
