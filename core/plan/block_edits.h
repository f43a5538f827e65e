#pragma once

#include "core/domain/edit.h"
#include "core/plan/lay_out.h"

#include <QString>
#include <QStringList>
#include <functional>
#include <span>
#include <vector>

/// What a coach does to whole blocks, days and weeks, as edits. Cards belong to a block by their
/// day alone, so that a card dragged out of it leaves it.
namespace core {

/// What an action comes to, or why it cannot be done.
struct BlockEdit
{
    Edit edit;
    QStringList remarks; ///< what the coach should see about it
    QString refused;     ///< not empty: nothing can be done, and why
};

/// The plan of one lifter that a block action works in.
struct PlanOfLifter
{
    const std::vector<Card> &cards;   ///< all on the days concerned; more do no harm
    const std::vector<Block> &blocks; ///< all of the lifter
};

using NewCardId = std::function<CardId()>;

/// The block of the day; null where there is none.
[[nodiscard]] const Block *blockOn(std::span<const Block> blocks, QDate day);

[[nodiscard]] std::vector<Card> cardsOf(const Block &block, std::span<const Card> cards);

/// A new block, or the one with its id replaced: name, purpose, weeks, deloads, start. Its cards
/// stay on their days.
[[nodiscard]] BlockEdit putBlock(const Block &block, const PlanOfLifter &plan);

/// Takes the block away; with its cards where they are to go too.
[[nodiscard]] BlockEdit removeBlock(const Block &block, const PlanOfLifter &plan, bool withCards);

/// Moves the block and its cards by some days. What stands on the days it comes to stays, above it.
[[nodiscard]] BlockEdit shiftBlock(const Block &block, const PlanOfLifter &plan, int days);

/// A copy under a new id behind the last block, where there is room; of no template.
[[nodiscard]] Block copyOf(const Block &block, std::span<const Block> blocks, BlockId id);

/// Puts `copy` in the plan with copies of the block's cards, of as many weeks as both have.
[[nodiscard]] BlockEdit copyBlock(
    const Block &block, const Block &copy, const PlanOfLifter &plan, const NewCardId &newId);

/// Copies the cards of `days` days from `from` on to those from `to` on, of the same or of another
/// lifter. Days without a card leave their target alone.
/// @param cards   of the lifter copied from
/// @param target  of the lifter copied to
[[nodiscard]] Edit copyDays(const std::vector<Card> &cards, QDate from, int days,
    const std::vector<Card> &target, LifterId lifter, QDate to, OnOccupiedDays onOccupied,
    const NewCardId &newId);

/// Lays a template on a lifter from the first day of `block` on (core/plan/template.h) and puts the
/// block in the plan, its weeks, purpose and deloads those of the template. A block with a template
/// is laid anew: the lifter's differences from that version are kept.
/// @param templates  all versions, to find the one that the block was laid out by
[[nodiscard]] BlockEdit layTemplate(const BlockTemplate &layout, Block block, const Lifter &lifter,
    const PlanOfLifter &plan, std::span<const BlockTemplate> templates,
    std::span<const Variation> catalogue, const NewCardId &newId);

/// Stores the template; the block is what it says now, so that later versions are merged against
/// this one.
[[nodiscard]] Edit keepTemplate(const BlockTemplate &made, const Block &block);

/// The block that a template of this name goes on when it is laid out from `start`: the one there
/// that an earlier version made, else a new one.
/// @param templates  all versions
[[nodiscard]] Block blockFor(const BlockTemplate &layout, std::span<const Block> blocks,
    std::span<const BlockTemplate> templates, QDate start, const std::function<BlockId()> &newId);

} // namespace core
