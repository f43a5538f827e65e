#include "ui/look/touch_mark.h"

#include "ui/look/colours.h"
#include "ui/look/metrics.h"

#include <QPainter>
#include <algorithm>

namespace ui {

namespace {

QRectF squareIn(const QRectF &box)
{
    const double side = std::min(box.width(), box.height());
    QRectF square(0, 0, side, side);
    square.moveCenter(box.center());
    return square;
}

QPainterPath ring(const QRectF &r)
{
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    path.addEllipse(r);
    const double thickness = r.width() * 0.2;
    path.addEllipse(r.adjusted(thickness, thickness, -thickness, -thickness));
    return path;
}

QPainterPath polygon(std::initializer_list<QPointF> points)
{
    QPainterPath path;
    path.addPolygon(QPolygonF(QList<QPointF>(points)));
    path.closeSubpath();
    return path;
}

void fill(QPainter &painter, const QPainterPath &path, const QColor &colour)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillPath(path, colour);
    painter.restore();
}

template <class Style> QIcon icon(Style style, const QPalette &palette)
{
    QIcon icon;
    for (const int scale : {1, 2, 3}) {
        QPixmap pixmap(QSize(space::mark, space::mark) * scale);
        pixmap.setDevicePixelRatio(scale);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        paintTouchMark(painter,
            QRectF(0, 0, space::mark, space::mark).adjusted(0.5, 0.5, -0.5, -0.5), style, palette);
        painter.end();
        icon.addPixmap(pixmap);
        icon.addPixmap(pixmap, QIcon::Selected);
    }
    return icon;
}

} // namespace

QPainterPath touchMarkPath(const QRectF &box, core::TouchStyle style)
{
    const QRectF r = squareIn(box);
    switch (style) {
    case core::TouchStyle::soft:
        return ring(r);
    case core::TouchStyle::sinking: {
        const double inset = r.height() * 0.08; // centres the triangle's weight in the square
        return polygon({r.topLeft() + QPointF(0, inset), r.topRight() + QPointF(0, inset),
            {r.center().x(), r.bottom()}});
    }
    case core::TouchStyle::undecided:
        break;
    }
    QPainterPath bar;
    const QRectF middle(r.left(), r.center().y() - r.height() * 0.1, r.width(), r.height() * 0.2);
    bar.addRoundedRect(middle, middle.height() / 2, middle.height() / 2);
    return bar;
}

QPainterPath touchMarkPath(const QRectF &box, core::Serves serves)
{
    switch (serves) {
    case core::Serves::soft:
        return touchMarkPath(box, core::TouchStyle::soft);
    case core::Serves::sinking:
        return touchMarkPath(box, core::TouchStyle::sinking);
    case core::Serves::both:
        break;
    }
    const QRectF r = squareIn(box);
    return polygon({{r.center().x(), r.top()}, {r.right(), r.center().y()},
        {r.center().x(), r.bottom()}, {r.left(), r.center().y()}});
}

void paintTouchMark(
    QPainter &painter, const QRectF &box, core::TouchStyle style, const QPalette &palette)
{
    fill(painter, touchMarkPath(box, style), markColour(colours(palette), style));
}

void paintTouchMark(
    QPainter &painter, const QRectF &box, core::Serves serves, const QPalette &palette)
{
    fill(painter, touchMarkPath(box, serves), markColour(colours(palette), serves));
}

QIcon touchMarkIcon(core::TouchStyle style, const QPalette &palette)
{
    return icon(style, palette);
}

QIcon touchMarkIcon(core::Serves serves, const QPalette &palette)
{
    return icon(serves, palette);
}

} // namespace ui
