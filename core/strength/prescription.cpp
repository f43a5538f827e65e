#include "core/strength/prescription.h"

#include "core/strength/interval.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace strength {

namespace {

struct Cap
{
    double mean = 0.0; ///< ln of the variation's max for this set, kg
    double sd = 0.0;
};

std::optional<Cap> capOf(const LifterEstimate &estimate, int day,
    std::span<const VariationPrior> variations, const PlannedSet &set)
{
    if (set.reps < 1 || !(set.rir >= 0.0))
        throw std::invalid_argument("a planned set has at least one rep and no negative reserve");
    if (set.variation < 0 || size_t(set.variation) >= variations.size())
        throw std::invalid_argument("a planned set's variation is no row of the table");
    const std::optional<Band> max = estimate.maxOn(day);
    if (!max || size_t(set.variation) >= estimate.variations.size())
        return std::nullopt;
    const VariationEstimate &variation = estimate.variations[size_t(set.variation)];
    const double maxSd = sdOfLn(max->low90, max->high90);
    const double ratioSd = sdOfLn(variation.ratio.low90, variation.ratio.high90);
    const double variance = maxSd * maxSd + ratioSd * ratioSd + 2.0 * variation.withMax;
    return Cap{std::log(max->kg) + std::log(variation.ratio.value)
            - estimate.setFatigue * set.hardSetsBefore,
        std::sqrt(std::max(variance, 0.0) + estimate.formSd * estimate.formSd)};
}

} // namespace

std::optional<Band> loadFor(const LifterEstimate &estimate, int day,
    std::span<const VariationPrior> variations, const PlannedSet &set)
{
    const std::optional<Cap> cap = capOf(estimate, day, variations, set);
    if (!cap)
        return std::nullopt;
    const double repCost = estimate.variations[size_t(set.variation)].repCost;
    const double share = estimate.curve.share(set.reps + set.rir, repCost);
    const auto at = [&](double sds) { return share * std::exp(cap->mean + sds * cap->sd); };
    return Band{at(0.0), at(-kZ90), at(kZ90)};
}

std::optional<Interval> reserveAt(const LifterEstimate &estimate, int day,
    std::span<const VariationPrior> variations, const PlannedSet &set, double loadKg)
{
    if (!(loadKg > 0.0))
        throw std::invalid_argument("the load must be above 0");
    const std::optional<Cap> cap = capOf(estimate, day, variations, set);
    if (!cap)
        return std::nullopt;
    const double repCost = estimate.variations[size_t(set.variation)].repCost;
    const auto at = [&](double sds) {
        const double share = loadKg / std::exp(cap->mean + sds * cap->sd);
        return estimate.curve.reps(share, repCost) - set.reps;
    };
    return Interval{at(0.0), at(-kZ90), at(kZ90)};
}

} // namespace strength
