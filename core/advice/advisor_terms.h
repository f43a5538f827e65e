#pragma once

#include "core/advice/advisor_situation.h"

/// The rules of the advisor, one by one. All are common practice without a published source.
namespace core {

/// A variation that might fill the slot.
struct Candidate
{
    const Variation &variation;
    int leadReps = 0; ///< as in Advice
};

/// What speaks for and against the candidate; rules that have nothing to say are left out.
[[nodiscard]] std::vector<AdviceTerm> termsFor(const Candidate &candidate, const Situation &now);

/// Whether a variation is done as the first reps of a set before competition reps: few reps at most
/// and high fatigue, as the 4-2-0 tempo bench.
[[nodiscard]] bool leadsWell(const Variation &variation);

} // namespace core
