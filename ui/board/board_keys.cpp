#include "ui/board/board_keys.h"

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

} // namespace

std::optional<BoardCommand> boardCommand(const QKeyEvent &key)
{
    const Qt::KeyboardModifiers held = key.modifiers() & ~Qt::KeypadModifier;
    if (const std::optional<Step> step = stepOf(key.key())) {
        if (held == Qt::NoModifier)
            return GoTo{*step};
        if (held == Qt::AltModifier)
            return MoveCardTo{*step};
        if (held == Qt::ShiftModifier)
            return ExtendTo{*step};
        return std::nullopt;
    }
    if (key.matches(QKeySequence::Copy))
        return CopyCards{};
    if (key.matches(QKeySequence::Cut))
        return CutCards{};
    if (key.matches(QKeySequence::Paste))
        return PasteCards{};
    if (key.matches(QKeySequence::SelectAll))
        return ChooseAll{};
    if (key.key() == Qt::Key_Escape)
        return ChooseNone{};
    if (held == Qt::ControlModifier && key.key() == Qt::Key_D)
        return DuplicateCard{};
    if (key.key() == Qt::Key_F2)
        return held == Qt::ShiftModifier ? BoardCommand{EditNote{}} : BoardCommand{EditSets{}};
    if (held & ~Qt::ShiftModifier)
        return std::nullopt;
    switch (key.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return EditSets{};
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        return RemoveCard{};
    case Qt::Key_Insert:
    case Qt::Key_Plus:
        return AddCard{};
    default:
        break;
    }
    const QString typed = key.text();
    if (!typed.isEmpty() && typed.front().isPrint() && !typed.front().isSpace())
        return EditSets{typed};
    return std::nullopt;
}

} // namespace ui
