#include "ui/log/entry_field.h"

#include <QKeyEvent>

namespace ui {

namespace {

/// Keys that a line edit claims for itself but that mean something to the window here.
bool isForTheWindow(const QKeyEvent &key, bool isBlank)
{
    return (isBlank && (key.matches(QKeySequence::Undo) || key.matches(QKeySequence::Redo)))
        || key.matches(QKeySequence::MoveToStartOfDocument)
        || key.matches(QKeySequence::MoveToEndOfDocument);
}

} // namespace

EntryField::EntryField(QWidget *parent)
    : QLineEdit(parent)
{
}

bool EntryField::event(QEvent *event)
{
    if (event->type() == QEvent::ShortcutOverride
        && isForTheWindow(*static_cast<QKeyEvent *>(event), text().isEmpty())) {
        event->ignore();
        return false;
    }
    return QLineEdit::event(event);
}

void EntryField::keyPressEvent(QKeyEvent *event)
{
    if (event->modifiers() & ~Qt::KeypadModifier) {
        QLineEdit::keyPressEvent(event);
        return;
    }
    switch (event->key()) {
    case Qt::Key_Up:
        Q_EMIT stepped(-1);
        break;
    case Qt::Key_Down:
        Q_EMIT stepped(+1);
        break;
    case Qt::Key_Insert:
        Q_EMIT extraWanted();
        break;
    case Qt::Key_Escape:
        clear();
        Q_EMIT givenUp();
        break;
    case Qt::Key_Delete:
        if (text().isEmpty())
            Q_EMIT deleteWanted();
        else
            QLineEdit::keyPressEvent(event);
        break;
    default:
        QLineEdit::keyPressEvent(event);
    }
}

} // namespace ui
