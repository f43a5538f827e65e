#pragma once

#include "core/domain/units.h"

#include <QStringList>
#include <vector>

namespace core {

/// Plates of one weight. Counted in pairs, since a bar is loaded evenly.
struct PlatePairs
{
    double plateKg = 0.0; ///< one plate, > 0
    int pairs = 0;        ///< >= 1

    friend bool operator==(const PlatePairs &, const PlatePairs &) = default;
};

/// Bar, collars and plates that a lifter has at hand.
struct Gear
{
    double barKg = 20.0;
    double collarsKg = 0.0; ///< both together
    std::vector<PlatePairs> plates;

    friend bool operator==(const Gear &, const Gear &) = default;
};

/// A usual gym set: 20 kg bar and kg plates down to 1.25, or 45 lb bar and lb plates down to
/// 2.5 (common practice, no source).
[[nodiscard]] Gear usualGear(Unit unit);

/// What is wrong, in words a coach can act on; empty when sound.
[[nodiscard]] QStringList problems(const Gear &gear);

} // namespace core
