#include "core/plan/lay_out.h"

#include <algorithm>
#include <set>

namespace core {

Edit layOut(
    const std::vector<Card> &cards, const std::vector<Card> &rows, OnOccupiedDays onOccupied)
{
    std::set<QDate> days;
    for (const Card &row : rows)
        days.insert(row.day);

    std::vector<Card> after;
    for (const Card &card : cards)
        if (!days.contains(card.day))
            after.push_back(card);
    for (const QDate day : days) {
        std::vector<Card> stack;
        if (onOccupied == OnOccupiedDays::keep)
            stack = cardsOn(cards, day);
        const std::vector<Card> added = cardsOn(rows, day);
        stack.insert(stack.end(), added.begin(), added.end());
        for (int position = 0; Card & card : stack)
            card.position = position++;
        after.insert(after.end(), stack.begin(), stack.end());
    }
    return difference(cards, after);
}

} // namespace core
