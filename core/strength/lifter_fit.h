#pragma once

#include "core/strength/chain_smoother.h"
#include "core/strength/lifter_filter.h"

#include <vector>

namespace strength {

/// Everything that one pass over a log gives.
struct LifterFit
{
    struct Week
    {
        int sunday = 0;
        int sets = 0;
        double lnMax = 0.0; ///< filtered
        double variance = 0.0;
        LifterFilter::Footing footing;
    };
    struct Form
    {
        int session = 0; ///< index into the log's sessions
        int day = 0;
        size_t week = 0;
        double mean = 0.0; ///< smoothed, ln units
        double variance = 0.0;
    };

    LifterFilter filter; ///< as of `today`
    PullTrail trail;
    std::vector<Week> weeks;
    std::vector<SmoothedWeek> smoothed; ///< one a week
    std::vector<Form> forms;            ///< by day
    int lastDay = 0;                    ///< of the last set
};

/// Filters and smooths. Sessions without sets are passed over.
/// @param today  the filter runs on without sets to the last Sunday up to here, where the log ends
///               before it
[[nodiscard]] LifterFit fitLifter(const LifterLog &log, const RosterPriors &priors, int today);

} // namespace strength
