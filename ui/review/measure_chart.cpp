#include "ui/review/measure_chart.h"

#include "core/loads/lift_estimate.h"
#include "ui/charts/thin.h"
#include "ui/look/colours.h"

#include <QAreaSeries>
#include <QLineSeries>
#include <QLocale>
#include <algorithm>
#include <limits>

namespace ui {

namespace {
constexpr double kMarkCell = 12.0; ///< closer marks of a line hide each other, px
} // namespace

MarkShape lineShape(size_t line)
{
    constexpr MarkShape kShapes[] = {MarkShape::dot, MarkShape::ring, MarkShape::triangle,
        MarkShape::diamond, MarkShape::caret, MarkShape::cross};
    return kShapes[line % std::size(kShapes)];
}

QColor lineColour(size_t line, const QPalette &palette)
{
    const Colours &look = colours(palette);
    const QColor all[] = {look.chartEstimate, look.chartLifts, look.chartMissed, look.softTouch,
        look.chartFiltered, look.text};
    return all[line % std::size(all)];
}

Qt::PenStyle lineDashes(size_t line)
{
    constexpr Qt::PenStyle kDashes[] = {Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine,
        Qt::DashDotDotLine, Qt::SolidLine};
    return kDashes[line % std::size(kDashes)];
}

MeasureChart::MeasureChart(TimeWindow &window, QWidget *parent)
    : TimeChart(window, parent)
    , m_low(new QLineSeries(this))
    , m_high(new QLineSeries(this))
    , m_band(new QAreaSeries(m_high, m_low))
{
    marks().setZValue(10);
    axes().add(m_band, Side::left);
    for (size_t line = 0; line < kMostLines; ++line) {
        m_lines.push_back(new QLineSeries(this));
        axes().add(m_lines.back(), Side::left);
    }
    applyLook();
}

void MeasureChart::setContent(const QString &title, MeasureContent content)
{
    m_title = title;
    m_content = std::move(content);
    setAccessibleName(tr("Chart: %1").arg(title));
    axes().setTitle(Side::left, m_content.unit);
    refresh();
}

void MeasureChart::applyLook()
{
    TimeChart::applyLook();
    for (size_t line = 0; line < m_lines.size(); ++line)
        m_lines[line]->setPen(QPen(lineColour(line, palette()), 2.0, lineDashes(line)));
    m_band->setPen(Qt::NoPen);
    m_band->setBrush(bandOf(lineColour(0, palette())));
}

void MeasureChart::redraw()
{
    const TimeSpan &span = window().span();
    double low = m_content.fromZero ? 0.0 : std::numeric_limits<double>::infinity();
    double high = m_content.fromZero ? 0.0 : -low;
    std::vector<Stop> stops;
    m_places.clear();
    const bool alone = m_content.lines.size() == 1;
    for (size_t line = 0; line < m_content.lines.size(); ++line)
        for (size_t i = 0; i < m_content.lines[line].points.size(); ++i) {
            const MeasurePoint &point = m_content.lines[line].points[i];
            if (!span.contains(point.day))
                continue;
            low = std::min(low, alone ? point.low90.value_or(point.value) : point.value);
            high = std::max(high, alone ? point.high90.value_or(point.value) : point.value);
            stops.push_back({point.day, point.value, Side::left, line == 0, int(m_places.size())});
            m_places.push_back({line, i});
        }
    if (low <= high)
        axes().setScale(
            Side::left, scaleFor(low, std::max(high, low + 1e-9), axes().mostValueSteps()));
    setStops(std::move(stops));
    drawLines();
    drawMarks();
}

void MeasureChart::drawLines()
{
    const TimeSpan &span = window().span();
    QList<QPointF> lowLine, highLine;
    for (size_t line = 0; line < m_lines.size(); ++line) {
        QList<QPointF> points;
        if (line < m_content.lines.size())
            for (const MeasurePoint &point : m_content.lines[line].points) {
                points.append({point.day, point.value});
                if (m_content.lines.size() == 1 && point.low90 && point.high90) {
                    lowLine.append({point.day, *point.low90});
                    highLine.append({point.day, *point.high90});
                }
            }
        m_lines[line]->replace(thinLine(points, span, columns()));
    }
    m_low->replace(thinLine(lowLine, span, columns()));
    m_high->replace(thinLine(highLine, span, columns()));
}

void MeasureChart::drawMarks()
{
    const PlotMap pixels = map(Side::left);
    const QPointF corner = pixels.plot.topLeft();
    std::vector<ChartMark> drawn;
    for (size_t line = 0; line < m_content.lines.size(); ++line) {
        std::vector<QPointF> places;
        for (const MeasurePoint &point : m_content.lines[line].points)
            places.push_back(pixels.at(point.day, point.value) - corner);
        for (const int i : thinMarks(places, pixels.plot.width(), pixels.plot.height(), kMarkCell))
            drawn.push_back(
                {places[size_t(i)] + corner, lineShape(line), lineColour(line, palette())});
    }
    marks().setMarks(std::move(drawn));
}

QString MeasureChart::wordsOf(const Stop &stop) const
{
    const Place &place = m_places[size_t(stop.index)];
    const MeasureLine &line = m_content.lines[place.line];
    const MeasurePoint &point = line.points[place.point];
    const QLocale locale;
    const auto number = [&](double value) {
        return locale.toString(value, 'f', m_content.decimals);
    };
    QString said = locale.toString(core::fromEngineDay(int(point.day)), QLocale::ShortFormat)
        + u'\n' + line.name + u'\n'
        + (m_content.unit.isEmpty() ? number(point.value)
                                    : tr("%1 %2").arg(number(point.value), m_content.unit));
    if (point.low90 && point.high90)
        said +=
            u'\n' + tr("90 % interval %1 to %2").arg(number(*point.low90), number(*point.high90));
    return said;
}

} // namespace ui
