#pragma once

#include "ui/board/week_cards.h"

#include <set>

namespace ui {

/// Where the coach is on the board, and which cards are chosen besides for an action on several. A
/// value; the widgets follow it.
class CardChoice
{
public:
    /// Other cards, or elsewhere: the place goes along with its card, and what is gone is chosen no
    /// more.
    void follow(WeekCards cards);

    /// To the nearest place that there is.
    void goTo(BoardPlace place) { m_place = m_cards.nearest(place); }
    /// What is chosen next by keys or mouse is chosen from here on.
    void startHere() { m_start = card(); }
    [[nodiscard]] BoardPlace place() const { return m_place; }
    /// The card at the place; invalid on an empty slot.
    [[nodiscard]] core::CardId card() const { return m_cards.at(m_place); }
    /// Where a card added now goes: below the card at the place, or into the empty slot.
    [[nodiscard]] BoardPlace placeToAdd() const;

    /// In place of those chosen before; only cards of the week can be.
    void choose(const std::set<core::CardId> &cards);
    void chooseAll();
    /// One more or one less. The card that was started at is the first where none was chosen yet.
    void toggle(core::CardId card);
    /// The cards from the one that was started at up to this, in place of those chosen before.
    void chooseUpTo(core::CardId card);
    /// Goes there and chooses the cards at both ends besides those chosen already.
    void extendTo(BoardPlace place);
    [[nodiscard]] const std::set<core::CardId> &chosen() const { return m_chosen; }

    /// What an action is for: the cards chosen, else the one at the place.
    [[nodiscard]] std::vector<core::CardId> forAction() const;

private:
    WeekCards m_cards;
    BoardPlace m_place;
    core::CardId m_start; ///< of a range, or the first of several; invalid = none yet
    std::set<core::CardId> m_chosen;
};

} // namespace ui
