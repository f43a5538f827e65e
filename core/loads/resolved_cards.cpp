#include "core/loads/resolved_cards.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace core {

namespace {

constexpr int kUsualSets = 3;
constexpr int kUsualReps = 5;
constexpr double kUsualRpe = 8.0;

} // namespace

std::vector<ResolvedCard> resolveCards(std::vector<Card> cards, const PlanSources &sources)
{
    std::stable_sort(cards.begin(), cards.end(), [](const Card &a, const Card &b) {
        return std::tie(a.day, a.position) < std::tie(b.day, b.position);
    });
    const PlateTable plates = platesOf(sources.lifter);
    std::map<std::pair<QDate, Lift>, double> hardSets;
    std::vector<ResolvedCard> resolved;
    for (const Card &card : cards) {
        ResolvedCard result{card, parseSetLines(card.setLine), {}};
        const auto variation = std::find_if(sources.variations.begin(), sources.variations.end(),
            [&card](const Variation &v) { return v.id == card.variation; });
        if (!result.parsed.error && variation != sources.variations.end()) {
            const LoadBasis basis{sources.estimateOf(variation->lift), plates, sources.lifter.unit,
                card.day, sources.variations};
            double &before = hardSets[{card.day, variation->lift}];
            result.lines = resolve(result.parsed.lines, card.variation, basis, before);
            if (!result.lines.empty())
                before = result.lines.back().hardSetsAfter;
        }
        resolved.push_back(std::move(result));
    }
    return resolved;
}

PlateTable platesOf(const Lifter &lifter)
{
    return PlateTable(problems(lifter.gear).isEmpty() ? lifter.gear : usualGear(lifter.unit));
}

QString suggestedSetLine(const Variation &variation, const std::vector<Card> &earlier, QDate day)
{
    const Card *last = nullptr;
    for (const Card &card : earlier)
        if (card.variation == variation.id && card.day <= day
            && card.day >= day.addDays(-kSuggestionDays) && !card.setLine.trimmed().isEmpty()
            && (!last || std::tie(last->day, last->position) < std::tie(card.day, card.position)))
            last = &card;
    if (last)
        return last->setLine;
    const int reps = std::clamp(kUsualReps, variation.repsLow, variation.repsHigh);
    return setLineText(SetLine{kUsualSets, reps, RpeTarget{kUsualRpe}});
}

} // namespace core
