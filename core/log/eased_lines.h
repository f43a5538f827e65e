#pragma once

#include "core/loads/resolved_cards.h"
#include "core/strength/readiness_effect.h"

namespace core {

/// The last step over the cards of today, after resolveCards(): names a lighter load where today's
/// check-in or a miss of today speaks for it, as the plan of the day does in the log
/// (core/log/day_plan.h). What is planned or given stays as it is; lines of which all sets are done
/// and lines that are withheld are left alone.
/// @param cards      all of the lifter's cards of today; those of other days are left alone
/// @param sources    from which they were resolved; what was done today is taken from the estimates
/// @param readiness  of the lifter; null where nothing is known
void easeToday(std::span<ResolvedCard> cards, const PlanSources &sources,
    const strength::ReadinessEffect *readiness);

} // namespace core
