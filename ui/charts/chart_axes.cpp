#include "ui/charts/chart_axes.h"

#include "ui/look/colours.h"
#include "ui/look/metrics.h"

#include <QAbstractSeries>
#include <QCategoryAxis>
#include <QChart>
#include <QFontMetricsF>
#include <QValueAxis>
#include <algorithm>

namespace ui {

namespace {
constexpr int kPixelsPerTimeTick = 88;
constexpr int kPixelsPerValueTick = 36;
} // namespace

ChartAxes::ChartAxes(QChart &chart)
    : m_chart(chart)
    , m_time(new QCategoryAxis(&chart))
{
    m_time->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    m_time->setTruncateLabels(false);
    chart.addAxis(m_time, Qt::AlignBottom);
    m_left.axis = new QValueAxis(&chart);
    chart.addAxis(m_left.axis, Qt::AlignLeft);
}

void ChartAxes::addRight()
{
    m_right.axis = new QValueAxis(&m_chart);
    m_right.axis->setGridLineVisible(false);
    m_chart.addAxis(m_right.axis, Qt::AlignRight);
}

void ChartAxes::add(QAbstractSeries *series, Side side)
{
    m_chart.addSeries(series);
    series->attachAxis(m_time);
    series->attachAxis(of(side).axis);
}

void ChartAxes::setTitle(Side side, const QString &title)
{
    of(side).axis->setTitleText(title);
}

void ChartAxes::setPlot(const QRectF &plot)
{
    m_plot = plot;
    m_chart.setPlotArea(plot);
}

void ChartAxes::setSpan(const TimeSpan &span)
{
    for (const QString &label : m_time->categoriesLabels())
        m_time->remove(label);
    m_time->setRange(span.from, span.to);
    m_time->setStartValue(span.from);
    for (const TimeTick &tick :
        timeTicks(span, std::max(1, int(m_plot.width()) / kPixelsPerTimeTick)))
        m_time->append(tick.label, tick.day);
}

void ChartAxes::setScale(Side side, const ValueScale &scale)
{
    Axis &target = side == Side::left ? m_left : m_right;
    target.scale = scale;
    // Qt Charts hides a label that would stand out above the plot.
    const double room = QFontMetricsF(target.axis->labelsFont()).height() / 2.0 + 1.0;
    target.scale.to += (scale.to - scale.from) * room / std::max(m_plot.height() - room, 1.0);
    target.axis->setTickType(QValueAxis::TicksDynamic);
    target.axis->setTickAnchor(scale.from);
    target.axis->setTickInterval(scale.step);
    target.axis->setRange(scale.from, target.scale.to);
    target.axis->setLabelFormat(QStringLiteral("%.%1f").arg(scale.decimals()));
}

int ChartAxes::mostValueSteps() const
{
    return std::clamp(int(m_plot.height()) / kPixelsPerValueTick, 2, 10);
}

PlotMap ChartAxes::map(const TimeSpan &span, Side side) const
{
    return {m_plot, span, of(side).scale};
}

void ChartAxes::applyLook(const QPalette &palette, const QFont &font)
{
    const Colours &look = colours(palette);
    const QFont small = ui::font(Type::small, font);
    for (QAbstractAxis *axis : m_chart.axes()) {
        axis->setLabelsBrush(look.text);
        axis->setTitleBrush(look.mutedText);
        axis->setLabelsFont(small);
        axis->setTitleFont(small);
        axis->setLinePen(QPen(look.controlBorder));
        axis->setGridLinePen(QPen(look.chartGrid));
    }
}

} // namespace ui
