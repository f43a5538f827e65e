#include "ui/review/review_page.h"

#include "ui/look/form_parts.h"
#include "ui/look/page_help.h"
#include "ui/review/choice_row.h"
#include "ui/review/compare_button.h"
#include "ui/review/done_words.h"
#include "ui/review/measure_chart.h"
#include "ui/review/measure_panel.h"
#include "ui/review/range_row.h"
#include "ui/review/review_charts.h"
#include "ui/review/review_content.h"
#include "ui/review/review_legend.h"
#include "ui/review/review_side.h"
#include "ui/review/review_words.h"
#include "ui/review/touch_panel.h"
#include "ui/roster/estimates.h"
#include "ui/roster/insights.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"
#include "ui/roster/today.h"

#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <algorithm>

namespace ui {

ReviewPage::ReviewPage(OpenRoster &roster, Estimates &estimates, Insights &insights,
    LifterHistory &history, Selection &selection, QWidget *parent)
    : QWidget(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_insights(insights)
    , m_history(history)
    , m_selection(selection)
    , m_lifts(new ChoiceRow(tr("Lift"),
          {words(core::Lift::bench), words(core::Lift::squat), words(core::Lift::deadlift)}))
    , m_ranges(new RangeRow(m_window))
    , m_compare(new CompareButton(int(kMostLines) - 1))
    , m_charts(new ReviewCharts(m_window))
    , m_side(new ReviewSide)
    , m_message(named("reviewMessage", centredWords()))
    , m_stack(new QStackedWidget)
{
    m_lifts->setChosen(int(m_lift));
    m_side->setKnowledge(m_knowledge);
    m_message->setMargin(space::page);
    m_stack->addWidget(boxed(rowLayout({{m_charts, 1}, m_side}, space::group)));
    m_stack->addWidget(m_message);
    fill(this, columnLayout({makeTopBar(), {m_stack, 1}}),
        {space::group, space::gap, space::group, space::gap});
    connectParts();
    new HelpSection(
        tr("In a chart"),
        [] {
            return HelpRows{keyRow({Qt::Key_Plus, Qt::Key_Minus}, tr("a shorter or longer time")),
                keyRow({Qt::Key_Left, Qt::Key_Right}, tr("earlier, later")),
                keyRow({Qt::Key_Home}, tr("all of it")), keyRow({Qt::Key_End}, tr("the latest")),
                keyRow({Qt::CTRL | Qt::Key_Left, Qt::CTRL | Qt::Key_Right},
                    tr("read the point before or after")),
                keyRow({Qt::Key_Escape}, tr("read no point"))};
        },
        this);
}

QWidget *ReviewPage::makeTopBar()
{
    auto *copy = new QPushButton(tr("Copy picture"));
    copy->setToolTip(tr("All charts as one picture for a message or a report"));
    connect(copy, &QPushButton::clicked, m_charts, &ReviewCharts::copyPicture);
    auto *keys = new QShortcut(QKeySequence::Copy, this);
    keys->setContext(Qt::WidgetWithChildrenShortcut);
    keys->setWhatsThis(copy->text());
    connect(keys, &QShortcut::activated, m_charts, &ReviewCharts::copyPicture);

    return boxed(rowLayout({m_lifts, space::group, m_ranges, Stretch{1}, m_compare, copy}));
}

void ReviewPage::connectParts()
{
    connect(
        m_lifts, &ChoiceRow::chosen, this, [this](int choice) { showLift(core::Lift(choice)); });
    connect(m_compare, &CompareButton::chosenChanged, this,
        [this] { m_charts->measures().choose(Measure::compare); });
    connect(m_side, &ReviewSide::knowledgeChosen, this, &ReviewPage::setKnowledge);
    connect(&m_side->touch(), &TouchPanel::confirmed, this, [this](core::TouchStyle style) {
        if (const core::Lifter *lifter = m_roster.lifter(m_selection.lifter()))
            m_roster.perform(tr("Set the touch style of %1").arg(lifter->name),
                core::confirmTouchStyle(*lifter, style));
    });
    connect(&m_window, &TimeWindow::spanChanged, this, &ReviewPage::showTrend);

    connect(&m_roster, &OpenRoster::changed, this, &ReviewPage::follow);
    connect(&m_history, &LifterHistory::changed, this, &ReviewPage::refresh);
    connect(&m_insights, &Insights::changed, this, &ReviewPage::refresh);
    connect(&m_estimates, &Estimates::changed, this, [this](const QSet<core::LifterId> &lifters) {
        const std::vector<core::LifterId> &compared = m_compare->chosen();
        if (lifters.contains(m_selection.lifter())
            || std::any_of(compared.begin(), compared.end(),
                [&lifters](core::LifterId id) { return lifters.contains(id); }))
            refresh();
    });
}

void ReviewPage::showLift(core::Lift lift)
{
    m_lift = lift;
    m_lifts->setChosen(int(lift));
    refresh();
}

void ReviewPage::setKnowledge(Knowledge knowledge)
{
    m_knowledge = knowledge;
    m_side->setKnowledge(knowledge);
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

    m_unit = lifter->unit;
    m_weeks = content.series.weeks;
    m_window.setSeason(seasonOf(*lifter, m_roster.blocks(lifter->id)));
    m_ranges->setBounds(boundsOf(content.series, work, m_window.season()));
    m_side->setStanding(lifter->name, lift ? lift->estimate : strength::LifterEstimate());
    m_side->legend().setContent(content.series, m_lift, m_knowledge);
    m_charts->setContent(std::move(content), work);
    m_compare->setLifters(m_roster.lifters());
    m_charts->measures().setSource([this](Measure measure) { return measured(measure); });
    const core::LiftEstimate *bench = m_estimates.of(lifter->id, core::Lift::bench);
    m_side->touch().setVisible(bench && m_lift == core::Lift::bench);
    if (bench)
        m_side->touch().show(*lifter, *bench, m_insights.touch(), m_roster.variations());
    m_stack->setCurrentIndex(0);
    showTrend();
    showDone(*lifter);
}

void ReviewPage::showDone(const core::Lifter &lifter)
{
    const QDate today = m_roster.today().date();
    const std::vector<core::ResolvedCard> cards =
        core::asGiven(m_roster.cards(lifter.id, today.addDays(-kScoredDays), today), lifter,
            m_roster.variations(), m_history.given());
    const core::DoneInput done{
        cards, m_history.sessions(), m_history.checkIns(), m_roster.variations(), today};
    m_side->setDone(adherenceWords(core::adherenceOfLate(done)),
        m_insights.isBusy()
            ? tr("How far the chances given hold is being worked out.")
            : scoreWords(core::scoreGiven(cards, m_history.sessions(), m_roster.variations()),
                m_insights.score()));
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
    m_side->setTrend(trendWords(m_weeks, m_window.span().from, m_window.span().to, m_unit));
}

} // namespace ui
