#include "ui/review/strength_chart.h"

#include "ui/charts/thin.h"
#include "ui/look/colours.h"
#include "ui/review/review_words.h"

#include <QAreaSeries>
#include <QLineSeries>
#include <algorithm>
#include <cmath>
#include <limits>

namespace ui {

namespace {
constexpr double kMarkCell = 3.0; ///< marks in one cell hide each other, px
/// Of the lowest estimate: a set that speaks for less was a warm-up, and does not stretch the axis.
constexpr double kWarmUp = 0.85;
} // namespace

MarkShape shapeOf(ReadingKind kind)
{
    constexpr MarkShape kInOrder[] = {MarkShape::dot, MarkShape::ring, MarkShape::triangle,
        MarkShape::diamond, MarkShape::caret, MarkShape::cross};
    static_assert(std::size(kInOrder) == kReadingKinds);
    return kInOrder[size_t(kind)];
}

QColor colourOf(ReadingKind kind, const QPalette &palette)
{
    const Colours &look = colours(palette);
    const QColor inOrder[] = {look.text, look.softTouch, look.sinkingTouch, look.bothTouches,
        look.chartReading, look.chartMissed};
    static_assert(std::size(inOrder) == kReadingKinds);
    return inOrder[size_t(kind)];
}

StrengthChart::StrengthChart(TimeWindow &window, QWidget *parent)
    : TimeChart(window, parent)
    , m_line(new QLineSeries(this))
    , m_low(new QLineSeries(this))
    , m_high(new QLineSeries(this))
    , m_band(new QAreaSeries(m_high, m_low))
{
    setAccessibleName(tr("Chart of the estimated max over time"));
    axes().add(m_band, Side::left);
    axes().add(m_line, Side::left);
    applyLook();
}

void StrengthChart::setContent(StrengthContent content)
{
    m_content = std::move(content);
    axes().setTitle(Side::left, core::symbol(m_content.unit));
    applyLook();
    refresh();
}

void StrengthChart::applyLook()
{
    TimeChart::applyLook();
    const Colours &look = colours(palette());
    const QColor line =
        m_content.knowledge == Knowledge::now ? look.chartEstimate : look.chartFiltered;
    m_line->setPen(
        QPen(line, 2.0, m_content.knowledge == Knowledge::now ? Qt::SolidLine : Qt::DashLine));
    m_band->setPen(Qt::NoPen);
    m_band->setBrush(bandOf(line));
}

void StrengthChart::redraw()
{
    const TimeSpan &span = window().span();
    double low = std::numeric_limits<double>::infinity();
    double high = -low;
    std::vector<Stop> stops;
    for (int i = 0; i < int(m_content.series.weeks.size()); ++i) {
        const WeekPoint &week = m_content.series.weeks[size_t(i)];
        if (!span.contains(week.day))
            continue;
        low = std::min(low, week.low90);
        high = std::max(high, week.high90);
        stops.push_back({week.day, week.value, Side::left, true, i});
    }
    const double least = std::isfinite(low) ? kWarmUp * low : 0.0;
    for (int i = 0; i < int(m_content.series.readings.size()); ++i) {
        const ReadingPoint &reading = m_content.series.readings[size_t(i)];
        if (!span.contains(reading.day))
            continue;
        if (!(reading.value < least))
            low = std::min(low, reading.value);
        high = std::max(high, reading.value);
        stops.push_back({reading.day, reading.value, Side::left, false, i});
    }
    if (low <= high)
        axes().setScale(Side::left, scaleFor(low, high, axes().mostValueSteps()));
    for (Stop &stop : stops)
        stop.value = shownAt(stop.value);
    setStops(std::move(stops));
    drawBand();
    drawMarks();
}

double StrengthChart::shownAt(double value) const
{
    return std::max(value, map(Side::left).values.from);
}

void StrengthChart::drawBand()
{
    QList<QPointF> line, lowLine, highLine;
    for (const WeekPoint &week : m_content.series.weeks) {
        line.append({week.day, week.value});
        lowLine.append({week.day, week.low90});
        highLine.append({week.day, week.high90});
    }
    const TimeSpan &span = window().span();
    m_line->replace(thinLine(line, span, columns()));
    m_low->replace(thinLine(lowLine, span, columns()));
    m_high->replace(thinLine(highLine, span, columns()));
}

void StrengthChart::drawMarks()
{
    const PlotMap pixels = map(Side::left);
    const QPointF corner = pixels.plot.topLeft();
    std::vector<QPointF> places;
    places.reserve(m_content.series.readings.size());
    for (const ReadingPoint &reading : m_content.series.readings)
        places.push_back(pixels.at(reading.day, shownAt(reading.value)) - corner);
    std::vector<ChartMark> drawn;
    for (const int i : thinMarks(places, pixels.plot.width(), pixels.plot.height(), kMarkCell)) {
        const ReadingKind kind = m_content.series.readings[size_t(i)].kind;
        drawn.push_back({places[size_t(i)] + corner, shapeOf(kind), colourOf(kind, palette())});
    }
    marks().setMarks(std::move(drawn));
}

QString StrengthChart::wordsOf(const Stop &stop) const
{
    if (stop.onLine)
        return valueWords(
            m_content.series.weeks[size_t(stop.index)], m_content.knowledge, m_content.unit);
    const ReadingPoint &reading = m_content.series.readings[size_t(stop.index)];
    const core::LoggedSession &session = m_content.sessions[size_t(reading.session)];
    const core::Variation *variation =
        core::find(m_content.variations, session.sets[size_t(reading.set)].variation);
    return variation ? valueWords(reading, session, *variation, m_content.unit) : QString();
}

} // namespace ui
