#pragma once

#include "core/strength/training_log.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

/// What a coach does without a model. Each baseline turns a log into an estimate of the competition
/// max, and is printed beside the engine wherever the engine is judged.
///
/// All read the competition lift only, take reps to failure = reps + RIR (10 - rating), and leave
/// out sets beyond ten such reps, for which the equations were not made. A missed set counts with
/// no reserve; an unrated one only for the best set, with no reserve, since its reserve is unknown.
namespace benchmarks {

struct Baseline
{
    std::string_view name;
    /// The estimate at the end of `day`, from sets up to it. Empty without a set in the window.
    std::optional<double> (*estimate)(const strength::LifterLog &log, int day);
};

/// Best Epley in 4 weeks; means of Epley and of Brzycki over 3 and over 6 weeks.
[[nodiscard]] std::span<const Baseline> windowBaselines();

/// A baseline's estimate at each of `days` (ascending); where its window is empty the last one is
/// carried on. NaN before the first.
[[nodiscard]] std::vector<double> carriedForward(
    const Baseline &baseline, const strength::LifterLog &log, std::span<const int> days);

/// Mean of ln(Epley max) in each of the weeks that end on `sundays`; NaN without a set: the series
/// that the local level is fitted to.
[[nodiscard]] std::vector<double> weeklyLogEpley(
    const strength::LifterLog &log, std::span<const int> sundays);

/// Epley (1985): load (1 + reps / 30), and the load itself at one rep.
[[nodiscard]] double epley(double loadKg, double reps);
/// Brzycki (1993): 36 load / (37 - reps).
[[nodiscard]] double brzycki(double loadKg, double reps);

} // namespace benchmarks
