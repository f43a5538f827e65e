#pragma once

#include "core/strength/training_log.h"

#include <optional>
#include <span>

/// Measures of how much was done. They describe; they predict no injury: Impellizzeri et al.
/// (2020), Int J Sports Physiol Perform 15(6):907-913, warn against the acute:chronic ratio, which
/// is left out here.
namespace strength {

/// Sum of load times reps, kg.
[[nodiscard]] double tonnage(std::span<const TrainingSet> sets);

/// Repetitions completed; the trade's "number of lifts".
[[nodiscard]] int numberOfLifts(std::span<const TrainingSet> sets);

/// tonnage / (reps x max): mean load of a rep as a share of the max. Empty without reps.
/// @throws std::invalid_argument for a max not above 0
[[nodiscard]] std::optional<double> averageIntensity(
    std::span<const TrainingSet> sets, double maxKg);

/// Rating of the session (0..10) x its minutes. Foster (1998), Med Sci Sports Exerc
/// 30(7):1164-1168; Foster et al. (2001), J Strength Cond Res 15(1):109-115.
/// @throws std::invalid_argument for a rating outside 0..10 or minutes below 0
[[nodiscard]] double sessionLoad(double rating, double minutes);

/// Mean daily load / its SD (n - 1) over some days, days off with load 0; empty for fewer than two
/// days or where all days are alike. Foster (1998).
[[nodiscard]] std::optional<double> monotony(std::span<const double> dailyLoads);

/// Sum of the daily loads x monotony; empty where monotony is. Foster (1998).
[[nodiscard]] std::optional<double> strain(std::span<const double> dailyLoads);

} // namespace strength
