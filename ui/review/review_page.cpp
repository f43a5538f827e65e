#include "ui/review/review_page.h"

#include "core/domain/week.h"
#include "core/loads/estimate_words.h"
#include "ui/look/metrics.h"
#include "ui/review/compare_button.h"
#include "ui/review/measure_chart.h"
#include "ui/review/measure_panel.h"
#include "ui/review/review_legend.h"
#include "ui/review/review_words.h"
#include "ui/review/strength_chart.h"
#include "ui/review/touch_panel.h"
#include "ui/review/work_chart.h"
#include "ui/roster/estimates.h"
#include "ui/roster/insights.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"

#include <QButtonGroup>
#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr double kRanges[] = {56.0, 183.0, 366.0}; ///< days: 8 weeks, 6 months, 1 year
constexpr double kMargin = 4.0;                    ///< days left free at both ends of the log
constexpr double kMeetAhead = 120.0; ///< a meet further off would squeeze the log, days
constexpr int kPanelWidth = 264;

/// Buttons of which one is down. Ids count from 0.
QButtonGroup *addChoice(QHBoxLayout *bar, const QStringList &words, const QString &name)
{
    auto *group = new QButtonGroup(bar->parentWidget());
    for (const QString &word : words) {
        auto *button = new QToolButton(bar->parentWidget());
        button->setText(word);
        button->setCheckable(true);
        button->setAccessibleName(name + QStringLiteral(": ") + word);
        group->addButton(button, int(group->buttons().size()));
        bar->addWidget(button);
    }
    return group;
}

QLabel *heading(const QString &words, QWidget *parent)
{
    auto *label = new QLabel(words, parent);
    label->setFont(font(Type::strong, label->font()));
    return label;
}

