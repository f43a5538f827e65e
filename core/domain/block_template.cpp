#include "core/domain/block_template.h"

#include "core/domain/block.h"
#include "core/domain/text.h"
#include "core/domain/week.h"

#include <algorithm>
#include <set>

namespace core {

namespace {

bool isSound(const BlockTemplate &block, const TemplateCard &card)
{
    return card.dayOffset >= 0 && card.dayOffset < kWeekDays * block.weeks && card.position >= 0
        && !card.code.isEmpty();
}

} // namespace

QStringList problems(const BlockTemplate &block)
{
    QStringList wrong;
    if (block.name.trimmed().isEmpty())
        wrong << Text::tr("A template needs a name.");
    if (block.version < 1)
        wrong << Text::tr("Versions count from 1.");
    wrong << weekProblems(block.weeks, block.deloadWeeks);
    std::set<int> keys;
    for (const TemplateCard &card : block.cards)
        keys.insert(card.key);
    if (keys.size() != block.cards.size())
        wrong << Text::tr("Two cards of the template have the same key.");
    if (!std::ranges::all_of(
            block.cards, [&block](const TemplateCard &card) { return isSound(block, card); }))
        wrong << Text::tr("Every card has a variation and lies within the weeks of the template.");
    if (std::ranges::any_of(block.swaps,
            [](const TouchSwap &swap) { return swap.soft.isEmpty() || swap.sinking.isEmpty(); }))
        wrong << Text::tr("A swap names a variation for each touch style.");
    return wrong;
}

} // namespace core
