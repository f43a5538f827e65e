#pragma once

#include "core/domain/session.h"

#include <vector>

namespace core {

struct SetsMerged
{
    std::vector<SetEntry> sets;    ///< those present in their places, then the added ones
    std::vector<bool> isTold = {}; ///< one a present set
    int known = 0;                 ///< told ones that were there
    int added = 0;
};

/// Sets of a session after a file told of them. A told set that agrees with one that is there is
/// that one, each counted once: variation, load (to 5 g), reps, rating and miss are the same, and
/// velocity, touch, note and lead reps are the same or blank on one side, which the other then
/// fills. The rest is appended in the order told.
[[nodiscard]] SetsMerged mergeSets(
    const std::vector<SetEntry> &present, const std::vector<SetEntry> &told);

} // namespace core
