#include "core/plan/plan_edits.h"

#include <algorithm>
#include <stdexcept>

namespace core {

namespace {

std::vector<Card>::const_iterator find(const std::vector<Card> &cards, CardId id)
{
    return std::ranges::find_if(cards, [id](const Card &c) { return c.id == id; });
}

const Card &theCard(const std::vector<Card> &cards, CardId id)
{
    const auto it = find(cards, id);
    if (it == cards.end())
        throw std::invalid_argument("there is no such card");
    return *it;
}

template <class Value>
Edit changeField(const std::vector<Card> &cards, CardId id, Value Card::*field, const Value &value)
{
    const Card &before = theCard(cards, id);
    Card after = before;
    after.*field = value;
    return difference({before}, {after});
}

} // namespace

Edit difference(const std::vector<Card> &before, const std::vector<Card> &after)
{
    Edit edit;
    for (const Card &card : before)
        if (const auto now = find(after, card.id); now == after.end() || *now != card)
            edit.cards.before.push_back(card);
    for (const Card &card : after)
        if (const auto then = find(before, card.id); then == before.end() || *then != card)
            edit.cards.after.push_back(card);
    return edit;
}

Edit addCard(const std::vector<Card> &cards, const Card &card)
{
    return difference(cards, withCard(cards, card));
}

Edit moveCard(const std::vector<Card> &cards, CardId id, QDate day, int position)
{
    Card card = theCard(cards, id);
    const QDate from = card.day;
    card.day = day;
    card.position = position;
    std::vector<Card> after = withCard(withoutCard(cards, id), card);
    renumber(after, from);
    return difference(cards, after);
}

Edit addCards(const std::vector<Card> &cards, const std::vector<Card> &added)
{
    std::vector<Card> after = cards;
    for (const Card &card : added)
        after = withCard(std::move(after), card);
    return difference(cards, after);
}

Edit removeCards(const std::vector<Card> &cards, const std::vector<CardId> &ids)
{
    std::vector<Card> after = cards;
    for (const CardId id : ids) {
        const QDate day = theCard(after, id).day;
        after = withoutCard(std::move(after), id);
        renumber(after, day);
    }
    return difference(cards, after);
}

Edit changeSetLine(const std::vector<Card> &cards, CardId id, const QString &setLine)
{
    return changeField(cards, id, &Card::setLine, setLine);
}

Edit changeVariation(const std::vector<Card> &cards, CardId id, VariationId variation)
{
    return changeField(cards, id, &Card::variation, variation);
}

Edit changeNote(const std::vector<Card> &cards, CardId id, const QString &note)
{
    return changeField(cards, id, &Card::note, note);
}

} // namespace core
