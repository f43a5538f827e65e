#include "ui/board/board_menu.h"

#include "ui/look/text.h"

namespace ui {

std::vector<BoardOffer> boardMenu(bool onCard, size_t chosen)
{
    const BoardOffer giveDay{
        Text::tr("Give the day's loads"), Text::tr("Ctrl+G"), BoardAct::giveDay, true};
    const BoardOffer copyDay{
        Text::tr("Copy the day"), Text::tr("Ctrl+Alt+C"), BoardAct::copyDay, true};
    const BoardOffer pasteDay{
        Text::tr("Paste the day"), Text::tr("Ctrl+Alt+V"), BoardAct::pasteDay};
    const BoardOffer pasteOnto{Text::tr("Paste the day onto lifters\u2026"), Text::tr("Ctrl+Alt+M"),
        BoardAct::pasteOntoLifters};
    if (!onCard)
        return {{Text::tr("Add a variation"), Text::tr("Insert"), BoardAct::addCard},
            {Text::tr("Paste"), Text::tr("Ctrl+V"), BoardAct::paste}, copyDay, pasteDay, pasteOnto,
            giveDay};
    return {{Text::tr("Edit sets"), Text::tr("Enter"), BoardAct::editSets},
        {Text::tr("Edit note"), Text::tr("Shift+F2"), BoardAct::editNote},
        {Text::tr("Copy below"), Text::tr("Ctrl+D"), BoardAct::duplicateCard},
        {Text::tr("Cut"), Text::tr("Ctrl+X"), BoardAct::cut, true},
        {Text::tr("Copy"), Text::tr("Ctrl+C"), BoardAct::copy},
        {Text::tr("Paste below"), Text::tr("Ctrl+V"), BoardAct::paste},
        {Text::tr("Add a variation below"), Text::tr("Insert"), BoardAct::addCard, true}, copyDay,
        pasteDay, pasteOnto, giveDay,
        {chosen > 1 ? Text::tr("Remove %1 cards").arg(chosen) : Text::tr("Remove card"),
            Text::tr("Delete"), BoardAct::removeCard, true}};
}

} // namespace ui
