#include "core/loads/odds.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <vector>

namespace core {

namespace {

constexpr double kReach = 6.0; // SDs; the normal density beyond is below 1e-8
constexpr double kStep = 0.1;
constexpr int kDays = 12; // to three decimals of the t within two SDs

double density(double z)
{
    return std::exp(-0.5 * z * z) / std::sqrt(2.0 * std::numbers::pi);
}

double below(double z)
{
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

/// Of the chi-squared distribution with three degrees, in closed form (any table of integrals).
double chiSquared3Below(double x)
{
    return std::erf(std::sqrt(x / 2.0))
        - std::sqrt(2.0 * x / std::numbers::pi) * std::exp(-x / 2.0);
}

/// Student's t with three degrees and an SD of 1 is z / sqrt(c), c chi-squared with three degrees:
/// the factors 1 / sqrt(c) at the middles of kDays equally likely parts of c.
std::array<double, kDays> formSpreads()
{
    std::array<double, kDays> spreads{};
    for (int i = 0; i < kDays; ++i) {
        double low = 0.0, high = 100.0;
        for (int halving = 0; halving < 60; ++halving) {
            const double middle = 0.5 * (low + high);
            (chiSquared3Below(middle) < (i + 0.5) / kDays ? low : high) = middle;
        }
        spreads[size_t(i)] = 1.0 / std::sqrt(low);
    }
    return spreads;
}

/// The chance on a day whose form is normal with `spread` times its SD.
double chanceOfDay(std::span<const Margin> margins, double spread)
{
    std::vector<double> sds;
    for (const Margin &margin : margins)
        sds.push_back(std::hypot(margin.sd, spread * margin.formSd));
    double chance = 0.0;
    double weight = 0.0;
    for (double z = -kReach; z <= kReach; z += kStep) {
        const double form = z > 0.0 ? kGoodDay * z : z;
        double product = density(z);
        weight += product;
        for (size_t i = 0; i < margins.size(); ++i)
            product *= below((margins[i].mean + sds[i] * form) / kSetNoise);
        chance += product;
    }
    return chance / weight;
}

} // namespace

double chanceOfAll(std::span<const Margin> margins)
{
    static const std::array<double, kDays> kSpreads = formSpreads();
    const bool hasForm =
        std::ranges::any_of(margins, [](const Margin &margin) { return margin.formSd > 0.0; });
    if (!hasForm)
        return chanceOfDay(margins, 0.0);
    double chance = 0.0;
    for (const double spread : kSpreads)
        chance += chanceOfDay(margins, spread) / kDays;
    return chance;
}

} // namespace core
