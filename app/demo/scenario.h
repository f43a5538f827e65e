#pragma once

#include "core/domain/check_in.h"
#include "core/domain/lifter.h"

#include <optional>
#include <vector>

/// The demo scenario: twelve invented lifters and what is true of each, from which the demo log is
/// drawn. None of it is data of anybody.
namespace demo {

/// What the coach cannot see.
struct Truth
{
    double benchKg = 0.0;       ///< competition max at the start
    double gainPerWeek = 0.0;   ///< share of the max
    double repDrop = 0.033;     ///< extra share of load lost per rep, hyperbola: max / load - 1
    double ratingBias = 0.0;    ///< reps; above 0 = says more in reserve than there was
    double ratingNoise = 0.7;   ///< reps, one SD
    double touchHold = 0.85;    ///< share of the max up to which the wanted touch is kept
    double squatRatio = 1.4;    ///< to the bench max
    double deadliftRatio = 1.6; ///< to the bench max
};

/// Weeks of the log in which something is out of the ordinary, counted from its first week.
struct Story
{
    int layoffFrom = -1; ///< -1 = none
    int layoffWeeks = 0;
    int soreWeek = -1; ///< sore back and legs: no squat, feet-up bench in place of the heavy one
    int firstWeek = 0; ///< a newcomer starts late
    bool missedMonday = false; ///< of the week under way
    bool isMinor = false;      ///< no singles, three reps left in every set
    bool kneeHurts = false;    ///< since this week: bench press without the legs, and no squat
};

struct Person
{
    core::Lifter lifter; ///< without an id
    Truth truth;
    Story story;
    std::optional<core::CheckIn> today; ///< without ids and day
};

inline constexpr int kWeeks = 30;

/// @param comingMonday  Monday after the last week of the log; meets are counted from it
[[nodiscard]] std::vector<Person> people(QDate comingMonday);

} // namespace demo
