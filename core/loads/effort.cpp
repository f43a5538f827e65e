#include "core/loads/effort.h"

#include "core/domain/text.h"
#include "core/loads/estimate_words.h"
#include "core/safety/unknown_age.h"
#include "core/strength/prescription.h"

#include <algorithm>
#include <cmath>

namespace core {

namespace {

/// The highest RPE asked for.
std::optional<double> rpeAsked(const Target &target)
{
    if (const auto *rpe = std::get_if<RpeTarget>(&target))
        return rpe->to.value_or(rpe->rpe);
    if (const auto *rir = std::get_if<ReserveTarget>(&target))
        return 10.0 - rir->rir;
    return std::nullopt;
}

} // namespace

const Variation *restVariation(
    const SetLine &line, const Variation &variation, std::span<const Variation> catalogue)
{
    if (line.leadReps == 0)
        return &variation;
    if (line.restCode.isEmpty())
        return competitionOf(catalogue, variation.lift);
    return withCode(catalogue, line.restCode);
}

std::optional<double> shareOfMax(
    double loadKg, VariationId variation, QDate day, const LiftEstimate *estimate)
{
    const int row = estimate ? estimate->rowOf(variation) : -1;
    if (row < 0 || !carriesLoads(estimate->estimate.standing))
        return std::nullopt;
    const auto max =
        strength::loadFor(estimate->estimate, engineDay(day), estimate->priors, {row, 1, 0.0, 0});
    return max ? std::optional(std::round(loadKg / max->kg * 1e6) / 1e6) : std::nullopt;
}

std::optional<double> shareOfMax(const ResolvedLine &line, const Variation &variation, QDate day,
    const LiftEstimate *estimate, std::span<const Variation> catalogue)
{
    if (!line.load)
        return std::nullopt;
    std::optional<double> share = shareOfMax(line.load->loadKg, variation.id, day, estimate);
    const Variation *rest = restVariation(line.line, variation, catalogue);
    if (rest && rest != &variation)
        share = std::max(share, shareOfMax(line.load->loadKg, rest->id, day, estimate));
    return share;
}

SetEffort askedEffort(
    const SetLine &line, const Variation &variation, std::span<const Variation> catalogue)
{
    SetEffort effort;
    effort.variation = restVariation(line, variation, catalogue);
    if (line.leadReps > 0)
        effort.lead = &variation;
    effort.reps = expectedReps(line);
    effort.isOpenEnded = line.asManyAsPossible && !line.mostReps;
    effort.rpe = rpeAsked(line.target);
    if (const auto *share = std::get_if<ShareTarget>(&line.target))
        effort.shareOfMax = share->percent / 100.0;
    return effort;
}

SetEffort effortOf(const ResolvedLine &line, const Variation &variation, QDate day,
    const LiftEstimate *estimate, std::span<const Variation> catalogue)
{
    SetEffort effort = askedEffort(line.line, variation, catalogue);
    // What is not known is the smaller of two.
    effort.shareOfMax =
        std::max(effort.shareOfMax, shareOfMax(line, variation, day, estimate, catalogue));
    if (line.lastReserve) {
        // A rep more leaves one fewer in reserve.
        const int beyond = line.line.asManyAsPossible && line.line.mostReps
            ? *line.line.mostReps - expectedReps(line.line)
            : 0;
        const double rpe = rpeFromReserve(line.lastReserve->value - beyond);
        effort.rpe = std::max(effort.rpe, std::optional(std::round(rpe * 2.0) / 2.0));
    }
    return effort;
}

QString withoutMaximalWords(const DayLimits &limits, const QString &now, const QString &was)
{
    return Text::tr("%1 in place of %2. %3")
        .arg(now, was,
            limits.isBeginner() ? Text::tr("Minors and novices get no maximal work.")
                                : whyNoMaximalYet(limits));
}

SetLine withoutMaximal(const SetLine &line)
{
    SetLine lighter = line;
    if (rpeAsked(line.target).value_or(0.0) > kMaximalRpe) {
        if (std::holds_alternative<RpeTarget>(line.target))
            lighter.target = RpeTarget{kMostRpeWithoutMaximal};
        else
            lighter.target = ReserveTarget{10.0 - kMostRpeWithoutMaximal};
    }
    if (auto *share = std::get_if<ShareTarget>(&lighter.target);
        share && share->percent / 100.0 >= kMaximalShare)
        share->percent = kMostShareWithoutMaximal;
    if (line.asManyAsPossible && !line.mostReps)
        lighter.mostReps = std::max(line.reps, kFewestRepsWithoutMaximal);
    return lighter;
}

} // namespace core
