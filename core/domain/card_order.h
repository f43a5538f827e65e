#pragma once

#include "core/domain/card.h"

#include <vector>

/// The order of a lifter's cards: positions are 0, 1, 2 ... in each day, without gaps.
namespace core {

/// The cards of one day, by position.
[[nodiscard]] std::vector<Card> cardsOn(const std::vector<Card> &cards, QDate day);

/// Closes the gaps in the positions of the day.
void renumber(std::vector<Card> &cards, QDate day);

/// `cards` with `card` pushed in at card.position of card.day; beyond the day's end means its end.
[[nodiscard]] std::vector<Card> withCard(std::vector<Card> cards, Card card);
[[nodiscard]] std::vector<Card> withoutCard(std::vector<Card> cards, CardId id);

} // namespace core
