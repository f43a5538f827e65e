#include "core/domain/edit.h"

#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;

namespace {

Card card(qint64 id, const char *setLine = "")
{
    Card c;
    c.id = {id};
    c.setLine = QLatin1String(setLine);
    return c;
}

Edit cards(std::vector<Card> before, std::vector<Card> after)
{
    Edit edit;
    edit.cards = {std::move(before), std::move(after)};
    return edit;
}

} // namespace

TEST(Edit, IsEmptyWhereNoKindOfRowIsTouched)
{
    EXPECT_TRUE(Edit{}.isEmpty());
    forEachRowKind([](auto kind) {
        Edit added, removed;
        (added.*kind).after.resize(1);
        (removed.*kind).before.resize(1);
        EXPECT_FALSE(added.isEmpty());
        EXPECT_FALSE(removed.isEmpty());
        EXPECT_EQ(inverse(added), removed);
    });
}

TEST(Edit, TwoInARowAreOneFromTheFirstRowsToTheLast)
{
    const Edit add = cards({}, {card(1, "1x1")});
    const Edit change = cards({card(1, "1x1")}, {card(1, "3x3")});
    const Edit remove = cards({card(1, "3x3")}, {});
    EXPECT_EQ(followedBy(add, change), cards({}, {card(1, "3x3")}));
    EXPECT_EQ(followedBy(change, remove), cards({card(1, "1x1")}, {}));
    EXPECT_TRUE(followedBy(add, cards({card(1, "1x1")}, {})).isEmpty());
    EXPECT_TRUE(followedBy(change, inverse(change)).isEmpty()) << "it ends as it began";
}

TEST(Edit, TwoInARowKeepWhatOnlyOneOfThemTouches)
{
    const Edit first = cards({card(1, "a")}, {card(1, "b"), card(2)});
    const Edit second = cards({card(2), card(3)}, {card(2, "c"), card(4)});
    const Edit both = followedBy(first, second);
    EXPECT_THAT(both.cards.before, ElementsAre(card(1, "a"), card(3)));
    EXPECT_THAT(both.cards.after, ElementsAre(card(2, "c"), card(4), card(1, "b")));
}

TEST(Edit, OfManyLiftersIsOneWithAllTheirRows)
{
    const Edit both = joined(cards({card(1)}, {card(1, "a")}), cards({card(2)}, {card(3)}));
    EXPECT_THAT(both.cards.before, ElementsAre(card(1), card(2)));
    EXPECT_THAT(both.cards.after, ElementsAre(card(1, "a"), card(3)));
}

TEST(Edit, IsCarriedOutOnRowsThatAreHeld)
{
    std::vector<Card> held{card(1), card(2), card(3)};
    const Edit edit = cards({card(2)}, {card(2, "a"), card(4, "b")});
    carryOut(held, edit.cards, [](const Card &c) { return c.id != CardId{4}; });
    EXPECT_THAT(held, ElementsAre(card(1), card(3), card(2, "a")));
}

TEST(Edit, ACardStandsAboveTheLaterAndLowerOnesAndNotAboveItself)
{
    Card top = card(1), lower = card(2), later = card(3);
    top.day = lower.day = QDate(2026, 3, 2);
    later.day = top.day.addDays(1);
    lower.position = 1;
    EXPECT_TRUE(isAbove(top, lower));
    EXPECT_TRUE(isAbove(lower, later));
    EXPECT_FALSE(isAbove(later, top));
    EXPECT_FALSE(isAbove(top, top));
}
