#pragma once

#include "ui/board/board_layout.h"
#include "ui/look/page_help.h"

#include <QString>
#include <optional>

class QKeyEvent;

/// What a key means on the week board.
namespace ui {

enum class BoardAct {
    go,     ///< one step
    extend, ///< goes one step and chooses the cards at both ends besides those chosen already
    moveCard,
    editSets,
    editNote,
    removeCard,
    duplicateCard,
    addCard,
    chooseAll,
    chooseNone,
    copy,
    cut,
    paste,
    copyDay,
    pasteDay,
    pasteOntoLifters,
    giveDay
};

struct BoardCommand
{
    BoardAct act;
    Step step = Step::up; ///< of go, extend and moveCard
    QString typed = {};   ///< to begin the sets with; empty keeps the text
};

/// Nothing for keys that are somebody else's.
[[nodiscard]] std::optional<BoardCommand> boardCommand(const QKeyEvent &key);

/// All of them, as boardCommand() has them.
[[nodiscard]] HelpRows boardKeys();

} // namespace ui
