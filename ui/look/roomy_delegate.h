#pragma once

#include <QStyledItemDelegate>

namespace ui {

/// Cells with room around their text, for tables that are read rather than scanned.
class RoomyDelegate final : public QStyledItemDelegate
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