QLabel *paragraph(QWidget *parent)
{
    auto *label = new QLabel(parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

/// From the first to the last day worth showing.
TimeSpan boundsOf(const StrengthSeries &series, const std::vector<core::WeekLoad> &work,
    std::optional<double> meetDay)
{
    double from = HUGE_VAL, to = -HUGE_VAL;
    const auto include = [&](double day) {
        from = std::min(from, day);
        to = std::max(to, day);
    };
    for (const WeekPoint &week : series.weeks)
        include(week.day);
    for (const core::WeekLoad &week : work) {
        include(core::engineDay(week.monday));
        include(core::engineDay(week.monday) + core::kWeekDays);
    }
    if (meetDay && *meetDay > to && *meetDay - to < kMeetAhead)
        to = *meetDay;
    return {from - kMargin, to + kMargin};
}

} // namespace

ReviewPage::ReviewPage(OpenRoster &roster, Estimates &estimates, Insights &insights,
    LifterHistory &history, Selection &selection, QWidget *parent)
    : QWidget(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_insights(insights)
    , m_history(history)
    , m_selection(selection)
    , m_stack(new QStackedWidget(this))
    , m_message(paragraph(this))
{
    auto *down = new QVBoxLayout(this);
    down->setContentsMargins(space::group, space::gap, space::group, space::gap);
    down->addWidget(makeTopBar());
    auto *across = new QWidget(this);
    auto *body = new QHBoxLayout(across);
    body->setContentsMargins({});
    body->setSpacing(space::group);
    body->addWidget(makeCharts(), 1);
    body->addWidget(makeSidePanel());
    m_message->setAlignment(Qt::AlignCenter);
    m_message->setMargin(space::page);
    m_message->setObjectName(QStringLiteral("reviewMessage"));
    m_stack->addWidget(across);
    m_stack->addWidget(m_message);
    down->addWidget(m_stack, 1);

    connect(&roster, &OpenRoster::changed, this, &ReviewPage::follow);
    connect(&history, &LifterHistory::changed, this, &ReviewPage::refresh);
    connect(&estimates, &Estimates::changed, this, [this](const QSet<core::LifterId> &lifters) {
        const std::vector<core::LifterId> compared = m_compare->chosen();
        if (lifters.contains(m_selection.lifter())
            || std::any_of(compared.begin(), compared.end(),
                [&lifters](core::LifterId id) { return lifters.contains(id); }))
            refresh();
    });
    connect(&insights, &Insights::changed, this, &ReviewPage::refresh);
    connect(&m_window, &TimeWindow::spanChanged, this, [this] {
        showTrend();
        showRange();
    });
}

QWidget *ReviewPage::makeTopBar()
{
    auto *bar = new QWidget(this);
    auto *across = new QHBoxLayout(bar);
    across->setContentsMargins({});
    m_lifts = addChoice(across,
        {words(core::Lift::bench), words(core::Lift::squat), words(core::Lift::deadlift)},
        tr("Lift"));
    m_lifts->button(int(core::Lift::bench))->setChecked(true);
    connect(m_lifts, &QButtonGroup::idClicked, this, [this](int id) { showLift(core::Lift(id)); });
    across->addSpacing(space::group);

    m_ranges =
        addChoice(across, {tr("8 weeks"), tr("6 months"), tr("1 year"), tr("All")}, tr("Range"));
    m_ranges->button(*m_range)->setChecked(true);
    connect(m_ranges, &QButtonGroup::idClicked, this, [this](int id) {
        m_range = id;
        m_window.show(spanOf(id));
        showRange();
    });
    across->addStretch(1);

    m_compare = new CompareButton(int(kMostLines) - 1, bar);
    connect(m_compare, &CompareButton::chosenChanged, this,
        [this] { m_measures->choose(Measure::compare); });
    across->addWidget(m_compare);
    auto *copy = new QPushButton(tr("Copy picture"), bar);
    copy->setToolTip(tr("All charts as one picture for a message or a report"));
    connect(copy, &QPushButton::clicked, this, &ReviewPage::copyPicture);
    across->addWidget(copy);
    return bar;
}

QWidget *ReviewPage::makeCharts()
{
    auto *charts = new QSplitter(Qt::Vertical, this);
    charts->setChildrenCollapsible(false);
    const auto add = [charts](const QString &title, QWidget *chart, int share) {
        auto *part = new QWidget(charts);
        auto *down = new QVBoxLayout(part);
        down->setContentsMargins({});
        down->setSpacing(space::hair);
        down->addWidget(heading(title, part));
        down->addWidget(chart, 1);
        charts->addWidget(part);
        charts->setStretchFactor(charts->count() - 1, share);
    };
    m_strength = new StrengthChart(m_window);
    m_work = new WorkChart(m_window);
    add(tr("Estimated max and the sets behind it"), m_strength, 3);
    add(tr("Weekly tonnage and number of lifts"), m_work, 2);
    m_measures = new MeasurePanel(m_window, charts);
    charts->addWidget(m_measures);
    charts->setStretchFactor(charts->count() - 1, 2);
    const std::initializer_list<TimeChart *> all{m_strength, m_work, &m_measures->chart()};
    for (TimeChart *read : all)
        for (TimeChart *other : all)
            if (other != read)
                connect(read, &TimeChart::dayRead, other, &TimeChart::showHairline);
    m_charts = charts;

    auto *keys = new QShortcut(QKeySequence::Copy, this);
    keys->setContext(Qt::WidgetWithChildrenShortcut);
    connect(keys, &QShortcut::activated, this, &ReviewPage::copyPicture);
    return charts;
}

QWidget *ReviewPage::makeSidePanel()
{
    auto *panel = new QWidget;
    auto *down = new QVBoxLayout(panel);
    down->setContentsMargins(0, 0, space::gap, 0);
    m_standing = heading({}, panel);
    m_standing->setObjectName(QStringLiteral("standing"));
    m_trend = paragraph(panel);
    m_trend->setObjectName(QStringLiteral("trend"));
    m_advice = paragraph(panel);
    down->addWidget(m_standing);
    down->addWidget(m_advice);
    down->addWidget(m_trend);
    down->addSpacing(space::gap);

    down->addWidget(heading(tr("The line shows what is"), panel));
    m_views = new QButtonGroup(panel);
    for (const Knowledge knowledge : {Knowledge::now, Knowledge::then}) {
        auto *choice = new QRadioButton(words(knowledge), panel);
        choice->setAccessibleDescription(explanation(knowledge));
        m_views->addButton(choice, int(knowledge));
        auto *why = paragraph(panel);
        why->setText(explanation(knowledge));
        why->setFont(ui::font(Type::small, why->font()));
        down->addWidget(choice);
        down->addWidget(why);
    }
    m_views->button(int(m_knowledge))->setChecked(true);
    connect(
        m_views, &QButtonGroup::idClicked, this, [this](int id) { setKnowledge(Knowledge(id)); });
    down->addSpacing(space::gap);

    down->addWidget(heading(tr("Marks"), panel));
    m_legend = new ReviewLegend(panel);
    down->addWidget(m_legend);
    down->addSpacing(space::gap);
    m_touch = new TouchPanel(panel);
    down->addWidget(m_touch);
    connect(m_touch, &TouchPanel::confirmed, this, [this](core::TouchStyle style) {
        if (const core::Lifter *lifter = m_roster.lifter(m_selection.lifter()))
            m_roster.perform(tr("Set the touch style of %1").arg(lifter->name),
                core::confirmTouchStyle(*lifter, style));
    });
    down->addStretch(1);
    auto *help = paragraph(panel);
    help->setFont(ui::font(Type::small, help->font()));
    help->setText(
        tr("Wheel or + and - zoom; drag or arrow keys move; Shift with a drag picks a span; "
           "Ctrl with the arrow keys reads values; Home shows all."));
    down->addWidget(help);

    auto *scroll = new QScrollArea(this);
    scroll->setWidget(panel);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFixedWidth(kPanelWidth);
    return scroll;
}

void ReviewPage::showLift(core::Lift lift)
{
    m_lift = lift;
    m_lifts->button(int(lift))->setChecked(true);
    refresh();
}

void ReviewPage::setKnowledge(Knowledge knowledge)
{
    m_knowledge = knowledge;
    m_views->button(int(knowledge))->setChecked(true);
    refresh();
}

void ReviewPage::showMessage(const QString &words)
{
    m_message->setText(words);
    m_stack->setCurrentWidget(m_message);
}

void ReviewPage::follow(const core::RosterChange &change)
{
    // The log and the check-ins come by way of the history.
    if (change.has<core::Lifter, core::Card, core::Block>(m_selection.lifter())
        || change.has<core::Variation>())
        refresh();
    else if (change.has<core::Lifter>())
        m_compare->setLifters(m_roster.lifters());
}

void ReviewPage::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    if (m_stale)
        refresh();
}

void ReviewPage::refresh()
{
    m_stale = !isVisible(); // a page that nobody sees reads no log
    if (m_stale)
        return;
    const core::Lifter *lifter = m_roster.lifter(m_selection.lifter());
    if (!lifter)
        return showMessage(tr("Choose a lifter in the list to see how the training worked."));
    const std::vector<core::WeekLoad> work =
        core::weekLoads(m_history.sessions(), m_roster.variations(), m_lift);
    if (work.empty())
        return showMessage(noSetsWords(m_lift));
    const core::LiftEstimate *lift = m_estimates.of(lifter->id, m_lift);
    if (!lift && m_estimates.isBusy())
        return showMessage(tr("The estimate is being worked out."));

    StrengthContent content;
    if (lift) {
        content.series = strengthSeries(*lift, m_roster.variations(), m_knowledge, lifter->unit);
        content.sessions = lift->readings;
    }
    content.variations = m_roster.variations();
    content.knowledge = m_knowledge;
    content.unit = lifter->unit;
    std::optional<double> meetDay;
    Season season;
    if (lifter->meetDate) {
        meetDay = core::engineDay(*lifter->meetDate);
        season.meets.push_back({*meetDay, tr("Meet")});
    }
    for (const core::Block &block : m_roster.blocks(lifter->id))
        season.blocks.push_back({double(core::engineDay(block.start)),
            double(core::engineDay(block.end()) + 1), block.name});
    m_window.setSeason(std::move(season));

    m_unit = lifter->unit;
    m_weeks = content.series.weeks;
    const strength::Standing standing = lift ? lift->estimate.standing : strength::Standing::noData;
    m_standing->setText(tr("%1: %2").arg(lifter->name, core::words(standing)));
    m_advice->setText(core::advice(standing));
    m_legend->setContent(content.series, m_lift, m_knowledge);
    const std::optional<int> range = m_range;
    m_window.setBounds(boundsOf(content.series, work, meetDay));
    if (range) {
        m_range = range;
        m_window.show(spanOf(*range));
    }
    m_strength->setContent(std::move(content));
    m_work->setContent(work, lifter->unit);
    m_compare->setLifters(m_roster.lifters());
    m_measures->setSource([this](Measure measure) { return measured(measure); });
    const core::LiftEstimate *bench = m_estimates.of(lifter->id, core::Lift::bench);
    m_touch->setVisible(bench && m_lift == core::Lift::bench);
    if (bench)
        m_touch->show(*lifter, *bench, m_insights.touch(), m_roster.variations());
    m_stack->setCurrentIndex(0);
    showTrend();
    showRange();
}

MeasureContent ReviewPage::measured(Measure measure)
{
    const core::Lifter *lifter = m_roster.lifter(m_selection.lifter());
    const core::LiftEstimate *lift = lifter ? m_estimates.of(lifter->id, m_lift) : nullptr;
    if (!lift)
        return {};
    // Cards only where they are shown: the other measures need no plan.
    const std::vector<core::Card> cards = measure == Measure::planned
        ? m_roster.cards(lifter->id, core::fromEngineDay(int(m_window.bounds().from)),
            core::fromEngineDay(int(m_window.bounds().to)))
        : std::vector<core::Card>{};
    MeasureSources sources{*lift, m_roster.variations(), cards, m_history.checkIns(),
        m_insights.touch(), lifter->touchStyle};
    sources.unit = lifter->unit;
    sources.knowledge = m_knowledge;
    sources.compared.push_back({lifter->name, lift});
    for (const core::LifterId id : m_compare->chosen())
        if (const core::Lifter *other = m_roster.lifter(id); other && id != lifter->id)
            sources.compared.push_back({other->name, m_estimates.of(id, m_lift)});
    return measureContent(measure, sources);
}

void ReviewPage::showTrend()
{
    m_trend->setText(trendWords(m_weeks, m_window.span().from, m_window.span().to, m_unit));
}

TimeSpan ReviewPage::spanOf(int range) const
{
    return range < int(std::size(kRanges)) ? lastDays(kRanges[range], m_window.bounds())
                                           : m_window.bounds();
}

void ReviewPage::showRange()
{
    // A button stays down only while its range is what is shown.
    if (m_range && m_window.span() != spanOf(*m_range))
        m_range.reset();
    m_ranges->setExclusive(false);
    for (QAbstractButton *button : m_ranges->buttons())
        button->setChecked(m_ranges->id(button) == m_range);
    m_ranges->setExclusive(true);
}

void ReviewPage::copyPicture()
{
    QGuiApplication::clipboard()->setPixmap(m_charts->grab());
}

} // namespace ui
