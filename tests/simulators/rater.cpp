#include "tests/simulators/rater.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace simulators {

Rater::Rater(const RaterTraits &traits, double drift)
    : m_traits(traits)
    , m_drift(drift)
{
}

void Rater::passWeek(Random &random)
{
    m_drift += random.normal(0.0, m_traits.biasDrift / std::sqrt(52.0));
}

double Rater::meanSaying(double reserve) const
{
    // The first rep left is felt in full, the next ones ever less.
    const double felt =
        std::min(reserve, 1.0) + m_traits.compression * std::max(reserve - 1.0, 0.0);
    return 10.0 - (felt + bias());
}

double Rater::noise(double reserve) const
{
    return m_traits.noise + m_traits.noisePerRep * reserve;
}

double Rater::chanceMissing(double reserve) const
{
    return std::min(m_traits.missing + m_traits.missingPerRep * reserve, 1.0);
}

std::optional<double> Rater::rate(double reserve, Random &random) const
{
    const double said = random.normal(meanSaying(reserve), noise(reserve));
    if (random.chance(chanceMissing(reserve)))
        return std::nullopt;
    return std::clamp(step() * std::round(said / step()), m_traits.lowest, 10.0);
}

double Rater::chanceOf(std::optional<double> rpe, double reserve) const
{
    if (!rpe)
        return chanceMissing(reserve);
    const auto saidBelow = [&](double limit) {
        const double z = (limit - meanSaying(reserve)) / noise(reserve);
        return 0.5 * std::erfc(-z / std::numbers::sqrt2);
    };
    const double above = *rpe >= 10.0 ? 1.0 : saidBelow(*rpe + 0.5 * step());
    const double below = *rpe <= m_traits.lowest ? 0.0 : saidBelow(*rpe - 0.5 * step());
    return (1.0 - chanceMissing(reserve)) * (above - below);
}

} // namespace simulators
