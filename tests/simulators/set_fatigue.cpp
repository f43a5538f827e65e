#include "tests/simulators/set_fatigue.h"

#include <algorithm>
#include <cmath>

namespace simulators {

SetFatigue::SetFatigue(const SetFatigueTraits &traits)
    : m_traits(traits)
{
}

void SetFatigue::addSet(double reserve, Random &random)
{
    m_level += m_traits.cost * std::exp(-std::max(reserve, 0.0) / 3.0);
    const double rest = m_traits.restMinutes * std::exp(random.normal(0.0, m_traits.restSpread));
    // The deep part of the fatigue stays until the next day, whatever the rest.
    const double deep = 0.3 * m_level;
    m_level = deep + (m_level - deep) * std::exp(-rest / m_traits.recoverMinutes);
}

} // namespace simulators
