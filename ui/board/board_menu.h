#pragma once

#include "ui/board/board_keys.h"

#include <vector>

namespace ui {

/// One line of the week grid's menu.
struct BoardOffer
{
    QString words;
    QString keys; ///< that do the same
    BoardAct act;
    bool beginsGroup = false;
};

/// What the menu offers on a card, or on a day's empty slot.
/// @param chosen  number of cards that are chosen besides
[[nodiscard]] std::vector<BoardOffer> boardMenu(bool onCard, size_t chosen);

} // namespace ui
