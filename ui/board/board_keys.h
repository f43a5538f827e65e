#pragma once

#include "ui/board/board_layout.h"

#include <QString>
#include <optional>
#include <variant>

class QKeyEvent;

/// What a key means on the week board.
namespace ui {

struct GoTo
{
    Step step;
};
struct MoveCardTo
{
    Step step;
};
struct EditSets
{
    QString typed;
}; ///< what was typed to begin with; empty keeps the text
struct EditNote
{
};
struct RemoveCard
{
};
struct DuplicateCard
{
};
struct AddCard
{
};

/// Goes one step and chooses the cards at both ends besides those chosen already.
struct ExtendTo
{
    Step step;
};
struct ChooseAll
{
};
struct ChooseNone
{
};
struct CopyCards
{
};
struct CutCards
{
};
struct PasteCards
{
};

using BoardCommand = std::variant<GoTo, MoveCardTo, EditSets, EditNote, RemoveCard, DuplicateCard,
    AddCard, ExtendTo, ChooseAll, ChooseNone, CopyCards, CutCards, PasteCards>;

/// Nothing for keys that are somebody else's.
[[nodiscard]] std::optional<BoardCommand> boardCommand(const QKeyEvent &key);

} // namespace ui
