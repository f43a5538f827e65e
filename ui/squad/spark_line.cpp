#include "ui/squad/spark_line.h"

#include "ui/look/colours.h"
#include "ui/look/metrics.h"
#include "ui/squad/squad_model.h"

#include <QApplication>
#include <QPainter>
#include <algorithm>

namespace ui {

namespace {
constexpr int kSparkWidth = 72;
constexpr double kDot = 2.5; ///< radius, px
} // namespace

QPolygonF sparkLine(std::span<const double> values, const QRectF &box, double leastShare)
{
    QPolygonF line;
    if (values.size() < 2)
        return line;
    const auto [low, high] = std::minmax_element(values.begin(), values.end());
    const double middle = 0.5 * (*low + *high);
    const double range = std::max(*high - *low, leastShare * middle);
    for (size_t i = 0; i < values.size(); ++i) {
        const double x = box.left() + box.width() * double(i) / double(values.size() - 1);
        const double offset = range > 0.0 ? (values[i] - middle) / range : 0.0;
        line << QPointF(x, box.center().y() - offset * box.height());
    }
    return line;
}

void SparkDelegate::paint(
    QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    QStyleOptionViewItem cell = option;
    initStyleOption(&cell, index);
    const QString words = std::exchange(cell.text, {});
    const QStyle *style = cell.widget ? cell.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &cell, painter, cell.widget);

    const QRectF inside = QRectF(option.rect).adjusted(space::gap, 6, -space::gap, -6);
    const auto values = index.data(SquadModel::TrendRole).value<QList<double>>();
    const QRectF box(inside.left(), inside.top(), kSparkWidth, inside.height());
    const QPolygonF line = sparkLine(
        {values.constData(), size_t(values.size())}, box.adjusted(kDot, kDot, -kDot, -kDot));
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const bool chosen = option.state.testFlag(QStyle::State_Selected);
    const QColor text = chosen ? colours(option.palette).onChosen : colours(option.palette).text;
    const QColor ink = chosen ? text : colours(option.palette).chartEstimate;
    if (!line.isEmpty()) {
        painter->setPen(QPen(ink, 1.6));
        painter->drawPolyline(line);
        painter->setPen(Qt::NoPen);
        painter->setBrush(ink);
        painter->drawEllipse(line.last(), kDot, kDot);
    }
    painter->setPen(text);
    const QRectF rest = inside.adjusted(line.isEmpty() ? 0 : kSparkWidth + space::gap, 0, 0, 0);
    painter->drawText(rest, Qt::AlignLeft | Qt::AlignVCenter,
        option.fontMetrics.elidedText(words, Qt::ElideRight, int(rest.width())));
    painter->restore();
}

QSize SparkDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const int text = option.fontMetrics.horizontalAdvance(index.data().toString());
    return {kSparkWidth + text + 3 * space::gap, space::field};
}

} // namespace ui
