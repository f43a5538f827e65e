#include "tests/simulators/rater.h"

#include <algorithm>
#include <cmath>

namespace simulators {

Rater::Rater(const RaterTraits &traits)
    : m_traits(traits)
{
}

void Rater::passWeek(Random &random)
{
    m_drift += random.normal(0.0, m_traits.biasDrift / std::sqrt(52.0));
}

std::optional<double> Rater::rate(double reserve, Random &random) const
{
    const double noise = random.normal(0.0, m_traits.noise + m_traits.noisePerRep * reserve);
    if (random.chance(m_traits.missing + m_traits.missingPerRep * reserve))
        return std::nullopt;
    // The first rep left is felt in full, the next ones ever less.
    const double felt =
        std::min(reserve, 1.0) + m_traits.compression * std::max(reserve - 1.0, 0.0);
    const double said = 10.0 - (felt + bias() + noise);
    const double step = m_traits.halves ? 0.5 : 1.0;
    return std::clamp(step * std::round(said / step), m_traits.lowest, 10.0);
}

} // namespace simulators
