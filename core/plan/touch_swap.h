#pragma once

#include "core/domain/block_template.h"
#include "core/domain/lifter.h"
#include "core/domain/variation.h"

#include <QString>
#include <span>
#include <vector>

namespace core {

/// The pairs to start with, as far as the catalogue has them (common practice, no source).
[[nodiscard]] std::vector<TouchSwap> usualTouchSwaps(std::span<const Variation> catalogue);

/// The rule as a sentence for the coach: "Off-chest pause bench for a soft touch, long-pause bench
/// for a sinking one."
[[nodiscard]] QString words(const TouchSwap &swap, std::span<const Variation> catalogue);

/// The code that the lifter gets for `code`. The first rule that names it decides; lifters of
/// undecided style get what is written, and so do those whom it suits already.
[[nodiscard]] QString swapped(
    const QString &code, TouchStyle style, std::span<const TouchSwap> swaps);

} // namespace core
