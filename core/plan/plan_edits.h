#pragma once

#include "core/domain/card_order.h"
#include "core/domain/edit.h"

#include <QString>
#include <vector>

/// What a coach does to cards, as edits. All take `cards`: every card of one lifter on the days
/// concerned, in any order (more days do no harm); core/domain/card_order.h says how they stand.
/// @throws std::invalid_argument for a card id that is not among `cards`
namespace core {

/// The edit that makes `after` of `before`: only the rows that differ.
[[nodiscard]] Edit difference(const std::vector<Card> &before, const std::vector<Card> &after);

/// Puts `card` (with its new id) on card.day at card.position.
[[nodiscard]] Edit addCard(const std::vector<Card> &cards, const Card &card);

/// `position` is the place that the card has afterwards. Empty when nothing would change.
[[nodiscard]] Edit moveCard(const std::vector<Card> &cards, CardId id, QDate day, int position);

/// Several at once, all or none: new cards, each put on its day at its position, one after the
/// other; cards taken out.
[[nodiscard]] Edit addCards(const std::vector<Card> &cards, const std::vector<Card> &added);
[[nodiscard]] Edit removeCards(const std::vector<Card> &cards, const std::vector<CardId> &ids);

/// Empty when the text is what is there.
[[nodiscard]] Edit changeSetLine(const std::vector<Card> &cards, CardId id, const QString &setLine);
/// The same sets in another variation.
[[nodiscard]] Edit changeVariation(
    const std::vector<Card> &cards, CardId id, VariationId variation);
[[nodiscard]] Edit changeNote(const std::vector<Card> &cards, CardId id, const QString &note);

} // namespace core
