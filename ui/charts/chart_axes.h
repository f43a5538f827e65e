#pragma once

#include "ui/charts/chart_stops.h"
#include "ui/charts/plot_map.h"

class QAbstractSeries;
class QCategoryAxis;
class QChart;
class QFont;
class QPalette;
class QString;
class QValueAxis;

namespace ui {

/// The axes of a chart over time: the days below, one value axis on the left, another on the right
/// where it is asked for.
class ChartAxes
{
public:
    /// The axes belong to the chart, which outlives this.
    explicit ChartAxes(QChart &chart);

    void addRight();
    /// Puts a series on the time axis and one of the value axes.
    void add(QAbstractSeries *series, Side side);
    void setTitle(Side side, const QString &title);

    void setPlot(const QRectF &plot);
    [[nodiscard]] const QRectF &plot() const { return m_plot; }
    void setSpan(const TimeSpan &span);
    void setScale(Side side, const ValueScale &scale);
    [[nodiscard]] int mostValueSteps() const;
    /// Where a value of that side falls, of the days of `span`.
    [[nodiscard]] PlotMap map(const TimeSpan &span, Side side) const;

    void applyLook(const QPalette &palette, const QFont &font);

private:
    struct Axis
    {
        QValueAxis *axis = nullptr;
        ValueScale scale;
    };
    [[nodiscard]] const Axis &of(Side side) const { return side == Side::left ? m_left : m_right; }

    QChart &m_chart;
    QCategoryAxis *m_time;
    Axis m_left;
    Axis m_right;
    QRectF m_plot;
};

} // namespace ui
