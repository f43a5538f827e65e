#pragma once

#include "core/loads/lift_estimate.h"
#include "core/loads/resolved_cards.h"

#include <QString>
#include <span>
#include <vector>

/// What the next weeks may bring under a plan, before anything is written.
///
/// The expected max is the engine's own, carried forward with its widening interval, times the
/// effect of training otherwise than usual. That effect is an impulse response in the deviations
/// from the lifter's own habit, with fitness and fatigue as two sums of daily tonnage that fade
/// with different time constants:
///
///     ln max(t) = ln engine(t) + g (F(t) - F(now)) - h (A(t) - A(now))
///
/// F and A are 1 while the lifter trains as in the last weeks. Training as usual thus leaves the
/// engine's expectation alone; more load first tires and later lifts, less load does the reverse.
///
/// Sources, from memory: Banister et al. (1975), Aust J Sports Med 7:57-61; Morton, Fitz-Clarke &
/// Banister (1990), J Appl Physiol 69(3):1171-1177: time constants of 45 and 15 days, and fatigue
/// weighted twice as much a day as fitness. Both fit endurance; for one lift they are a guess, so g
/// is set such that half the load for two weeks brings the 2 % that tapers bring on average
/// (Bosquet et al. 2007, Med Sci Sports Exerc 39(8):1358-1365), and g and both time constants are
/// drawn anew for every simulated future with a third of their size as SD. It is a picture of what
/// is plausible, not a forecast to bet on, and no proof of cause.
namespace core {

inline constexpr double kFitnessDays = 45.0;
inline constexpr double kFatigueDays = 15.0;
/// Weight of a day's load in fatigue against fitness.
inline constexpr double kFatigueWeight = 2.0;
/// Share of the max that habitual training stands for in the fitness sum: g above.
inline constexpr double kFitnessShare = 0.292;

struct WhatIfWeek
{
    QDate sunday;               ///< the day that ends the week
    strength::Band max;         ///< competition max
    strength::Interval fatigue; ///< 1 = as in the lifter's usual weeks
    double tonnageKg = 0.0;     ///< planned and done
};

struct WhatIf
{
    std::vector<WhatIfWeek> weeks;
    QString why; ///< without weeks: why nothing can be said, and what to do
};

/// Two plans in the same futures.
struct WhatIfComparison
{
    WhatIf current;
    WhatIf changed;
    /// By week: max under the changed plan / max under the current one. What is uncertain about the
    /// lifter's max today drops out of it.
    std::vector<strength::Interval> ratio;
};

struct WhatIfInput
{
    const std::vector<Variation> &catalogue;
    const std::vector<LoggedSession> &sessions; ///< of the lifter, from half a year before
    const LiftEstimate &estimate;               ///< of the lift
    Lift lift = Lift::bench;
    QDate from;    ///< first day that is not done yet
    int weeks = 6; ///< the one of `from` counts as the first
};

/// Pure and repeatable: the futures are drawn from a fixed seed.
/// @param cards  of the lifter, each with its loads; those before `from` are left out
[[nodiscard]] WhatIfComparison whatIf(const WhatIfInput &input,
    std::span<const ResolvedCard> current, std::span<const ResolvedCard> changed);

/// Fitness and fatigue after each day, as multiples of what the habit sustains.
struct Response
{
    double fitness = 1.0;
    double fatigue = 1.0;
};
/// @param loads  a day, as multiples of the habit's mean day
/// @throws std::invalid_argument for a time constant that is not above 0
[[nodiscard]] std::vector<Response> respond(std::span<const double> loads, double fitnessDays,
    double fatigueDays, const Response &start = {});

} // namespace core
