#pragma once

#include <QPlainTextEdit>
#include <QPointer>
#include <QStyledItemDelegate>

namespace ui {

class RosterWeekModel;

/// Edits a cell as text of several rows: Enter takes it, Shift+Enter begins a row, Escape leaves
/// it. Text that cannot be read or stored stays in the field with the reason beside it.
class CellDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    explicit CellDelegate(RosterWeekModel &model, QObject *parent = nullptr);

    [[nodiscard]] QWidget *createEditor(QWidget *parent, const QStyleOptionViewItem &option,
        const QModelIndex &index) const override;
    void setEditorData(QWidget *editor, const QModelIndex &index) const override;
    void setModelData(
        QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const override;
    void updateEditorGeometry(QWidget *editor, const QStyleOptionViewItem &option,
        const QModelIndex &index) const override;

    /// Takes what is being typed; what cannot be taken goes on being edited, and to `left`.
    void settle(QStringList &left);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    [[nodiscard]] bool take(QPlainTextEdit &editor);

    RosterWeekModel &m_model;
    mutable QPointer<QPlainTextEdit> m_editor; ///< made last; the view owns it
    mutable bool m_isStored = true;            ///< by the last setModelData()
};

} // namespace ui
