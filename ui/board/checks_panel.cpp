#include "ui/board/checks_panel.h"

#include "ui/board/week_plan.h"
#include "ui/checks/accept_dialog.h"
#include "ui/look/colours.h"
#include "ui/look/form_parts.h"
#include "ui/roster/estimates.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/open_roster.h"

#include <QEvent>
#include <QPushButton>
#include <algorithm>

namespace ui {

namespace {

QString severityWord(core::Severity severity)
{
    return severity == core::Severity::stop   ? ChecksPanel::tr("Stop")
        : severity == core::Severity::warning ? ChecksPanel::tr("Warning")
                                              : ChecksPanel::tr("Hint");
}

} // namespace

std::vector<core::Finding> inOrder(std::vector<core::Finding> findings)
{
    std::stable_sort(
        findings.begin(), findings.end(), [](const core::Finding &a, const core::Finding &b) {
            if (a.wavedThrough.has_value() != b.wavedThrough.has_value())
                return b.wavedThrough.has_value();
            return a.severity > b.severity;
        });
    return findings;
}

ChecksPanel::ChecksPanel(OpenRoster &roster, Estimates &estimates, LifterHistory &history,
    WeekPlan &plan, QWidget *parent)
    : QScrollArea(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_history(history)
    , m_plan(plan)
{
    setAccessibleName(tr("Plan checks"));
    m_rows = columnLayout({}, space::gap);
    setUpForScrolling(*this, boxed(m_rows, {0, space::tight, 0, space::tight}));
    connect(&plan, &WeekPlan::changed, this, &ChecksPanel::check);
    connect(&history, &LifterHistory::changed, this, &ChecksPanel::check);
    check();
}

int ChecksPanel::openCount() const
{
    return int(std::count_if(m_findings.begin(), m_findings.end(),
        [](const core::Finding &finding) { return !finding.wavedThrough; }));
}

void ChecksPanel::changeEvent(QEvent *event)
{
    QScrollArea::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        fill();
}

void ChecksPanel::check()
{
    std::vector<core::Finding> findings;
    if (const core::Lifter *lifter = m_plan.lifter()) {
        const auto estimateOf = [this, id = lifter->id](
                                    core::Lift lift) { return m_estimates.of(id, lift); };
        findings = inOrder(core::checkPlan({*lifter, m_roster.variations(), m_history.sessions(),
            m_plan.resolved(), estimateOf, m_history.checkIns(), m_history.waivers()}));
    }
    m_findings = std::move(findings);
    fill();
    Q_EMIT findingsChanged();
}

void ChecksPanel::fill()
{
    while (QLayoutItem *item = m_rows->takeAt(0)) {
        if (item->widget()) {
            item->widget()->hide();
            item->widget()->deleteLater(); // its button may be in the middle of its click
        }
        delete item;
    }
    if (m_findings.empty())
        m_rows->addWidget(plainWords(
            tr("Nothing to point out in this week. The checks compare it with the "
               "lifter's own last weeks, the meet, check-ins and the variations' ranges.")));
    for (const core::Finding &finding : m_findings)
        m_rows->addWidget(rowOf(finding));
    m_rows->addStretch(1);
}

QWidget *ChecksPanel::rowOf(const core::Finding &finding)
{
    const Colours &look = colours(palette());
    const bool open = !finding.wavedThrough;
    auto *row = new QFrame;
    row->setFrameShape(QFrame::StyledPanel);
    row->setAutoFillBackground(true);
    QPalette shown = row->palette();
    if (open && finding.severity != core::Severity::hint) {
        const bool stop = finding.severity == core::Severity::stop;
        shown.setColor(QPalette::Window, stop ? look.dangerGround : look.cautionGround);
        shown.setColor(QPalette::WindowText, stop ? look.dangerText : look.cautionText);
    } else {
        shown.setColor(QPalette::Window, look.surface);
        shown.setColor(QPalette::WindowText, open ? look.text : look.mutedText);
    }
    row->setPalette(shown);

    QLabel *head = plainWords(open ? severityWord(finding.severity) : tr("Accepted"));
    head->setFont(ui::font(Type::strong, font()));
    QHBoxLayout *buttons = rowLayout({}, space::tight);
    if (finding.key.card.isValid()) {
        auto *show = new QPushButton(tr("Show"));
        show->setAccessibleName(tr("Show the card: %1").arg(finding.words));
        connect(show, &QPushButton::clicked, this,
            [this, card = finding.key.card] { Q_EMIT cardWanted(card); });
        buttons->addWidget(show);
    }
    auto *settle = new QPushButton(open ? tr("Accept…") : tr("Reopen"));
    settle->setObjectName(open ? QStringLiteral("waveThrough") : QStringLiteral("takeUp"));
    settle->setAccessibleName(tr("%1: %2").arg(settle->text(), finding.words));
    settle->setToolTip(!open ? tr("Point this out again.")
            : core::needsNote(finding)
            ? tr("Accept this; it takes a note why, and it comes back if it gets worse.")
            : tr("Accept this with a note; it comes back if it gets worse."));
    connect(settle, &QPushButton::clicked, this,
        [this, finding, open] { open ? waveThrough(finding) : takeUp(finding); });
    buttons->addWidget(settle);
    buttons->addStretch(1);
    const QString below = open || finding.wavedThrough->isEmpty()
        ? finding.remedy
        : tr("Your note: %1").arg(*finding.wavedThrough);
    ui::fill(row,
        columnLayout({head, plainWords(finding.words), plainWords(below), buttons}, space::tight),
        {space::gap, space::tight, space::gap, space::tight});
    return row;
}

void ChecksPanel::waveThrough(const core::Finding &finding)
{
    AcceptDialog dialog({finding.words}, core::needsNote(finding), this);
    dialog.setWindowTitle(tr("Accept the finding"));
    if (dialog.exec() == QDialog::Accepted)
        m_roster.perform(tr("Accept a finding"),
            core::waive(finding, dialog.note(), m_history.waivers(),
                [this] { return m_roster.newId<core::Waiver>(); }));
}

void ChecksPanel::takeUp(const core::Finding &finding)
{
    m_roster.perform(tr("Reopen a finding"), core::takeUp(finding, m_history.waivers()));
}

} // namespace ui
