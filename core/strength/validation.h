#pragma once

#include "core/strength/training_log.h"

#include <span>

/// The rules of the engine's input, checked once at its public entries.
namespace strength {

/// Days that the engine takes, in days from 1970-01-01: about 200 years either way.
inline constexpr int kFarthestDay = 73'000;

/// @throws std::invalid_argument for no row, or a row with ratio or repCost not above 0 or spread
///         below 0; it names the row
void checkVariations(std::span<const VariationPrior> variations);

/// @param index  the log's place in the roster, for the message
/// @throws std::invalid_argument for a set whose variation is no row, whose load is not a finite
///         number above 0, whose rating is not in 1..10, whose reps are below 0, or 0 without a
///         miss, or a day beyond kFarthestDay; it names log, session and set
void checkLog(const LifterLog &log, size_t variations, size_t index);

} // namespace strength
