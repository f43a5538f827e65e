#pragma once

#include "core/strength/roster_priors.h"

#include <exception>
#include <functional>
#include <span>
#include <stop_token>

namespace strength {

/// A fit was stopped before its end: there is no result.
struct Stopped : std::exception
{
    [[nodiscard]] const char *what() const noexcept override { return "stopped"; }
};

/// Runs `work(i)` for i in 0..count-1 on all processors; rethrows the first exception.
/// @param stop  no further work is begun once it is asked for
/// @throws Stopped when some of the work was left out
void forEachOnAllProcessors(
    size_t count, const std::function<void(size_t)> &work, const std::stop_token &stop = {});

/// Learns what lifters have in common from those at hand (empirical Bayes by expectation
/// maximisation, Dempster, Laird & Rubin 1977): the means and spreads of the lifters' constants,
/// the drift, the day form and the noise of ratings. The published values count as several lifters
/// more, so that a small roster stays near them. Of a large roster a sample is enough.
/// @throws Stopped
[[nodiscard]] RosterPriors pooledPriors(std::span<const LifterLog> logs,
    const RosterPriors &published, const std::stop_token &stop = {});

} // namespace strength
