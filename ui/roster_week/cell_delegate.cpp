#include "ui/roster_week/cell_delegate.h"

#include "ui/roster_week/roster_week_model.h"

#include <QApplication>
#include <QKeyEvent>
#include <QPlainTextEdit>
#include <QToolTip>

namespace ui {

namespace {
constexpr int kLeastWidth = 280;
constexpr int kLeastHeight = 90;
} // namespace

CellDelegate::CellDelegate(RosterWeekModel &model, QObject *parent)
    : QStyledItemDelegate(parent)
    , m_model(model)
{
}

QWidget *CellDelegate::createEditor(
    QWidget *parent, const QStyleOptionViewItem &, const QModelIndex &) const
{
    auto *editor = new QPlainTextEdit(parent);
    editor->setPlaceholderText(tr("Variation: 4x3 @8"));
    editor->setAccessibleName(tr("Cards of the day, a line each"));
    m_editor = editor;
    return editor;
}

void CellDelegate::setEditorData(QWidget *editor, const QModelIndex &index) const
{
    auto *field = static_cast<QPlainTextEdit *>(editor);
    if (field->toPlainText().isEmpty()) // once: later changes of the model leave what is typed
        field->setPlainText(m_model.textAt(index));
    field->moveCursor(QTextCursor::End);
}

void CellDelegate::setModelData(
    QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const
{
    const QString text = static_cast<QPlainTextEdit *>(editor)->toPlainText();
    m_isStored = text == m_model.textAt(index) || model->setData(index, text, Qt::EditRole);
}

void CellDelegate::updateEditorGeometry(
    QWidget *editor, const QStyleOptionViewItem &option, const QModelIndex &) const
{
    QRect place = option.rect;
    place.setWidth(std::max(place.width(), kLeastWidth));
    place.setHeight(std::max(place.height(), kLeastHeight));
    const QRect room = editor->parentWidget()->rect();
    place.moveRight(std::min(place.right(), room.right()));
    place.moveBottom(std::min(place.bottom(), room.bottom()));
    editor->setGeometry(place);
}

bool CellDelegate::eventFilter(QObject *watched, QEvent *event)
{
    auto *editor = qobject_cast<QPlainTextEdit *>(watched);
    if (editor && event->type() == QEvent::FocusOut && QApplication::activePopupWidget() == nullptr
        && !take(*editor))
        return false; // what is refused stays open where it is
    if (!editor || event->type() != QEvent::KeyPress)
        return QStyledItemDelegate::eventFilter(watched, event);
    const auto *key = static_cast<QKeyEvent *>(event);
    const bool isEnter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (isEnter && key->modifiers().testFlag(Qt::ShiftModifier))
        return false; // a row of its own, by the field
    if (!isEnter)
        return QStyledItemDelegate::eventFilter(watched, event);
    if (take(*editor))
        Q_EMIT closeEditor(editor);
    return true;
}

bool CellDelegate::take(QPlainTextEdit &editor)
{
    QString why = m_model.whyNot(editor.toPlainText());
    if (why.isEmpty()) {
        Q_EMIT commitData(&editor);
        if (m_isStored)
            return true;
        why = tr("Not saved. What you typed stays here: try again.");
    }
    QToolTip::showText(editor.mapToGlobal(QPoint(0, editor.height())), why, &editor, {}, 8000);
    return false;
}

void CellDelegate::settle(QStringList &left)
{
    if (m_editor && m_editor->isVisible() && !take(*m_editor))
        left << tr("In the week of all lifters: %1").arg(m_editor->toPlainText());
    else if (m_editor)
        Q_EMIT closeEditor(m_editor);
}

} // namespace ui
