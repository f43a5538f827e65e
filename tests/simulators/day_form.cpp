#include "tests/simulators/day_form.h"

#include <algorithm>
#include <cmath>

namespace simulators {

DayForm::DayForm(const DayFormTraits &traits)
    : m_traits(traits)
{
}

void DayForm::pass(double dose)
{
    // Soreness comes from what is unusual and is gone in about three days.
    m_sore = 0.5 * m_sore + std::max(dose - 1.0, 0.0);
}

double DayForm::draw(Random &random) const
{
    double form = random.heavyTailed(m_traits.tails, m_traits.sd);
    form -= m_traits.sorenessLoss * m_sore;
    if (random.chance(1.0 / 3.0))
        form -= m_traits.otherLifts;
    if (random.chance(m_traits.badDay))
        form -= random.uniform(0.04, 0.10);
    return form;
}

} // namespace simulators
