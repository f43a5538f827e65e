#include "ui/review/review_charts.h"

#include "ui/look/form_parts.h"
#include "ui/review/measure_chart.h"
#include "ui/review/measure_panel.h"
#include "ui/review/work_chart.h"

#include <QClipboard>
#include <QGuiApplication>

namespace ui {

ReviewCharts::ReviewCharts(TimeWindow &window, QWidget *parent)
    : QSplitter(Qt::Vertical, parent)
    , m_strength(new StrengthChart(window))
    , m_work(new WorkChart(window))
    , m_measures(new MeasurePanel(window))
{
    setChildrenCollapsible(false);
    add(tr("Estimated max and the sets behind it"), m_strength, 3);
    add(tr("Weekly tonnage and number of lifts"), m_work, 2);
    addWidget(m_measures);
    setStretchFactor(count() - 1, 2);

    const std::initializer_list<TimeChart *> all{m_strength, m_work, &m_measures->chart()};
    for (TimeChart *read : all)
        for (TimeChart *other : all)
            if (other != read)
                connect(read, &TimeChart::dayRead, other, &TimeChart::showHairline);
}

void ReviewCharts::add(const QString &title, QWidget *chart, int share)
{
    addWidget(boxed(columnLayout({heading(title), {chart, 1}}, space::hair)));
    setStretchFactor(count() - 1, share);
}

void ReviewCharts::setContent(StrengthContent content, std::vector<core::WeekLoad> work)
{
    const core::Unit unit = content.unit;
    m_strength->setContent(std::move(content));
    m_work->setContent(std::move(work), unit);
}

void ReviewCharts::copyPicture()
{
    QGuiApplication::clipboard()->setPixmap(grab());
}

} // namespace ui
