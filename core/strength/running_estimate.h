#pragma once

#include "core/strength/estimator.h"
#include "core/strength/lifter_filter.h"

namespace strength {

/// The filtered estimate of one lifter while a session is under way: adding a set costs the reading
/// of that session, whatever the length of the log.
class RunningEstimate
{
public:
    /// Reads the log, whose rows and values are sound (core/strength/validation.h).
    /// @param priors  of the roster (pooling.h) or publishedPriors()
    RunningEstimate(const LifterLog &log, const RosterPriors &priors);

    /// Adds the next set.
    /// @throws std::invalid_argument for a day before the last session's, or a set that
    ///         core/strength/validation.h rejects
    void add(int day, const TrainingSet &set);

    /// The competition max as it is known now; empty before the first set.
    [[nodiscard]] std::optional<Band> max() const;

private:
    LifterFilter m_before; ///< without the session at hand
    LifterFilter m_now;
    TrainingSession m_session; ///< at hand
};

} // namespace strength
