#include "core/loads/far_above_max.h"

#include "core/domain/text.h"
#include "core/loads/effort.h"
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

QString whyFarAboveMax(const SetEntry &set, const Variation &variation, QDate day,
    const LiftEstimate *estimate, Unit unit)
{
    return whyFarAboveMax(set.loadKg, std::max(set.repsDone, 1), variation, day, estimate, unit);
}

QString whyFarAboveMax(const ResolvedCard &card, const PlanSources &sources)
{
    const Variation *variation = find(sources.variations, card.card.variation);
    if (!variation)
        return {};
    const auto why = [&](const ResolvedLine &line, const Variation *part, int reps) {
        return part ? whyFarAboveMax(line.load->loadKg, reps, *part, card.card.day,
                   sources.estimateOf(part->lift), sources.lifter.unit)
                    : QString();
    };
    for (const ResolvedLine &line : card.lines) {
        if (!line.load)
            continue;
        const int lead = line.line.leadReps;
        if (const QString words = why(line, variation, lead > 0 ? lead : line.line.reps);
            !words.isEmpty())
            return words;
        if (lead == 0)
            continue;
        const Variation *rest = restVariation(line.line, *variation, sources.variations);
        if (const QString words = why(line, rest, line.line.reps); !words.isEmpty())
            return words;
    }
    return {};
}

} // namespace core
