#include "core/plan/block_edits.h"

#include "core/domain/text.h"
#include "core/domain/week.h"
#include "core/plan/plan_edits.h"
#include "core/plan/template.h"

#include <QLocale>
#include <algorithm>

namespace core {

namespace {

QString shortDay(QDate day)
{
    return QLocale().toString(day, QLocale::ShortFormat);
}

/// Why the block cannot stand in the plan; empty when it can.
QString whyNot(const Block &block, const PlanOfLifter &plan)
{
    if (const QStringList wrong = problems(block); !wrong.isEmpty())
        return wrong.join(u' ');
    for (const Block &other : plan.blocks)
        if (other.id != block.id && other.start <= block.end() && block.start <= other.end())
            return Text::tr("It would overlap %1, %2 to %3. Choose other weeks, or shift that one "
                            "first.")
                .arg(other.name, shortDay(other.start), shortDay(other.end()));
    return {};
}

RowChange<Block> replaced(const Block &block, const PlanOfLifter &plan)
{
    RowChange<Block> change{{}, {block}};
    for (const Block &before : plan.blocks)
        if (before.id == block.id)
            change.before = {before};
    return change.before == change.after ? RowChange<Block>() : change;
}

} // namespace

const Block *blockOn(std::span<const Block> blocks, QDate day)
{
    const auto block =
        std::ranges::find_if(blocks, [day](const Block &b) { return b.contains(day); });
    return block == blocks.end() ? nullptr : &*block;
}

std::vector<Card> cardsOf(const Block &block, std::span<const Card> cards)
{
    std::vector<Card> chosen;
    std::ranges::copy_if(cards, std::back_inserter(chosen),
        [&block](const Card &card) { return block.contains(card.day); });
    return chosen;
}

BlockEdit putBlock(const Block &block, const PlanOfLifter &plan)
{
    BlockEdit result;
    result.refused = whyNot(block, plan);
    if (result.refused.isEmpty())
        result.edit.blocks = replaced(block, plan);
    return result;
}

BlockEdit removeBlock(const Block &block, const PlanOfLifter &plan, bool withCards)
{
    BlockEdit result;
    result.edit.blocks.before = {block};
    if (withCards)
        result.edit.cards.before = cardsOf(block, plan.cards);
    return result;
}

BlockEdit shiftBlock(const Block &block, const PlanOfLifter &plan, int days)
{
    Block shifted = block;
    shifted.start = block.start.addDays(days);
    BlockEdit result = putBlock(shifted, plan);
    if (!result.refused.isEmpty() || days == 0)
        return result;

    std::vector<Card> staying;
    for (const Card &card : plan.cards)
        if (!block.contains(card.day))
            staying.push_back(card);
    std::vector<Card> moving = cardsOf(block, plan.cards);
    for (Card &card : moving)
        card.day = card.day.addDays(days);
    for (const Card &card : staying)
        if (shifted.contains(card.day)) {
            result.remarks << Text::tr("%1 and later days held cards already; they stay, above "
                                       "those of the block.")
                                  .arg(shortDay(card.day));
            break;
        }
    Edit moved = layOut(staying, moving, OnOccupiedDays::keep);
    // The new rows of layOut() are the moved ones: their old rows go.
    std::vector<Card> after = staying;
    for (const Card &gone : moved.cards.before)
        std::erase(after, gone);
    after.insert(after.end(), moved.cards.after.begin(), moved.cards.after.end());
    result.edit.cards = difference(plan.cards, after).cards;
    return result;
}

Block copyOf(const Block &block, std::span<const Block> blocks, BlockId id)
{
    Block copy = block;
    copy.id = id;
    copy.templateId = {};
    for (const Block &other : blocks)
        copy.start = std::max(copy.start, other.end().addDays(1));
    return copy;
}

BlockEdit copyBlock(
    const Block &block, const Block &copy, const PlanOfLifter &plan, const NewCardId &newId)
{
    BlockEdit result = putBlock(copy, plan);
    if (result.refused.isEmpty())
        result.edit.cards =
            copyDays(plan.cards, block.start, kWeekDays * std::min(block.weeks, copy.weeks),
                plan.cards, copy.lifter, copy.start, OnOccupiedDays::keep, newId)
                .cards;
    return result;
}

Edit copyDays(const std::vector<Card> &cards, QDate from, int days, const std::vector<Card> &target,
    LifterId lifter, QDate to, OnOccupiedDays onOccupied, const NewCardId &newId)
{
    std::vector<Card> rows;
    for (int day = 0; day < days; ++day)
        for (Card row : cardsOn(cards, from.addDays(day))) {
            row.id = newId();
            row.lifter = lifter;
            row.day = to.addDays(day);
            rows.push_back(row);
        }
    return layOut(target, rows, onOccupied);
}

Edit keepTemplate(const BlockTemplate &made, const Block &block)
{
    Block laid = block;
    laid.templateId = made.id;
    Edit edit;
    edit.templates.after = {made};
    edit.blocks = {{block}, {laid}};
    return edit;
}

Block blockFor(const BlockTemplate &layout, std::span<const Block> blocks,
    std::span<const BlockTemplate> templates, QDate start, const std::function<BlockId()> &newId)
{
    if (const Block *there = blockOn(blocks, start))
        for (const BlockTemplate &each : templates)
            if (each.id == there->templateId && each.name == layout.name)
                return *there;
    Block block;
    block.id = newId();
    block.name = layout.name;
    block.start = start;
    return block;
}

BlockEdit layTemplate(const BlockTemplate &layout, Block block, const Lifter &lifter,
    const PlanOfLifter &plan, std::span<const BlockTemplate> templates,
    std::span<const Variation> catalogue, const NewCardId &newId)
{
    const auto before = std::ranges::find_if(
        templates, [&block](const BlockTemplate &each) { return each.id == block.templateId; });
    block.lifter = lifter.id;
    block.weeks = layout.weeks;
    block.purpose = layout.purpose;
    block.deloadWeeks = layout.deloadWeeks;
    block.templateId = layout.id;
    BlockEdit result = putBlock(block, plan);
    if (!result.refused.isEmpty())
        return result;
    TemplateResult laid = applyTemplate(layout,
        {lifter, block.start, catalogue, plan.cards,
            before == templates.end() ? nullptr : &*before},
        newId);
    result.edit.cards = std::move(laid.edit.cards);
    result.remarks += laid.remarks;
    return result;
}

} // namespace core
