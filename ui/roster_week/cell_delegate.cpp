#include "ui/roster_week/cell_delegate.h"

#include "ui/roster_week/roster_week_model.h"

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
    if (text != m_model.textAt(index))
        model->setData(index, text, Qt::EditRole);
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
    if (!editor || event->type() != QEvent::KeyPress)
        return QStyledItemDelegate::eventFilter(watched, event);
    const auto *key = static_cast<QKeyEvent *>(event);
    const bool isEnter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (isEnter && key->modifiers().testFlag(Qt::ShiftModifier))
        return false; // a row of its own, by the field
    if (!isEnter)
        return QStyledItemDelegate::eventFilter(watched, event);
    const QString why = m_model.whyNot(editor->toPlainText());
    if (!why.isEmpty()) {
        QToolTip::showText(editor->mapToGlobal(QPoint(0, editor->height())), why, editor, {}, 8000);
        return true;
    }
    Q_EMIT commitData(editor);
    Q_EMIT closeEditor(editor);
    return true;
}

} // namespace ui
