#pragma once

#include "core/loads/given_loads.h"

#include <stop_token>

namespace core {

/// All that days gone by are worked out from. Values: it may go to another thread.
struct PassedDays
{
    const Lifter &lifter;
    std::span<const Variation> variations;
    std::span<const Card> cards;             ///< of the lifter, all of the days asked for
    std::span<const LoggedSession> sessions; ///< of the lifter, by day
    std::span<const GivenDay> given;         ///< of the lifter
    const LearntLifts &learnt;
};

/// A day that has passed was given as it stood: each of the days of the cards that is not given yet
/// is worked out by what was known on it, which are the sets of the days before, and what the
/// roster teaches by now.
/// @throws strength::Stopped once a stop is asked for
[[nodiscard]] std::vector<GivenDay> givePassedDays(
    const PassedDays &passed, const Giving &giving, const std::stop_token &stop = {});

} // namespace core
