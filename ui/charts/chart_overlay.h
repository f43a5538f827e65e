#pragma once

#include <QColor>
#include <QFont>
#include <QGraphicsItem>
#include <QPainterPath>
#include <optional>
#include <vector>

/// What is drawn over the series of a chart: marks of single sets, days that stand out, and the
/// place that is being read. All in the pixels of the chart.
namespace ui {

/// Shapes that can be told apart at eight pixels and without colour.
enum class MarkShape { dot, ring, triangle, diamond, caret, cross };

/// The shape inside a square box, to be filled.
[[nodiscard]] QPainterPath markPath(const QRectF &box, MarkShape shape);

struct ChartMark
{
    QPointF at;
    MarkShape shape = MarkShape::dot;
    QColor colour;
};

/// A day that stands out, as a line from top to bottom with its word.
struct DayLine
{
    double x = 0.0;
    QString label;
};

/// Draws over the plot area of a chart.
class PlotItem : public QGraphicsItem
{
public:
    using QGraphicsItem::QGraphicsItem;

    void setPlot(const QRectF &plot);
    [[nodiscard]] const QRectF &plot() const { return m_plot; }
    [[nodiscard]] QRectF boundingRect() const override { return m_plot; }

private:
    QRectF m_plot;
};

class MarksItem : public PlotItem
{
public:
    explicit MarksItem(QGraphicsItem *parent);

    void setMarks(std::vector<ChartMark> marks);
    void setDayLines(std::vector<DayLine> lines, const QColor &colour, const QFont &font);

    void paint(QPainter *painter, const QStyleOptionGraphicsItem *, QWidget *) override;

private:
    std::vector<ChartMark> m_marks;
    std::vector<DayLine> m_lines;
    QColor m_lineColour;
    QFont m_font;
};

/// Bars in whole pixels. A path of hundreds of upright edges, which is what an area series makes of
/// them, takes a hundred times as long to fill.
class BarsItem : public PlotItem
{
public:
    explicit BarsItem(QGraphicsItem *parent);

    void setBars(std::vector<QRectF> bars, const QColor &colour);

    void paint(QPainter *painter, const QStyleOptionGraphicsItem *, QWidget *) override;

private:
    std::vector<QRectF> m_bars;
    QColor m_colour;
};

/// A hairline at the day that is read, and a ring around the point whose values are shown.
class CursorItem : public PlotItem
{
public:
    explicit CursorItem(QGraphicsItem *parent);

    void setColour(const QColor &colour);
    void place(std::optional<double> x, std::optional<QPointF> ring);

    [[nodiscard]] QRectF boundingRect() const override;
    void paint(QPainter *painter, const QStyleOptionGraphicsItem *, QWidget *) override;

private:
    QColor m_colour;
    std::optional<double> m_x;
    std::optional<QPointF> m_ring;
};

} // namespace ui
