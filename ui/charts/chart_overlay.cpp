#include "ui/charts/chart_overlay.h"

#include "ui/look/touch_mark.h"

#include <QFontMetricsF>
#include <QPainter>
#include <array>

namespace ui {

namespace {

constexpr double kUnderSeries = 3.5; ///< z; over the grid, and marks may not hide the line
constexpr double kMarkSide = 8.0;
constexpr double kSmallMarkSide = 6.0;
constexpr size_t kMany = 400; ///< marks from which the small ones are used
constexpr double kRingRadius = 7.0;

QPainterPath cross(const QRectF &box)
{
    QPainterPath lines;
    lines.moveTo(box.topLeft());
    lines.lineTo(box.bottomRight());
    lines.moveTo(box.topRight());
    lines.lineTo(box.bottomLeft());
    QPainterPathStroker pen;
    pen.setWidth(box.width() * 0.25);
    return pen.createStroke(lines).simplified();
}

QPainterPath caret(const QRectF &box)
{
    QPainterPath lines;
    lines.moveTo(box.left(), box.center().y());
    lines.lineTo(box.center().x(), box.top());
    lines.lineTo(box.right(), box.center().y());
    QPainterPathStroker pen;
    pen.setWidth(box.width() * 0.2);
    return pen.createStroke(lines);
}

} // namespace

QPainterPath markPath(const QRectF &box, MarkShape shape)
{
    switch (shape) {
    case MarkShape::ring:
        return touchMarkPath(box, core::Serves::soft);
    case MarkShape::triangle:
        return touchMarkPath(box, core::Serves::sinking);
    case MarkShape::diamond:
        return touchMarkPath(box, core::Serves::both);
    case MarkShape::caret:
        return caret(box);
    case MarkShape::cross:
        return cross(box);
    case MarkShape::dot:
        break;
    }
    QPainterPath dot;
    const double inset = box.width() * 0.15; // weighs as much as the other shapes
    dot.addEllipse(box.adjusted(inset, inset, -inset, -inset));
    return dot;
}

void PlotItem::setPlot(const QRectF &plot)
{
    prepareGeometryChange();
    m_plot = plot;
}

MarksItem::MarksItem(QGraphicsItem *parent)
    : PlotItem(parent)
{
    setZValue(kUnderSeries);
    // Moving the cursor over thousands of marks is then a copy of pixels, not a drawing.
    setCacheMode(DeviceCoordinateCache);
}

void MarksItem::setMarks(std::vector<ChartMark> marks)
{
    m_marks = std::move(marks);
    update();
}

void MarksItem::setDayLines(std::vector<DayLine> lines, const QColor &colour, const QFont &font)
{
    m_lines = std::move(lines);
    m_lineColour = colour;
    m_font = font;
    update();
}

void MarksItem::paint(QPainter *painter, const QStyleOptionGraphicsItem *, QWidget *)
{
    painter->setClipRect(plot());
    painter->setRenderHint(QPainter::Antialiasing);
    const double side = m_marks.size() < kMany ? kMarkSide : kSmallMarkSide;
    const QRectF box(-side / 2, -side / 2, side, side);
    std::array<QPainterPath, 6> paths;
    for (size_t shape = 0; shape < paths.size(); ++shape)
        paths[shape] = markPath(box, MarkShape(shape));
    for (const ChartMark &mark : m_marks) {
        painter->translate(mark.at);
        painter->fillPath(paths[size_t(mark.shape)], mark.colour);
        painter->translate(-mark.at);
    }

    painter->setFont(m_font);
    painter->setPen(QPen(m_lineColour, 1.5, Qt::DashLine));
    const QFontMetricsF metrics(m_font);
    for (const DayLine &line : m_lines) {
        painter->drawLine(QPointF(line.x, plot().top()), QPointF(line.x, plot().bottom()));
        const double width = metrics.horizontalAdvance(line.label);
        const bool fitsRight = line.x + 6 + width <= plot().right();
        painter->drawText(QPointF(fitsRight ? line.x + 6 : line.x - 6 - width,
                              plot().top() + metrics.ascent() + 2),
            line.label);
    }
}

BarsItem::BarsItem(QGraphicsItem *parent)
    : PlotItem(parent)
{
    setZValue(kUnderSeries);
}

void BarsItem::setBars(std::vector<QRectF> bars, const QColor &colour)
{
    m_bars = std::move(bars);
    m_colour = colour;
    update();
}

void BarsItem::paint(QPainter *painter, const QStyleOptionGraphicsItem *, QWidget *)
{
    painter->setClipRect(plot());
    painter->setRenderHint(QPainter::Antialiasing, false);
    for (const QRectF &bar : m_bars)
        painter->fillRect(bar, m_colour);
}

CursorItem::CursorItem(QGraphicsItem *parent)
    : PlotItem(parent)
{
    setZValue(20);
}

void CursorItem::setColour(const QColor &colour)
{
    m_colour = colour;
    update();
}

void CursorItem::place(std::optional<double> x, std::optional<QPointF> ring)
{
    prepareGeometryChange();
    m_x = x;
    m_ring = ring;
}

QRectF CursorItem::boundingRect() const
{
    QRectF rect;
    if (m_x)
        rect = QRectF(*m_x - 1, plot().top(), 2, plot().height());
    if (m_ring) {
        const double r = kRingRadius + 2;
        rect |= QRectF(m_ring->x() - r, m_ring->y() - r, 2 * r, 2 * r);
    }
    return rect;
}

void CursorItem::paint(QPainter *painter, const QStyleOptionGraphicsItem *, QWidget *)
{
    painter->setPen(QPen(m_colour, 1.0, Qt::DotLine));
    if (m_x)
        painter->drawLine(QPointF(*m_x, plot().top()), QPointF(*m_x, plot().bottom()));
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(m_colour, 2.0));
    if (m_ring)
        painter->drawEllipse(*m_ring, kRingRadius, kRingRadius);
}

} // namespace ui
