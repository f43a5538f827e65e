#include "core/loads/limited_lines.h"

#include "core/domain/text.h"
#include "core/loads/effort.h"
#include "core/loads/estimate_words.h"
#include "core/loads/manner_cost.h"
#include "core/strength/prescription.h"

#include <algorithm>
#include <map>

namespace core {

namespace {

/// With two reps in reserve, on the plates and lighter than planned; a single or double as if it
/// were a set of three. Empty where the estimate does not carry loads, and for a set for as many as
/// possible, whose load is not what is wrong with it.
std::optional<BarLoad> lighterLoad(const ResolvedLine &line, const Variation &variation, QDate day,
    const PlanSources &sources, const PlateTable &plates)
{
    const LiftEstimate *estimate = sources.estimateOf(variation.lift);
    if (!line.load || line.line.asManyAsPossible || !estimate
        || !carriesLoads(estimate->estimate.standing))
        return std::nullopt;
    const int reps = std::max(expectedReps(line.line), kFewestRepsWithoutMaximal);
    double target = line.load->loadKg;
    for (const Variation *part :
        {&variation, restVariation(line.line, variation, sources.variations)}) {
        const int row = part ? estimate->rowOf(part->id) : -1;
        if (row < 0)
            return std::nullopt;
        const auto load = strength::loadFor(estimate->estimate, engineDay(day), estimate->priors,
            {row, reps, 10.0 - kMostRpeWithoutMaximal, line.hardSetsAfter});
        if (!load)
            return std::nullopt;
        target = std::min(target, load->kg * std::min(mannerFactor(*part, line.line.manner), 1.0));
    }
    const BarLoad lighter = plates.round(target, Rounding::down);
    if (lighter.loadKg > target || lighter.loadKg >= line.load->loadKg)
        return std::nullopt;
    return lighter;
}

/// What is said of the lines, each thing once; of several lines with the sets it is about.
template <class WordsOf> QStringList ofCard(const ResolvedCard &card, WordsOf wordsOf)
{
    const bool areAllAlike = std::ranges::all_of(card.lines,
        [&](const ResolvedLine &line) { return wordsOf(line) == wordsOf(card.lines.front()); });
    QStringList said;
    for (const ResolvedLine &line : card.lines)
        if (const QString words = wordsOf(line); !words.isEmpty())
            said << (areAllAlike ? words : Text::tr("%1: %2").arg(setLineText(line.line), words));
    said.removeDuplicates();
    return said;
}

} // namespace

void applyLimits(std::span<ResolvedCard> cards, const PlanSources &sources)
{
    const PlateTable plates = platesOf(sources.lifter);
    std::map<QDate, DayLimits> limitsOf;
    for (ResolvedCard &card : cards) {
        const QDate day = card.card.day;
        const Variation *variation = find(sources.variations, card.card.variation);
        if (!variation)
            continue;
        const auto [limits, isNew] = limitsOf.try_emplace(day);
        if (isNew)
            limits->second = limitsOn(sources.lifter, day, sources.checkIns);
        for (ResolvedLine &line : card.lines) {
            const SetEffort effort = effortOf(
                line, *variation, day, sources.estimateOf(variation->lift), sources.variations);
            line.isMaximal = isMaximal(effort);
            line.withheld = whyWithheld(limits->second, effort);
            line.lighter.reset();
            // In pain nothing stands in for it: nobody knows what is light enough.
            if (!line.withheld.isEmpty() && limits->second.pains.empty())
                line.lighter = lighterLoad(line, *variation, day, sources, plates);
        }
    }
}

QString withheldWords(const ResolvedLine &line, Unit unit)
{
    if (line.withheld.isEmpty() || !line.lighter)
        return line.withheld;
    return Text::tr("%1 Lighter: %2.").arg(line.withheld, formatLoad(line.lighter->loadKg, unit));
}

QStringList withheldWords(const ResolvedCard &card, Unit unit)
{
    return ofCard(card, [unit](const ResolvedLine &line) { return withheldWords(line, unit); });
}

QString easedWords(const ResolvedLine &line, Unit unit)
{
    return line.eased.isEmpty() || !line.lighter
        ? QString()
        : Text::tr("%1: %2.").arg(line.eased, formatLoad(line.lighter->loadKg, unit));
}

QStringList easedWords(const ResolvedCard &card, Unit unit)
{
    return ofCard(card, [unit](const ResolvedLine &line) { return easedWords(line, unit); });
}

} // namespace core
