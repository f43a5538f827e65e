#include "core/loads/far_above_max.h"

#include "core/domain/text.h"
#include "core/loads/estimate_words.h"
#include "core/strength/prescription.h"

#include <algorithm>

namespace core {

QString whyFarAboveMax(double loadKg, int reps, const Variation &variation, QDate day,
    const LiftEstimate *estimate, Unit unit)
{
    const int row = estimate ? estimate->rowOf(variation.id) : -1;
    if (row < 0)
        return {};
    if (carriesLoads(estimate->estimate.standing)) {
        const auto most = strength::loadFor(
            estimate->estimate, engineDay(day), estimate->priors, {row, reps, 0.0, 0});
        if (!most || loadKg <= kFarAboveMax * most->high90)
            return {};
        return Text::tr(
            "%1 for %2 reps is far above what the log speaks for: %3 at the most. Is the "
            "load right?")
            .arg(formatLoad(loadKg, unit))
            .arg(reps)
            .arg(formatLoad(most->high90, unit));
    }
    double heaviest = 0.0;
    for (const LoggedSession &session : estimate->readings)
        for (const SetEntry &set : session.sets)
            if (set.variation == variation.id && set.repsDone > 0)
                heaviest = std::max(heaviest, set.loadKg);
    if (heaviest <= 0.0 || loadKg <= kFarAboveMax * heaviest)
        return {};
    return Text::tr("%1 is far above the heaviest set of %2 in the log, %3. Is the load right?")
        .arg(formatLoad(loadKg, unit), variation.name, formatLoad(heaviest, unit));
}

} // namespace core
