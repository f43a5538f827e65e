#pragma once

#include "core/strength/interval.h"
#include "core/strength/touch_roster.h"

#include <optional>
#include <span>
#include <vector>

/// Where a lifter's touch on the chest breaks down as loads rise.
///
/// A touch score of 1..5 is regressed on the load's share of that day's estimated max of the
/// variation by proportional odds (ordinal_regression.h). The **touch hold** for a wanted score is
/// the share at which the chance of a touch no worse than wanted falls to one half. It is a share
/// of the *estimated* max: that is what loads are chosen by.
///
/// Lifters lend each other strength (touch_roster.h). The interval of today's hold grows by what
/// old readings may have missed of its wandering.
namespace strength {

enum class TouchStanding {
    none,   ///< no score
    few,    ///< too little to say
    flat,   ///< the touch does not change with the load in a way that could be seen
    beyond, ///< as wanted at every load that was seen: the hold lies above them
    below,  ///< never as wanted at the loads that were seen: the hold lies below them
    enough
};

struct TouchHold
{
    TouchStanding standing = TouchStanding::none;
    Interval share; ///< the hold; of use where the standing is beyond, below or enough
    int sets = 0;   ///< with a score
    double lowestShare = 0.0, highestShare = 0.0; ///< that were seen
};

/// Which readings count, and how much.
struct TouchWindow
{
    int day = 0;                               ///< as of; later readings are left out
    std::optional<double> halfLifeDays = 90.0; ///< weight of a reading; empty = all alike
    std::optional<int> days = {}; ///< only readings of the last so many days; empty = all
};

/// @param wanted  the hardest score that is still as wanted, 1..4
/// @throws std::invalid_argument for a wanted score out of range
[[nodiscard]] TouchHold touchHold(std::span<const TouchReading> readings, const TouchRoster &roster,
    int wanted, const TouchWindow &window);

/// The same for several wanted scores, one fit for them all.
[[nodiscard]] std::vector<TouchHold> touchHolds(std::span<const TouchReading> readings,
    const TouchRoster &roster, std::span<const int> wanted, const TouchWindow &window);

struct TouchHoldPoint
{
    int day = 0;
    TouchHold hold;
};

/// The hold as it moved: at the end of every `stepDays` from the first reading on, each from the
/// readings of the `spanDays` before it, all of the same weight.
[[nodiscard]] std::vector<TouchHoldPoint> touchHoldOverTime(std::span<const TouchReading> readings,
    const TouchRoster &roster, int wanted, int stepDays = 30, int spanDays = 90);

} // namespace strength
