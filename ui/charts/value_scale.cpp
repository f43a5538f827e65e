#include "ui/charts/value_scale.h"

#include <cmath>
#include <initializer_list>

namespace ui {

int ValueScale::ticks() const
{
    return int(std::lround((to - from) / step)) + 1;
}

int ValueScale::decimals() const
{
    int places = 0;
    for (double scaled = step; places < 6 && std::abs(scaled - std::round(scaled)) > 1e-6;
         scaled *= 10.0)
        ++places;
    return places;
}

ValueScale scaleFor(double low, double high, int mostSteps)
{
    if (!(high > low)) {
        const double room = low == 0.0 ? 1.0 : std::abs(low) * 0.05;
        low -= room;
        high += room;
    }
    double power = std::pow(10.0, std::floor(std::log10((high - low) / mostSteps)));
    for (;; power *= 10.0)
        for (const double lead : {1.0, 2.0, 2.5, 5.0}) {
            const double step = lead * power;
            // A hair of slack, so that 0.3 / 0.1 counts as three steps.
            const double first = std::floor(low / step + 1e-9);
            const double last = std::ceil(high / step - 1e-9);
            if (last - first <= mostSteps + 1e-9)
                return {first * step, last * step, step};
        }
}

} // namespace ui
