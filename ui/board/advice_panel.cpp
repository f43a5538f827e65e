#include "ui/board/advice_panel.h"

#include "core/domain/variation.h"
#include "ui/board/week_plan.h"
#include "ui/look/form_parts.h"
#include "ui/look/text.h"
#include "ui/roster/estimates.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/open_roster.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QListWidget>
#include <QSpinBox>
#include <algorithm>

namespace ui {

namespace {

constexpr int kMostReps = 12;
constexpr double kNoRpe = 5.5; ///< the step below the least that can be asked for

} // namespace

QString adviceText(
    int rank, const core::Advice &advice, const std::vector<core::Variation> &catalogue)
{
    const core::Variation *variation = core::find(catalogue, advice.variation);
    QString text = Text::tr("%1. %2").arg(rank).arg(variation ? variation->name : QString());
    if (advice.leadReps > 0)
        text += Text::tr(", lead-rep set");
    for (const core::AdviceTerm &term : advice.terms)
        if (term.points != 0.0)
            text += QStringLiteral("\n%1 %2").arg(
                term.points > 0.0 ? QStringLiteral("+") : QStringLiteral("\u2212"), term.words);
    return text;
}

AdvicePanel::AdvicePanel(OpenRoster &roster, Estimates &estimates, LifterHistory &history,
    WeekPlan &plan, QWidget *parent)
    : QWidget(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_history(history)
    , m_plan(plan)
    , m_for(plainWords())
    , m_lift(new QComboBox)
    , m_reps(new QSpinBox)
    , m_rpe(new QDoubleSpinBox)
    , m_cautions(heading({}))
    , m_list(new QListWidget)
{
    for (const core::Lift lift : {core::Lift::bench, core::Lift::squat, core::Lift::deadlift})
        m_lift->addItem(core::words(lift), int(lift));
    m_reps->setRange(1, kMostReps);
    m_reps->setValue(3);
    m_rpe->setRange(kNoRpe, 10.0);
    m_rpe->setSingleStep(0.5);
    m_rpe->setDecimals(1);
    m_rpe->setSpecialValueText(tr("any"));
    m_rpe->setValue(kNoRpe);
    m_lift->setAccessibleName(tr("Lift"));
    m_reps->setAccessibleName(tr("Reps a set"));
    m_rpe->setAccessibleName(tr("RPE"));
    m_cautions->setWordWrap(true);
    m_cautions->hide();
    m_list->setWordWrap(true);
    m_list->setAlternatingRowColors(true);
    m_list->setSpacing(space::hair);
    m_list->setResizeMode(QListView::Adjust);
    m_list->setVerticalScrollMode(QListView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setAccessibleName(tr("Variations, best first"));

    auto *form = new QFormLayout;
    form->setContentsMargins(0, 0, 0, 0);
    addRow(form, tr("&Lift"), m_lift, m_lift);
    addRow(form, tr("&Reps a set"), m_reps, m_reps);
    addRow(form, tr("R&PE"), m_rpe, m_rpe);
    fill(this, columnLayout({m_for, form, m_cautions, {m_list, 1}}), {0, space::tight, 0, 0});

    connect(m_lift, &QComboBox::currentIndexChanged, this, &AdvicePanel::rank);
    connect(m_reps, &QSpinBox::valueChanged, this, &AdvicePanel::rank);
    connect(m_rpe, &QDoubleSpinBox::valueChanged, this, &AdvicePanel::rank);
    connect(&plan, &WeekPlan::changed, this, &AdvicePanel::rank);
    connect(&history, &LifterHistory::changed, this, &AdvicePanel::rank);
    connect(m_list, &QListWidget::itemActivated, this, &AdvicePanel::choose);
}

void AdvicePanel::setPlace(BoardPlace place)
{
    if (place == m_place)
        return;
    m_place = place;
    rank();
}

void AdvicePanel::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    rank();
}

core::Slot AdvicePanel::slotAsked() const
{
    core::Slot slot;
    slot.lift = core::Lift(m_lift->currentData().toInt());
    slot.reps = m_reps->value();
    if (m_rpe->value() > kNoRpe)
        slot.rpe = m_rpe->value();
    return slot;
}

void AdvicePanel::rank()
{
    if (!isVisible())
        return;
    m_list->clear();
    m_ranking = {};
    const core::Lifter *lifter = m_plan.lifter();
    if (!lifter)
        return;
    const QDate day = m_plan.monday().addDays(m_place.day);
    const DayView &shown = m_plan.view().days[size_t(m_place.day)];
    m_for->setText(tr("For %1 %2. Enter puts the marked one there.").arg(shown.name, shown.date));

    const core::Slot slot = slotAsked();
    const std::vector<core::Card> cards = m_roster.cards(
        lifter->id, day.addDays(-core::kWeekDays), m_plan.monday().addDays(core::kWeekDays - 1));
    m_ranking = core::rankVariations(slot,
        {*lifter, m_roster.variations(), day, cards, m_history.sessions(), m_history.checkIns(),
            m_estimates.of(lifter->id, slot.lift)});
    m_cautions->setText(m_ranking.cautions.join(u'\n'));
    m_cautions->setVisible(!m_ranking.cautions.isEmpty());
    for (int i = 0; const core::Advice &advice : m_ranking.advice)
        m_list->addItem(adviceText(++i, advice, m_roster.variations()));
    if (m_list->count() > 0)
        m_list->setCurrentRow(0);
}

void AdvicePanel::choose()
{
    const int row = m_list->currentRow();
    if (row < 0 || row >= int(m_ranking.advice.size()))
        return;
    const core::Advice advice = m_ranking.advice[size_t(row)];
    Q_EMIT chosen(advice.variation, core::adviceSetLine(advice, slotAsked(), m_ranking));
}

} // namespace ui
