#include "core/loads/resolved_cards.h"

#include "core/loads/effort.h"
#include "core/loads/given_loads.h"
#include "core/loads/limited_lines.h"

#include <algorithm>
#include <map>

namespace core {

namespace {

constexpr int kUsualSets = 3;
constexpr int kUsualReps = 5;
constexpr double kUsualRpe = 8.0;
// Where speed is the aim: more sets of fewer reps (common practice, no source).
constexpr int kUsualSpeedSets = 6;
constexpr int kUsualSpeedReps = 3;

} // namespace

std::vector<ResolvedCard> resolveCards(std::vector<Card> cards, const PlanSources &sources)
{
    std::ranges::stable_sort(cards, isAbove);
    const PlateTable plates = platesOf(sources.lifter);
    std::map<std::pair<QDate, Lift>, double> hardSets;
    std::vector<ResolvedCard> resolved;
    for (const Card &card : cards) {
        ResolvedCard result{card, parseSetLines(card.setLine), {}};
        const Variation *variation = find(sources.variations, card.variation);
        if (!result.parsed.error && variation) {
            const LoadBasis basis{sources.estimateOf(variation->lift), plates, sources.lifter.unit,
                card.day, sources.variations};
            double &before = hardSets[{card.day, variation->lift}];
            result.lines = resolve(result.parsed.lines, card.variation, basis, before);
        }
        if (const GivenDay *day = givenOn(sources.given, card.lifter, card.day))
            takeGiven(result, *day, plates, card.day >= sources.today);
        if (variation && !variation->assistance && !result.lines.empty())
            hardSets[{card.day, variation->lift}] = result.lines.back().hardSetsAfter;
        resolved.push_back(std::move(result));
    }
    applyLimits(resolved, sources);
    return resolved;
}

PlateTable platesOf(const Lifter &lifter)
{
    return PlateTable(problems(lifter.gear).isEmpty() ? lifter.gear : usualGear(lifter.unit));
}

const std::vector<CheckIn> &noCheckIns()
{
    static const std::vector<CheckIn> kNone;
    return kNone;
}

QString suggestedSetLine(const Variation &variation, const std::vector<Card> &earlier, QDate day,
    const DayLimits &limits)
{
    const Card *last = nullptr;
    for (const Card &card : earlier)
        if (card.variation == variation.id && card.day <= day
            && card.day >= day.addDays(-kSuggestionDays) && !card.setLine.trimmed().isEmpty()
            && (!last || isAbove(*last, card)))
            last = &card;
    if (last) {
        ParsedSetLines parsed = parseSetLines(last->setLine);
        if (limits.mayWriteMaximal() || parsed.error)
            return last->setLine;
        const std::vector<SetLine> had = parsed.lines;
        for (SetLine &line : parsed.lines)
            line = withoutMaximal(line);
        return parsed.lines == had ? last->setLine : setLineText(parsed.lines);
    }
    if (variation.usualPercent)
        return setLineText(SetLine{kUsualSpeedSets,
            std::clamp(kUsualSpeedReps, variation.repsLow, variation.repsHigh),
            ShareTarget{*variation.usualPercent}});
    const int reps = std::clamp(kUsualReps, variation.repsLow, variation.repsHigh);
    return setLineText(SetLine{kUsualSets, reps, RpeTarget{kUsualRpe}});
}

} // namespace core
