#include "core/domain/card_order.h"

#include <algorithm>

namespace core {

std::vector<Card> cardsOn(const std::vector<Card> &cards, QDate day)
{
    std::vector<Card> chosen;
    std::ranges::copy_if(
        cards, std::back_inserter(chosen), [day](const Card &c) { return c.day == day; });
    std::ranges::stable_sort(
        chosen, [](const Card &a, const Card &b) { return a.position < b.position; });
    return chosen;
}

void renumber(std::vector<Card> &cards, QDate day)
{
    for (int position = 0; const Card &next : cardsOn(cards, day)) {
        const auto card =
            std::ranges::find_if(cards, [&next](const Card &c) { return c.id == next.id; });
        card->position = position++;
    }
}

std::vector<Card> withCard(std::vector<Card> cards, Card card)
{
    renumber(cards, card.day);
    const int end = int(cardsOn(cards, card.day).size());
    card.position = std::clamp(card.position, 0, end);
    for (Card &other : cards)
        if (other.day == card.day && other.position >= card.position)
            ++other.position;
    cards.push_back(std::move(card));
    return cards;
}

std::vector<Card> withoutCard(std::vector<Card> cards, CardId id)
{
    std::erase_if(cards, [id](const Card &c) { return c.id == id; });
    return cards;
}

} // namespace core
