#pragma once

#include "core/strength/roster_priors.h"

#include <functional>
#include <span>

namespace strength {

/// Runs `work(i)` for i in 0..count-1 on all processors; rethrows the first exception.
void forEachOnAllProcessors(size_t count, const std::function<void(size_t)> &work);

/// Learns what lifters have in common from those at hand (empirical Bayes by expectation
/// maximisation, Dempster, Laird & Rubin 1977): the means and spreads of the lifters' constants,
/// the drift, the day form and the noise of ratings. The published values count as several lifters
/// more, so that a small roster stays near them. Of a large roster a sample is enough.
[[nodiscard]] RosterPriors pooledPriors(
    std::span<const LifterLog> logs, const RosterPriors &published);

} // namespace strength
