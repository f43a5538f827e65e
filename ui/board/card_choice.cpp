#include "ui/board/card_choice.h"

#include <utility>

namespace ui {

void CardChoice::follow(WeekCards cards)
{
    const core::CardId card = m_cards.at(m_place);
    m_cards = std::move(cards);
    m_place = m_cards.placeOf(card).value_or(m_cards.nearest(m_place));
    std::erase_if(m_chosen, [this](core::CardId gone) { return !m_cards.placeOf(gone); });
}

BoardPlace CardChoice::placeToAdd() const
{
    return {m_place.day, m_place.position + (card().isValid() ? 1 : 0)};
}

void CardChoice::choose(const std::set<core::CardId> &cards)
{
    m_chosen.clear();
    for (const core::CardId card : cards)
        if (m_cards.placeOf(card))
            m_chosen.insert(card);
}

void CardChoice::chooseAll()
{
    m_chosen.clear();
    for (const std::vector<core::CardId> &day : m_cards.days)
        m_chosen.insert(day.begin(), day.end());
}

void CardChoice::toggle(core::CardId toggled)
{
    std::set<core::CardId> cards = m_chosen;
    if (cards.empty() && m_start != toggled)
        cards.insert(m_start); // where it is none, choose() leaves it out
    if (!cards.insert(toggled).second)
        cards.erase(toggled);
    choose(cards);
    m_start = toggled;
}

void CardChoice::chooseUpTo(core::CardId card)
{
    if (!m_cards.placeOf(m_start))
        m_start = card;
    m_chosen.clear();
    bool isBetween = false;
    for (const std::vector<core::CardId> &day : m_cards.days)
        for (const core::CardId each : day) {
            const bool isEnd = each == m_start || each == card;
            if (isEnd || isBetween)
                m_chosen.insert(each);
            if (isEnd && m_start != card)
                isBetween = !isBetween;
        }
}

void CardChoice::extendTo(BoardPlace place)
{
    std::set<core::CardId> ends = m_chosen;
    ends.insert(card()); // an empty slot has no card; choose() leaves it out
    goTo(place);
    ends.insert(card());
    choose(ends);
}

std::vector<core::CardId> CardChoice::forAction() const
{
    if (!m_chosen.empty())
        return {m_chosen.begin(), m_chosen.end()};
    return card().isValid() ? std::vector{card()} : std::vector<core::CardId>();
}

} // namespace ui
