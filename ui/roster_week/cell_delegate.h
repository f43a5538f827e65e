#pragma once

#include <QPersistentModelIndex>
#include <QPlainTextEdit>
#include <QPointer>
#include <QStyledItemDelegate>

namespace ui {

class KeepQuestion;
class RosterWeekModel;

/// Edits a cell as text of several rows: Enter takes it, Shift+Enter begins a row, Escape leaves
/// it. Text that cannot be read or stored stays in the field with the reason beside it; so does one
/// with a load far above the max, until the coach keeps it.
class CellDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    explicit CellDelegate(RosterWeekModel &model, QObject *parent = nullptr);

    /// Asks below the editor of the cell, where its text has to be asked about; false where not.
    bool asks(QPlainTextEdit &editor);

    [[nodiscard]] QWidget *createEditor(QWidget *parent, const QStyleOptionViewItem &option,
        const QModelIndex &index) const override;
    void setEditorData(QWidget *editor, const QModelIndex &index) const override;
    void setModelData(
        QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const override;
    void updateEditorGeometry(QWidget *editor, const QStyleOptionViewItem &option,
        const QModelIndex &index) const override;

    /// Whether what is being typed cannot be taken, so that its field stays, with the focus.
    [[nodiscard]] bool holds();
    /// Takes what is being typed; what cannot be taken goes on being edited, and to `left`.
    void settle(QStringList &left);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    [[nodiscard]] bool take(QPlainTextEdit &editor);
    void keep(QPlainTextEdit &editor);

    RosterWeekModel &m_model;
    mutable QPointer<QPlainTextEdit> m_editor; ///< made last; the view owns it
    mutable bool m_isStored = true;            ///< by the last setModelData()
    mutable QPersistentModelIndex m_cell;      ///< being edited
    mutable QPointer<KeepQuestion> m_question; ///< beside the editor; goes with it
    QString m_kept;                            ///< text that the coach has kept
};

} // namespace ui
