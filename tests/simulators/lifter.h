#pragma once

#include "core/strength/training_log.h"
#include "tests/simulators/bar_speed.h"
#include "tests/simulators/coach.h"
#include "tests/simulators/day_form.h"
#include "tests/simulators/level_path.h"
#include "tests/simulators/rater.h"
#include "tests/simulators/season_plan.h"
#include "tests/simulators/set_capacity.h"
#include "tests/simulators/set_fatigue.h"

#include <memory>
#include <optional>
#include <vector>

namespace simulators {

/// Everything that makes one lifter, composed from the pieces.
struct Makeup
{
    strength::LifterLog::Sex sex = strength::LifterLog::Sex::unstated;
    std::optional<double> bodyweightKg;
    double startKg = 100.0; ///< competition max on the first day
    Capacity capacity;
    LevelPath level;
    DayFormTraits form;
    SetFatigueTraits fatigue;
    RaterTraits rater;
    PlanTraits plan;
    std::unique_ptr<Coach> coach;
    std::optional<BarSpeedTraits> barSpeed; ///< set = the bar's velocity is measured
    double setNoise = 0.006;                ///< SD between sets of a session, ln units
    double stopsShort = 0.3; ///< chance to rack a set that has no rep left rather than miss one
    double typos = 0.0;      ///< chance that a set is mistyped
};

/// What was true of one logged set.
struct SetTruth
{
    double possible = 0.0; ///< reps that could have been done, as a real number
    double fatigue = 0.0;  ///< ln units lost to the sets before
};

/// A log and the truth behind it.
struct SimulatedLifter
{
    strength::LifterLog log;
    int firstDay = 0; ///< a Monday
    /// True competition max, kg, on a day of the lifter's average form: training is all that a log
    /// shows, so what every session loses to soreness and other lifts is part of the level.
    std::vector<double> maxByDay;
    std::vector<double> biasByWeek;          ///< rating bias, reps
    std::vector<double> formBySession;       ///< ln units around the average
    std::vector<std::vector<SetTruth>> sets; ///< by session, in step with the log
    Capacity capacity;
    RaterTraits rater;

    [[nodiscard]] double maxOn(int day) const { return maxByDay.at(size_t(day - firstDay)); }
};

/// First day of every simulated log: Monday 1 January 2024, days from 1970-01-01.
inline constexpr int kFirstDay = 19723;

/// Lives through `weeks` weeks day by day.
[[nodiscard]] SimulatedLifter simulate(Makeup makeup, int weeks, Random random);

} // namespace simulators
