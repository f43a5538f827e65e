#pragma once

#include <QPolygonF>
#include <QRectF>
#include <QStyledItemDelegate>
#include <span>

namespace ui {

/// The values as a line inside `box`, evenly spaced, lowest at the bottom. A flat series runs
/// through the middle, and so does one that moves by less than `leastShare` of its mean, in
/// proportion: noise is not blown up to a mountain. Empty for fewer than two values.
[[nodiscard]] QPolygonF sparkLine(
    std::span<const double> values, const QRectF &box, double leastShare = 0.04);

/// Paints the trend of a SquadModel row: the line, a dot at its end, and its words.
class SparkDelegate final : public QStyledItemDelegate
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
