#include "core/domain/gear.h"

#include "core/domain/text.h"

#include <algorithm>

namespace core {

Gear usualGear(Unit unit)
{
    if (unit == Unit::pound) {
        Gear gear{45 * kKgPerPound, 0.0, {}};
        for (const PlatePairs &p : {PlatePairs{45, 6}, {35, 1}, {25, 1}, {10, 2}, {5, 1}, {2.5, 1}})
            gear.plates.push_back({p.plateKg * kKgPerPound, p.pairs});
        return gear;
    }
    return {20.0, 0.0, {{25, 6}, {20, 1}, {15, 1}, {10, 1}, {5, 1}, {2.5, 1}, {1.25, 1}}};
}

QStringList problems(const Gear &gear)
{
    QStringList wrong;
    if (!(gear.barKg > 0.0 && gear.barKg <= 50.0))
        wrong << Text::tr("The bar weighs more than 0 and at most 50 kg.");
    if (!(gear.collarsKg >= 0.0 && gear.collarsKg <= 10.0))
        wrong << Text::tr("Both collars together weigh 0 to 10 kg.");
    if (std::ranges::any_of(gear.plates, [](const PlatePairs &p) {
            return !(p.plateKg > 0.0 && p.plateKg <= 100.0) || p.pairs < 1;
        }))
        wrong << Text::tr(
            "Each plate weighs more than 0 kg, and there is at least one pair of it.");
    return wrong;
}

} // namespace core
