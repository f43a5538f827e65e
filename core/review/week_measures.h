#pragma once

#include "core/domain/card.h"
#include "core/domain/training_history.h"
#include "core/loads/lift_estimate.h"

#include <array>
#include <optional>
#include <span>
#include <vector>

/// What was done in one lift, week by week. Measures of work describe; none of them foretells an
/// injury.
namespace core {

/// Reps by the share of their variation's max of the day. Bounds: 55, 70, 80 and 90 %, the zones
/// that the trade counts in (common practice, no source).
inline constexpr std::array kZoneBounds{0.55, 0.70, 0.80, 0.90};
inline constexpr size_t kZones = kZoneBounds.size() + 1;
/// 0 = the lightest.
[[nodiscard]] size_t zoneOf(double share);

struct WeekMeasures
{
    WeekLoad done;
    /// Tonnage / (reps x estimated competition max of the day), 0..1; empty without reps or max.
    std::optional<double> averageIntensity;
    std::array<int, kZones> zones{};
    /// Seconds under the bar by tempo and pause of the variations; see secondsUnderTension().
    double tensionSeconds = 0.0;
    /// Of the tonnage of the seven days; Foster (1998), Med Sci Sports Exerc 30(7):1164-1168, has
    /// them of rating x minutes, which the log does not hold.
    std::optional<double> monotony, strain;
    int plannedLifts = 0; ///< reps on the week's cards

    friend bool operator==(const WeekMeasures &, const WeekMeasures &) = default;
};

/// Seconds that a rep takes by the variation's tempo, one count a second. A lowering that is not
/// prescribed counts two seconds, a lifting as fast as possible one (common practice, no source).
[[nodiscard]] double secondsUnderTension(const Variation &variation);

/// Without gaps from the first to the last week with a set or a card of the lift; weeks off are
/// zero. Cards whose set line cannot be read plan nothing.
/// @param lift   may be without estimate; then shares and intensities are missing
/// @param cards  of the lifter
[[nodiscard]] std::vector<WeekMeasures> weekMeasures(
    const LiftEstimate &lift, std::span<const Variation> catalogue, std::span<const Card> cards);

} // namespace core
