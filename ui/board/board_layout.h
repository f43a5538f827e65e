#pragma once

#include "core/domain/week.h"

#include <QPoint>
#include <QRect>
#include <array>
#include <optional>
#include <vector>

/// Where things lie on the week board, in pixels of its own coordinates. Plain functions; the
/// widgets only follow them.
namespace ui {

/// A place in the week: day 0 (Monday) to 6, and a position in the day from the top. The position
/// after the last card is the day's empty slot.
struct BoardPlace
{
    int day = 0;
    int position = 0;

    friend bool operator==(const BoardPlace &, const BoardPlace &) = default;
};

using CardCounts = std::array<int, core::kWeekDays>;

struct BoardLayout
{
    std::array<QRect, core::kWeekDays> columns;            ///< the full height of the board
    std::array<std::vector<QRect>, core::kWeekDays> cards; ///< from the top
    std::array<QRect, core::kWeekDays> slots;              ///< the empty slot below the cards
    int height = 0;                                        ///< what the board needs at least
};

/// Seven equal columns; the pixels that do not divide go to the first ones.
[[nodiscard]] std::array<QRect, core::kWeekDays> boardColumns(int width, int height);

/// @param cardHeights  of each day's cards from the top, for cards of cardWidth()
/// @param height       of the window on the board; the board is at least as high
[[nodiscard]] BoardLayout boardLayout(
    int width, int height, const std::array<std::vector<int>, core::kWeekDays> &cardHeights);

/// Width of a card on a board this wide; that of the narrowest column.
[[nodiscard]] int cardWidth(int boardWidth);

/// The gap between cards that a pointer at `point` means: the column under or beside it, before the
/// first card whose middle lies below it. `position` counts the cards as they lie now.
[[nodiscard]] BoardPlace gapAt(const BoardLayout &layout, QPoint point);

/// The line that marks a gap.
[[nodiscard]] QRect gapMarker(const BoardLayout &layout, BoardPlace gap);

/// The place that a card taken from `from` has after it was put into `gap`: within its own day
/// the gaps below it move up by one.
[[nodiscard]] BoardPlace placeAfterMove(BoardPlace from, BoardPlace gap);

enum class Step { up, down, left, right };

/// One step with the arrow keys; stays where the board ends. Days end with their empty slot.
[[nodiscard]] BoardPlace stepped(BoardPlace at, Step step, const CardCounts &counts);

/// Where a card goes when it is moved one step; nothing at the board's edge.
[[nodiscard]] std::optional<BoardPlace> cardStepped(
    BoardPlace at, Step step, const CardCounts &counts);

} // namespace ui
