#include "ui/review/work_chart.h"

#include "core/loads/lift_estimate.h"
#include "ui/charts/thin.h"
#include "ui/look/colours.h"
#include "ui/review/review_words.h"

#include <QLineSeries>
#include <algorithm>

namespace ui {

namespace {
constexpr double kMidWeek = 3.5; ///< days from Monday's start to the middle of a week's bar
constexpr double kDotRoom = 5.0; ///< a week that is narrower has no dot, px

double middleOf(const core::WeekLoad &week)
{
    return core::engineDay(week.monday) + kMidWeek;
}
} // namespace

QColor tonnageFill(const QPalette &palette)
{
    const QColor bar = colours(palette).chartTonnage;
    const QColor ground = colours(palette).surface;
    const auto mix = [](int a, int b) { return (a * 11 + b * 9) / 20; };
    return {mix(bar.red(), ground.red()), mix(bar.green(), ground.green()),
        mix(bar.blue(), ground.blue())};
}

WorkChart::WorkChart(TimeWindow &window, QWidget *parent)
    : TimeChart(window, parent)
    , m_bars(new BarsItem(chart()))
    , m_lifts(new QLineSeries(this))
{
    setAccessibleName(tr("Chart of weekly tonnage and number of lifts"));
    marks().setZValue(10); // the dots belong to the line, not behind the bars
    axes().addRight();
    axes().add(m_lifts, Side::right);
    axes().setTitle(Side::right, tr("lifts"));
    applyLook();
}

void WorkChart::setContent(std::vector<core::WeekLoad> weeks, core::Unit unit)
{
    m_weeks = std::move(weeks);
    m_unit = unit;
    axes().setTitle(Side::left, tonnageUnit(unit));
    refresh();
}

void WorkChart::applyLook()
{
    TimeChart::applyLook();
    const Colours &look = colours(palette());
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
        const core::WeekLoad &week = m_weeks[size_t(i)];
        const double middle = middleOf(week);
        lifts.append({middle, double(week.lifts)});
        if (!span.contains(middle))
            continue;
        const double height = axisTonnage(week.tonnageKg, m_unit);
        tonnage = std::max(tonnage, height);
        most = std::max(most, week.lifts);
        stops.push_back({middle, height, Side::left, true, i});
    }
    axes().setScale(
        Side::left, scaleFor(0.0, tonnage > 0.0 ? tonnage : 1.0, axes().mostValueSteps()));
    axes().setScale(Side::right, scaleFor(0.0, most > 0 ? most : 1.0, axes().mostValueSteps()));
    setStops(std::move(stops));
    m_lifts->replace(thinLine(lifts, span, columns()));
    m_bars->setPlot(plotArea());
    m_bars->setBars(barsOf(m_weeks, m_unit, map(Side::left)), tonnageFill(palette()));
    drawDots();
}

void WorkChart::drawDots()
{
    std::vector<ChartMark> drawn;
    const PlotMap pixels = map(Side::right);
    if (pixels.xOf(7.0) - pixels.xOf(0.0) >= kDotRoom)
        for (const core::WeekLoad &week : m_weeks)
            if (const double middle = middleOf(week); pixels.time.contains(middle))
                drawn.push_back(
                    {pixels.at(middle, week.lifts), MarkShape::dot, colours(palette()).chartLifts});
    marks().setMarks(std::move(drawn));
}

QString WorkChart::wordsOf(const Stop &stop) const
{
    return valueWords(m_weeks[size_t(stop.index)], m_unit);
}

} // namespace ui
