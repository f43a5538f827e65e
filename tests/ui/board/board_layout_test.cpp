#include "ui/board/board_layout.h"

#include <gmock/gmock.h>

using namespace ui;

namespace {

/// Monday two cards of 80 and 60, Tuesday one of 100, the rest empty.
BoardLayout twoDays(int width = 900, int height = 500)
{
    return boardLayout(width, height, {{{80, 60}, {100}}});
}

QPoint inColumn(const BoardLayout &layout, int day, int y)
{
    return {layout.columns[size_t(day)].center().x(), y};
}

} // namespace

TEST(BoardLayout, ColumnsShareTheWholeWidth)
{
    for (const int width : {700, 861, 866, 1400}) {
        const auto columns = boardColumns(width, 10);
        EXPECT_EQ(columns.front().left(), 0);
        EXPECT_EQ(columns.back().right() + 1, width);
        for (size_t day = 1; day < core::kWeekDays; ++day) {
            EXPECT_GT(columns[day].left(), columns[day - 1].right());
            EXPECT_LE(std::abs(columns[day].width() - columns[day - 1].width()), 1);
        }
    }
}

TEST(BoardLayout, CardsStackInsideTheirColumnWithoutTouching)
{
    const BoardLayout layout = twoDays();
    const auto &monday = layout.cards[0];
    ASSERT_EQ(monday.size(), 2u);
    EXPECT_TRUE(layout.columns[0].contains(monday[0]));
    EXPECT_TRUE(layout.columns[0].contains(monday[1]));
    EXPECT_GT(monday[1].top(), monday[0].bottom());
    EXPECT_GT(layout.slots[0].top(), monday[1].bottom());
    EXPECT_EQ(monday[0].width(), cardWidth(900));
}

TEST(BoardLayout, GrowsWithTheFullestDayAndFillsTheWindow)
{
    EXPECT_GT(twoDays(900, 100).height, 140);
    EXPECT_EQ(twoDays(900, 100).columns[3].height(), twoDays(900, 100).height);
    EXPECT_EQ(twoDays(900, 500).columns[3].height(), 500);
}

TEST(BoardLayout, TheGapIsTheOneAboveTheFirstMiddleBelowThePointer)
{
    const BoardLayout layout = twoDays();
    const QRect first = layout.cards[0][0];
    const QRect second = layout.cards[0][1];
    EXPECT_EQ(gapAt(layout, inColumn(layout, 0, 0)), (BoardPlace{0, 0}));
    EXPECT_EQ(gapAt(layout, inColumn(layout, 0, first.center().y() - 1)), (BoardPlace{0, 0}));
    EXPECT_EQ(gapAt(layout, inColumn(layout, 0, first.center().y() + 1)), (BoardPlace{0, 1}));
    EXPECT_EQ(gapAt(layout, inColumn(layout, 0, second.bottom())), (BoardPlace{0, 2}));
    EXPECT_EQ(gapAt(layout, inColumn(layout, 0, 10000)), (BoardPlace{0, 2}));
    EXPECT_EQ(gapAt(layout, inColumn(layout, 4, 200)), (BoardPlace{4, 0}));
}

TEST(BoardLayout, PointersBesideTheBoardMeanTheNearestColumn)
{
    const BoardLayout layout = twoDays();
    EXPECT_EQ(gapAt(layout, {-20, 10}).day, 0);
    EXPECT_EQ(gapAt(layout, {5000, 10}).day, 6);
}

TEST(BoardLayout, EveryGapHasAMarkerOfItsOwnBetweenItsCards)
{
    const BoardLayout layout = twoDays();
    const QRect before = gapMarker(layout, {0, 0});
    const QRect between = gapMarker(layout, {0, 1});
    const QRect after = gapMarker(layout, {0, 2});
    EXPECT_LE(before.bottom(), layout.cards[0][0].top());
    EXPECT_GE(between.top(), layout.cards[0][0].bottom());
    EXPECT_LE(between.bottom(), layout.cards[0][1].top());
    EXPECT_GE(after.top(), layout.cards[0][1].bottom());
    EXPECT_TRUE(layout.columns[6].contains(gapMarker(layout, {6, 0})));
}

TEST(BoardLayout, ACardTakenOutMovesTheGapsBelowIt)
{
    EXPECT_EQ(placeAfterMove({0, 0}, {0, 2}), (BoardPlace{0, 1}));
    EXPECT_EQ(placeAfterMove({0, 2}, {0, 0}), (BoardPlace{0, 0}));
    EXPECT_EQ(placeAfterMove({0, 1}, {0, 1}), (BoardPlace{0, 1})); // both gaps around the card
    EXPECT_EQ(placeAfterMove({0, 1}, {0, 2}), (BoardPlace{0, 1})); // mean: stay
    EXPECT_EQ(placeAfterMove({0, 0}, {3, 2}), (BoardPlace{3, 2}));
}

TEST(BoardLayout, ArrowKeysWalkTheDaysAndStopAtTheEdges)
{
    const CardCounts counts{2, 1};
    EXPECT_EQ(stepped({0, 0}, Step::up, counts), (BoardPlace{0, 0}));
    EXPECT_EQ(stepped({0, 1}, Step::down, counts), (BoardPlace{0, 2})) << "the empty slot";
    EXPECT_EQ(stepped({0, 2}, Step::down, counts), (BoardPlace{0, 2}));
    EXPECT_EQ(stepped({0, 2}, Step::right, counts), (BoardPlace{1, 1}));
    EXPECT_EQ(stepped({1, 1}, Step::right, counts), (BoardPlace{2, 0}));
    EXPECT_EQ(stepped({0, 1}, Step::left, counts), (BoardPlace{0, 1}));
    EXPECT_EQ(stepped({6, 0}, Step::right, counts), (BoardPlace{6, 0}));
}

TEST(BoardLayout, CardsMoveOneStepButNeverIntoTheirOwnSlot)
{
    const CardCounts counts{2, 1};
    EXPECT_EQ(cardStepped({0, 0}, Step::down, counts), (BoardPlace{0, 1}));
    EXPECT_FALSE(cardStepped({0, 1}, Step::down, counts));
    EXPECT_FALSE(cardStepped({0, 0}, Step::up, counts));
    EXPECT_FALSE(cardStepped({0, 0}, Step::left, counts));
    EXPECT_EQ(cardStepped({0, 1}, Step::right, counts), (BoardPlace{1, 1}));
    EXPECT_EQ(cardStepped({1, 0}, Step::right, counts), (BoardPlace{2, 0}));
}
