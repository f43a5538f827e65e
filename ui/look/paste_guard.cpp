#include "ui/look/paste_guard.h"

#include <QApplication>
#include <QClipboard>
#include <QKeyEvent>
#include <QPlainTextEdit>

namespace ui {

PasteGuard::PasteGuard(QObject *parent)
    : QObject(parent)
{
    qApp->installEventFilter(this);
}

bool PasteGuard::eventFilter(QObject *watched, QEvent *event)
{
    return event->type() == QEvent::KeyPress && qobject_cast<QPlainTextEdit *>(watched)
        && static_cast<QKeyEvent *>(event)->matches(QKeySequence::Paste)
        && !QApplication::clipboard()->mimeData();
}

} // namespace ui
