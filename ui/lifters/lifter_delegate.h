#pragma once

#include <QStyledItemDelegate>

namespace ui {

/// A lifter in two lines: mark, name and bench estimate; then touch style, meet, and what has to be
/// said of the estimate.
class LifterDelegate final : public QStyledItemDelegate
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
