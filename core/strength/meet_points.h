#pragma once

#include "core/strength/training_log.h"

#include <optional>

/// Points that compare lifters of different bodyweight. The coefficients are from memory of the
/// published tables: the federation's own table decides.
namespace strength {

enum class Equipment { classic, equipped };

/// GL points for the bench press alone: 100 x / (A - B exp(-C bodyweight)), x = result in kg.
/// Empty where the sex is not stated, or where the bodyweight is so low that the formula has no
/// value.
/// @throws std::invalid_argument for a bodyweight not above 0 or a result below 0
[[nodiscard]] std::optional<double> benchGlPoints(
    LifterLog::Sex sex, Equipment equipment, double bodyweightKg, double resultKg);

/// DOTS: 500 x / (a polynomial of fourth degree in the bodyweight), x = total (or any result) in
/// kg. The polynomial is held at its ends outside 40..210 kg (men) and 40..150 kg (women).
/// Empty where the sex is not stated.
/// @throws std::invalid_argument as benchGlPoints()
[[nodiscard]] std::optional<double> dots(LifterLog::Sex sex, double bodyweightKg, double resultKg);

} // namespace strength
