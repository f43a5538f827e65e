#include "core/loads/far_above_max.h"

#include "core/domain/text.h"
#include "core/loads/effort.h"
#include "core/loads/estimate_words.h"
#include "core/strength/prescription.h"

#include <algorithm>

namespace core {

namespace {

constexpr double kLightKg = 75.0; ///< where the bodyweight is not known

double heaviestDone(const LiftEstimate *estimate, VariationId variation)
{
    double heaviest = 0.0;
    if (estimate)
        for (const LoggedSession &session : estimate->readings)
            for (const SetEntry &set : session.sets)
                if (set.variation == variation && set.repsDone > 0)
                    heaviest = std::max(heaviest, set.loadKg);
    return heaviest;
}

} // namespace

double likelyAtMostKg(const Lifter &lifter, Lift lift, QDate day)
{
    const bool isYoung = mayBeMinor(lifter, day) || isNovice(lifter, day);
    const double times = lift == Lift::bench ? (isYoung ? 1.0 : 1.5)
        : lift == Lift::squat                ? (isYoung ? 1.5 : 2.0)
                                             : (isYoung ? 1.75 : 2.25);
    return times * lifter.bodyweightKg.value_or(kLightKg);
}

QString whyFarAboveMax(double loadKg, int reps, const Variation &variation, QDate day,
    const LiftEstimate *estimate, const Lifter &lifter)
{
    const Unit unit = lifter.unit;
    const int row = estimate ? estimate->rowOf(variation.id) : -1;
    if (row >= 0 && carriesLoads(estimate->estimate.standing)) {
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
    const double heaviest = heaviestDone(estimate, variation.id);
    const double most =
        heaviest > 0.0 ? kFarAboveMax * heaviest : likelyAtMostKg(lifter, variation.lift, day);
    if (loadKg <= most)
        return {};
    if (heaviest <= 0.0)
        return Text::tr("%1 is much for a lifter of whom the log has no set of %2. Is the load "
                        "right?")
            .arg(formatLoad(loadKg, unit), variation.name);
    return Text::tr("%1 is far above the heaviest set of %2 in the log, %3. Is the load right?")
        .arg(formatLoad(loadKg, unit), variation.name, formatLoad(heaviest, unit));
}

QString whyFarAboveMax(const SetEntry &set, const Variation &variation, QDate day,
    const LiftEstimate *estimate, const Lifter &lifter)
{
    return whyFarAboveMax(set.loadKg, std::max(set.repsDone, 1), variation, day, estimate, lifter);
}

QString whyFarAboveMax(const ResolvedCard &card, const PlanSources &sources)
{
    const Variation *variation = find(sources.variations, card.card.variation);
    if (!variation)
        return {};
    const auto why = [&](const ResolvedLine &line, const Variation *part, int reps) {
        return part ? whyFarAboveMax(line.load->loadKg, reps, *part, card.card.day,
                   sources.estimateOf(part->lift), sources.lifter)
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
