#pragma once

#include "core/strength/carry_over.h"

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

/// Worlds in which work in a variation raises the competition max by a known amount. The first has
/// the form of the model, the others have not.
namespace simulators {

struct CarryTruth
{
    std::string_view name;
    std::string_view what;
    double effectSd;    ///< of a variation's true effect, ln units for ten hard lifts
    double doseCurve;   ///< power of the dose: 1 = straight, 0.5 = flattening
    double lifterSd;    ///< by which lifters' responses differ, share of the effect
    double fadePerWeek; ///< of what was gained
    bool late;          ///< arrives geometrically over weeks and not evenly over three
};

struct CarryRoster
{
    std::vector<strength::CarryLog> logs;
    /// True change of ln max three weeks after a week that used the variation, mean over those
    /// weeks, beyond that of work in general; entry 0 is the competition lift's and 0.
    std::vector<double> effect;
};

[[nodiscard]] std::span<const CarryTruth> carryTruths();

inline constexpr int kCarryVariations = 8;

[[nodiscard]] CarryRoster simulateCarryOver(
    const CarryTruth &truth, std::uint64_t seed, int lifters);

} // namespace simulators
