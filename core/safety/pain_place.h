#pragma once

#include "core/safety/day_limits.h"

/// What a pain speaks against by where it is.
namespace core {

/// Whether it may work what hurts. A pain of which no area is named may be anywhere: its words are
/// for people, and are not read.
[[nodiscard]] bool mayHurt(const PainFlag &pain, const SetEffort &set);
[[nodiscard]] bool mayHurt(const PainFlag &pain, const Variation &variation);

} // namespace core
