#include "ui/review/work_chart.h"

#include "ui/charts/thin.h"
#include "ui/look/colours.h"
#include "ui/review/review_words.h"

#include <QAreaSeries>
#include <QLineSeries>
#include <algorithm>

namespace ui {

namespace {
constexpr double kMidWeek = 3.5; ///< days from Monday's start to the middle of a week's bar
constexpr double kBarGap = 0.7;  ///< days left free on each side of a bar ...
constexpr double kNarrow = 5.0;  ///< ... unless a week is narrower than this, px
} // namespace

WorkChart::WorkChart(TimeWindow &window, QWidget *parent)
    : TimeChart(window, parent)
    , m_barTops(new QLineSeries(this))
    , m_bars(new QAreaSeries(m_barTops))
    , m_lifts(new QLineSeries(this))
{
    setAccessibleName(tr("Chart of weekly tonnage and number of lifts"));
    addRightAxis();
    addSeries(m_bars, Side::left);
    addSeries(m_lifts, Side::right);
    setAxisTitle(Side::right, tr("lifts"));
    applyLook();
}

void WorkChart::setContent(std::vector<WeekWork> weeks, core::Unit unit)
{
    m_weeks = std::move(weeks);
    m_unit = unit;
    setAxisTitle(Side::left, tonnageUnit(unit));
    refresh();
}

void WorkChart::applyLook()
{
    TimeChart::applyLook();
    const Colours &look = colours(palette());
    QColor fill = look.chartTonnage;
    fill.setAlphaF(0.55F);
    m_bars->setBrush(fill);
    m_bars->setPen(Qt::NoPen);
    m_lifts->setPen(QPen(look.chartLifts, 2.0));
}

void WorkChart::redraw()
{
    const TimeSpan &span = window().span();
    double tonnage = 0.0;
    int most = 0;
    QList<QPointF> lifts;
    std::vector<Stop> stops;
    for (int i = 0; i < int(m_weeks.size()); ++i) {
        const WeekWork &week = m_weeks[size_t(i)];
        const double middle = week.monday + kMidWeek;
        lifts.append({middle, double(week.lifts)});
        if (!span.contains(middle))
            continue;
        const double height = axisTonnage(week.tonnageKg, m_unit);
        tonnage = std::max(tonnage, height);
        most = std::max(most, week.lifts);
        stops.push_back({middle, height, Side::left, true, i});
    }
    setScale(Side::left, scaleFor(0.0, tonnage > 0.0 ? tonnage : 1.0, mostValueSteps()));
    setScale(Side::right, scaleFor(0.0, most > 0 ? most : 1.0, mostValueSteps()));
    setStops(std::move(stops));
    const bool narrow = columns() / span.days() * 7.0 < kNarrow;
    m_barTops->replace(
        thinLine(barOutline(m_weeks, m_unit, narrow ? 0.0 : kBarGap), span, columns()));
    m_lifts->replace(thinLine(lifts, span, columns()));
    drawMarks(narrow);
}

void WorkChart::drawMarks(bool narrow)
{
    std::vector<ChartMark> drawn;
    const PlotMap pixels = map(Side::right);
    if (!narrow)
        for (const WeekWork &week : m_weeks)
            if (const double middle = week.monday + kMidWeek; pixels.time.contains(middle))
                drawn.push_back(
                    {pixels.at(middle, week.lifts), MarkShape::dot, colours(palette()).chartLifts});
    marks().setMarks(std::move(drawn));
}

QString WorkChart::wordsOf(const Stop &stop) const
{
    return valueWords(m_weeks[size_t(stop.index)], m_unit);
}

} // namespace ui
