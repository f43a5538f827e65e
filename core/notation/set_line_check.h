#pragma once

#include "core/domain/variation.h"
#include "core/notation/set_line.h"

#include <span>

namespace core {

/// As parseSetLines(), for sets of a variation of `lift` that somebody types: what a lead-rep set
/// names for the reps after the lead has to be in the catalogue, and of the lift. Where it is not,
/// the error stands at its code and names the one that was most likely meant.
[[nodiscard]] ParsedSetLines parseSetLines(
    const QString &text, Lift lift, std::span<const Variation> catalogue);

} // namespace core
