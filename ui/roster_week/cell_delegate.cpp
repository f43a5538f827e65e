#include "ui/roster_week/cell_delegate.h"

#include "ui/look/keep_question.h"
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
    QWidget *parent, const QStyleOptionViewItem &, const QModelIndex &index) const
{
    m_cell = index;
    delete m_question; // of the editor before
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
    if (editor && event->type() == QEvent::FocusOut && !QApplication::activePopupWidget()
        && !take(*editor))
        return false; // what is refused or asked about stays open where it is
    if (!editor || event->type() != QEvent::KeyPress)
        return QStyledItemDelegate::eventFilter(watched, event);
    const auto *key = static_cast<QKeyEvent *>(event);
    const bool isEnter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (isEnter && key->modifiers().testFlag(Qt::ShiftModifier))
        return false; // a row of its own, by the field
    if ((key->key() == Qt::Key_Tab || key->key() == Qt::Key_Backtab) && asks(*editor))
        return true;
    if (!isEnter)
        return QStyledItemDelegate::eventFilter(watched, event);
    if (m_question && m_question->isVisible())
        keep(*editor);
    else if (take(*editor))
        Q_EMIT closeEditor(editor);
    return true;
}

bool CellDelegate::asks(QPlainTextEdit &editor)
{
    const QString text = editor.toPlainText();
    if (text == m_kept || !m_cell.isValid() || !m_model.whyNot(text).isEmpty())
        return false;
    const QString why = m_model.whyFarAbove(m_cell, text);
    if (why.isEmpty())
        return false;
    if (!m_question) {
        m_question = new KeepQuestion(KeepQuestion::Keys::field, editor.parentWidget());
        connect(&editor, &QObject::destroyed, m_question, &QObject::deleteLater);
        connect(&editor, &QPlainTextEdit::textChanged, m_question, &QWidget::hide);
        connect(m_question, &KeepQuestion::kept, &editor, [this, &editor] { keep(editor); });
        connect(m_question, &KeepQuestion::changeWanted, &editor, [&editor] { editor.setFocus(); });
    }
    m_question->setFixedWidth(editor.width());
    m_question->ask(why);
    m_question->adjustSize();
    const int room = editor.parentWidget()->height();
    const int below = editor.geometry().bottom() + 1;
    m_question->move(editor.x(),
        below + m_question->height() <= room ? below
                                             : std::max(0, editor.y() - m_question->height()));
    m_question->raise();
    return true;
}

void CellDelegate::keep(QPlainTextEdit &editor)
{
    m_kept = editor.toPlainText();
    if (take(editor))
        Q_EMIT closeEditor(&editor);
    m_kept.clear();
}

bool CellDelegate::take(QPlainTextEdit &editor)
{
    QString why = m_model.whyNot(editor.toPlainText());
    if (why.isEmpty()) {
        if (asks(editor))
            return false;
        Q_EMIT commitData(&editor);
        if (m_isStored)
            return true;
        why = tr("Not saved. What you typed stays here: try again.");
    }
    QToolTip::showText(editor.mapToGlobal(QPoint(0, editor.height())), why, &editor, {}, 8000);
    return false;
}

bool CellDelegate::holds()
{
    if (!m_editor || m_editor->isHidden() || take(*m_editor)) // its page may be out of sight
        return false;
    m_editor->setFocus();
    return true;
}

void CellDelegate::settle(QStringList &left)
{
    if (holds()) {
        left << tr("In the week of all lifters: %1").arg(m_editor->toPlainText());
    } else if (m_editor) {
        Q_EMIT closeEditor(m_editor);
    }
}

} // namespace ui
