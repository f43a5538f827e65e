#include "ui/board/board_keys.h"

#include "ui/look/text.h"

#include <QKeyEvent>

namespace ui {

namespace {

std::optional<Step> stepOf(int key)
{
    switch (key) {
    case Qt::Key_Up:
        return Step::up;
    case Qt::Key_Down:
        return Step::down;
    case Qt::Key_Left:
        return Step::left;
    case Qt::Key_Right:
        return Step::right;
    default:
        return std::nullopt;
    }
}

QString wordsOf(BoardAct act)
{
    switch (act) {
    case BoardAct::go:
        return Text::tr("to the card or the day there");
    case BoardAct::extend:
        return Text::tr("choose the cards on the way too");
    case BoardAct::moveCard:
        return Text::tr("move the cards");
    case BoardAct::editSets:
        return Text::tr("write the sets of the card; so does typing");
    case BoardAct::editNote:
        return Text::tr("write the note of the card");
    case BoardAct::removeCard:
        return Text::tr("remove the cards");
    case BoardAct::duplicateCard:
        return Text::tr("duplicate the cards");
    case BoardAct::addCard:
        return Text::tr("add a card: find its variation on the shelf");
    case BoardAct::chooseAll:
        return Text::tr("choose all cards of the week");
    case BoardAct::chooseNone:
        return Text::tr("choose no cards");
    case BoardAct::copy:
        return Text::tr("copy the cards");
    case BoardAct::cut:
        return Text::tr("cut the cards");
    case BoardAct::paste:
        return Text::tr("paste cards, or text that reads as cards");
    case BoardAct::copyDay:
        return Text::tr("copy the whole day");
    case BoardAct::pasteDay:
        return Text::tr("paste a copied day below what is planned");
    case BoardAct::pasteOntoLifters:
        return Text::tr("paste a copied day onto many lifters");
    case BoardAct::giveDay:
        return Text::tr("give the day as it stands: its loads stay");
    }
    return {};
}

} // namespace

HelpRows boardKeys()
{
    return keysOf([](const QKeyEvent &key) {
        const std::optional<BoardCommand> command = boardCommand(key);
        return command ? wordsOf(command->act) : QString();
    });
}

std::optional<BoardCommand> boardCommand(const QKeyEvent &key)
{
    const Qt::KeyboardModifiers held = key.modifiers() & ~Qt::KeypadModifier;
    if (const std::optional<Step> step = stepOf(key.key())) {
        if (held == Qt::NoModifier)
            return BoardCommand{BoardAct::go, *step};
        if (held == Qt::AltModifier)
            return BoardCommand{BoardAct::moveCard, *step};
        if (held == Qt::ShiftModifier)
            return BoardCommand{BoardAct::extend, *step};
        return std::nullopt;
    }
    if (key.matches(QKeySequence::Copy))
        return BoardCommand{BoardAct::copy};
    if (key.matches(QKeySequence::Cut))
        return BoardCommand{BoardAct::cut};
    if (key.matches(QKeySequence::Paste))
        return BoardCommand{BoardAct::paste};
    if (key.matches(QKeySequence::SelectAll))
        return BoardCommand{BoardAct::chooseAll};
    if (key.key() == Qt::Key_Escape)
        return BoardCommand{BoardAct::chooseNone};
    if (held == Qt::ControlModifier && key.key() == Qt::Key_D)
        return BoardCommand{BoardAct::duplicateCard};
    if (held == Qt::ControlModifier && key.key() == Qt::Key_G)
        return BoardCommand{BoardAct::giveDay};
    if (held == (Qt::ControlModifier | Qt::AltModifier)) {
        if (key.key() == Qt::Key_C)
            return BoardCommand{BoardAct::copyDay};
        if (key.key() == Qt::Key_V)
            return BoardCommand{BoardAct::pasteDay};
        if (key.key() == Qt::Key_M) // many; Ctrl+Alt+L locks the screen of some desktops
            return BoardCommand{BoardAct::pasteOntoLifters};
    }
    if (key.key() == Qt::Key_F2)
        return BoardCommand{held == Qt::ShiftModifier ? BoardAct::editNote : BoardAct::editSets};
    if (held & ~Qt::ShiftModifier)
        return std::nullopt;
    switch (key.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return BoardCommand{BoardAct::editSets};
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        return BoardCommand{BoardAct::removeCard};
    case Qt::Key_Insert:
    case Qt::Key_Plus:
        return BoardCommand{BoardAct::addCard};
    default:
        break;
    }
    const QString typed = key.text();
    if (!typed.isEmpty() && typed.front().isPrint() && !typed.front().isSpace())
        return BoardCommand{BoardAct::editSets, {}, typed};
    return std::nullopt;
}

} // namespace ui
