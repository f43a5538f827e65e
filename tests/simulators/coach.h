#pragma once

#include "core/strength/training_log.h"
#include "tests/simulators/season_plan.h"

#include <memory>

namespace simulators {

/// Whoever puts the load on the bar. Knows what was planned and what the log says, not the truth.
class Coach
{
public:
    virtual ~Coach() = default;

    /// Told before the first set of a session.
    /// @param log  up to the session, without it
    virtual void startSession(
        const PlannedSession & /*plan*/, int /*day*/, const strength::LifterLog & /*log*/)
    {
    }
    /// Load for the next set of `work`, kg, before rounding.
    [[nodiscard]] virtual double load(const Work &work) const = 0;
    /// Reads what came of a set.
    virtual void read(const Work &work, const strength::TrainingSet &set) = 0;
    virtual void passWeek() = 0;
};

/// Goes by the ratings: holds a belief of the max and moves it a fifth of the way toward what each
/// rated set says by the Epley line, and down on a miss.
/// @param beliefKg  competition max believed at the start
[[nodiscard]] std::unique_ptr<Coach> coachByRating(double beliefKg);

/// Goes by formula: percents of an assumed max that is raised by `stepKg` every three weeks, and
/// cut by 5 % after a week with two misses or more. Never looks at a rating.
[[nodiscard]] std::unique_ptr<Coach> coachByFormula(double assumedKg, double stepKg);

} // namespace simulators
