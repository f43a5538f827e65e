#pragma once

#include <QStyledItemDelegate>

namespace ui {

/// Paints the rows of a ShelfModel: touch mark and name, purpose, details. Text is wrapped to the
/// list's width.
class ShelfDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
        const QModelIndex &index) const override;
    [[nodiscard]] QSize sizeHint(
        const QStyleOptionViewItem &option, const QModelIndex &index) const override;
};

} // namespace ui
