#include "ui/board/board_layout.h"

#include "ui/look/metrics.h"

#include <algorithm>

namespace ui {

namespace {
constexpr int kColumnGap = space::tight;
constexpr int kCardGap = 6;
constexpr int kInset = space::hair; ///< between a column's edge and its cards
constexpr int kSlotHeight = 28;
constexpr int kMarkerHeight = 4;
} // namespace

std::array<QRect, core::kWeekDays> boardColumns(int width, int height)
{
    std::array<QRect, core::kWeekDays> columns;
    const int room = std::max(0, width - (core::kWeekDays - 1) * kColumnGap);
    int x = 0;
    for (int day = 0; day < core::kWeekDays; ++day) {
        const int columnWidth = room / core::kWeekDays + (day < room % core::kWeekDays ? 1 : 0);
        columns[size_t(day)] = QRect(x, 0, columnWidth, height);
        x += columnWidth + kColumnGap;
    }
    return columns;
}

int cardWidth(int boardWidth)
{
    return boardColumns(boardWidth, 1).back().width() - 2 * kInset;
}

BoardLayout boardLayout(
    int width, int height, const std::array<std::vector<int>, core::kWeekDays> &cardHeights)
{
    BoardLayout layout;
    const int cardsWidth = cardWidth(width);
    const auto columns = boardColumns(width, 1);
    for (size_t day = 0; day < core::kWeekDays; ++day) {
        const int x = columns[day].x() + kInset;
        int y = kMarkerHeight; // room for the mark of the first gap
        for (const int cardHeight : cardHeights[day]) {
            layout.cards[day].emplace_back(x, y, cardsWidth, cardHeight);
            y += cardHeight + kCardGap;
        }
        layout.slots[day] = QRect(x, y, cardsWidth, kSlotHeight);
        layout.height = std::max(layout.height, y + kSlotHeight + kInset);
    }
    layout.columns = boardColumns(width, std::max(height, layout.height));
    return layout;
}

BoardPlace gapAt(const BoardLayout &layout, QPoint point)
{
    BoardPlace gap;
    while (gap.day + 1 < core::kWeekDays && point.x() >= layout.columns[size_t(gap.day) + 1].left())
        ++gap.day;
    for (const QRect &card : layout.cards[size_t(gap.day)])
        if (card.center().y() < point.y())
            ++gap.position;
    return gap;
}

QRect gapMarker(const BoardLayout &layout, BoardPlace gap)
{
    const auto &cards = layout.cards[size_t(gap.day)];
    const QRect next = gap.position < int(cards.size()) ? cards[size_t(gap.position)]
                                                        : layout.slots[size_t(gap.day)];
    const int y = gap.position == 0 ? 0 : next.top() - (kCardGap + kMarkerHeight) / 2;
    return {next.left(), y, next.width(), kMarkerHeight};
}

BoardPlace placeAfterMove(BoardPlace from, BoardPlace gap)
{
    if (gap.day == from.day && gap.position > from.position)
        --gap.position;
    return gap;
}

BoardPlace stepped(BoardPlace at, Step step, const CardCounts &counts)
{
    switch (step) {
    case Step::up:
        --at.position;
        break;
    case Step::down:
        ++at.position;
        break;
    case Step::left:
        --at.day;
        break;
    case Step::right:
        ++at.day;
        break;
    }
    at.day = std::clamp(at.day, 0, core::kWeekDays - 1);
    at.position = std::clamp(at.position, 0, counts[size_t(at.day)]);
    return at;
}

std::optional<BoardPlace> cardStepped(BoardPlace at, Step step, const CardCounts &counts)
{
    const BoardPlace to = stepped(at, step, counts);
    const bool isOwnSlot = to.day == at.day && to.position >= counts[size_t(at.day)];
    if (to == at || isOwnSlot)
        return std::nullopt;
    return to;
}

} // namespace ui
