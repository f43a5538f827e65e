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

QString wordsOf(EntryAct act)
{
    switch (act) {
    case EntryAct::previousSet:
        return EntryField::tr("to the set above");
    case EntryAct::nextSet:
        return EntryField::tr("to the set below");
    case EntryAct::extraSet:
        return EntryField::tr("add a set below");
    case EntryAct::removeSet:
        return EntryField::tr("in the empty field: take the set out of the log");
    case EntryAct::giveUp:
        return EntryField::tr("empty the field, and take back another variation");
    case EntryAct::previousLifter:
    case EntryAct::nextLifter:
        break;
    }
    return {};
}

} // namespace

std::optional<EntryAct> entryAct(const QKeyEvent &key, bool isBlank)
{
    if (key.modifiers() & ~Qt::KeypadModifier)
        return std::nullopt;
    switch (key.key()) {
    case Qt::Key_Up:
        return EntryAct::previousSet;
    case Qt::Key_Down:
        return EntryAct::nextSet;
    case Qt::Key_Insert:
        return EntryAct::extraSet;
    case Qt::Key_Escape:
        return EntryAct::giveUp;
    case Qt::Key_Left:
        return isBlank ? std::optional(EntryAct::previousLifter) : std::nullopt;
    case Qt::Key_Right:
        return isBlank ? std::optional(EntryAct::nextLifter) : std::nullopt;
    case Qt::Key_Delete:
        return isBlank ? std::optional(EntryAct::removeSet) : std::nullopt;
    default:
        return std::nullopt;
    }
}

HelpRows entryKeys()
{
    HelpRows rows{keyRow({Qt::Key_Return},
        EntryField::tr("save the set and go on; in the empty "
                       "field the set as it was planned"))};
    const HelpRows others = keysOf([](const QKeyEvent &key) {
        const std::optional<EntryAct> act = entryAct(key, true);
        return act ? wordsOf(*act) : QString();
    });
    rows.insert(rows.end(), others.begin(), others.end());
    return rows;
}

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
    const std::optional<EntryAct> act = entryAct(*event, text().isEmpty());
    if (!act) {
        QLineEdit::keyPressEvent(event);
        return;
    }
    switch (*act) {
    case EntryAct::previousSet:
        Q_EMIT stepped(-1);
        break;
    case EntryAct::nextSet:
        Q_EMIT stepped(+1);
        break;
    case EntryAct::previousLifter:
        Q_EMIT sideways(-1);
        break;
    case EntryAct::nextLifter:
        Q_EMIT sideways(+1);
        break;
    case EntryAct::extraSet:
        Q_EMIT extraWanted();
        break;
    case EntryAct::removeSet:
        Q_EMIT deleteWanted();
        break;
    case EntryAct::giveUp:
        clear();
        Q_EMIT givenUp();
        break;
    }
}

} // namespace ui
