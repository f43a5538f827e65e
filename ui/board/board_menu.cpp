#include "ui/board/board_menu.h"

#include "ui/look/text.h"

namespace ui {

std::vector<BoardOffer> boardMenu(bool onCard, size_t chosen)
{
    if (!onCard)
        return {{Text::tr("Add a variation"), Text::tr("Insert"), AddCard{}},
            {Text::tr("Paste"), Text::tr("Ctrl+V"), PasteCards{}}};
    return {{Text::tr("Edit sets"), Text::tr("Enter"), EditSets{}},
        {Text::tr("Edit note"), Text::tr("Shift+F2"), EditNote{}},
        {Text::tr("Copy below"), Text::tr("Ctrl+D"), DuplicateCard{}},
        {Text::tr("Cut"), Text::tr("Ctrl+X"), CutCards{}, true},
        {Text::tr("Copy"), Text::tr("Ctrl+C"), CopyCards{}},
        {Text::tr("Paste below"), Text::tr("Ctrl+V"), PasteCards{}},
        {Text::tr("Add a variation below"), Text::tr("Insert"), AddCard{}, true},
        {chosen > 1 ? Text::tr("Remove %1 cards").arg(chosen) : Text::tr("Remove card"),
            Text::tr("Delete"), RemoveCard{}, true}};
}

} // namespace ui
