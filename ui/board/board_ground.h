#pragma once

#include "ui/board/board_layout.h"

class QPainter;

namespace ui {

struct Colours;

/// What the week grid paints under its cards: the days' columns, and the gap where something would
/// land.
void paintGround(QPainter &painter, const BoardLayout &layout, std::optional<BoardPlace> gap,
    const Colours &look);

/// What to do with a week without cards, across the board below the empty slots.
void paintInvitation(
    QPainter &painter, const BoardLayout &layout, const QRect &board, const Colours &look);

} // namespace ui
