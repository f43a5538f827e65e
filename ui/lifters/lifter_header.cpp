#include "ui/lifters/lifter_header.h"

#include "core/loads/estimate_words.h"
#include "ui/lifters/age_question.h"
#include "ui/lifters/lifter_summary.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/look/touch_mark.h"
#include "ui/look/words_label.h"
#include "ui/roster/estimates.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"
#include "ui/roster/today.h"

#include <QEvent>
#include <QLocale>

namespace ui {

LifterHeader::LifterHeader(
    OpenRoster &roster, Estimates &estimates, Selection &selection, QWidget *parent)
    : QWidget(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_selection(selection)
    , m_name(named("name", new ElidedLabel))
    , m_mark(new QLabel)
    , m_touch(new ElidedLabel)
{
    m_name->setFont(ui::font(Type::title, font()));
    // A long name or grip gives way; the facts beside it do not.
    for (QLabel *line : {m_name, m_touch})
        line->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);

    QLayout *touch = rowLayout({m_mark, {m_touch, 1}}, space::tight);
    QLayout *facts = rowLayout(
        {{columnLayout({Stretch{}, m_name, touch, Stretch{}}, space::hair), 1}}, space::page);
    m_bench = addFact(*facts, tr("Bench max today, 90 % interval"));
    m_bench.value->setObjectName(QStringLiteral("bench"));
    m_meet = addFact(*facts, tr("Meet"));
    m_bodyweight = addFact(*facts, tr("Bodyweight"));
    m_age = new AgeQuestion(roster);
    fill(this,
        columnLayout(
            {boxed(facts, {space::group, space::gap, space::group, space::gap}), m_age}, 0));

    connect(&roster, &OpenRoster::changed, this, [this](const core::RosterChange &change) {
        if (change.has<core::Lifter>(m_selection.lifter()))
            refresh();
    });
    connect(&estimates, &Estimates::changed, this, [this](const QSet<core::LifterId> &lifters) {
        if (lifters.contains(m_selection.lifter()))
            refresh();
    });
    connect(&selection, &Selection::lifterChanged, this, &LifterHeader::refresh);
    connect(&roster.today(), &Today::changed, this, &LifterHeader::refresh);
    refresh();
}

LifterHeader::Fact LifterHeader::addFact(QLayout &row, const QString &caption)
{
    auto *remark = new FieldNote(FieldNote::Kind::explanation);
    FieldNote *words = explain(caption);
    for (QLabel *line : {remark, words})
        line->setWordWrap(false);
    QLabel *value = label(Type::heading);
    QWidget *box = boxed(columnLayout({words, value, remark, Stretch{}}, space::hair));
    row.addWidget(box);
    return {box, value, remark};
}

void LifterHeader::refresh()
{
    const core::Lifter *lifter = m_roster.lifter(m_selection.lifter());
    if (!lifter)
        return; // the page is not shown without one
    const QDate today = m_roster.today().date();
    m_name->setText(lifter->name);
    m_name->setToolTip(lifter->notes);
    m_age->askAbout(*lifter);
    m_mark->setPixmap(touchMarkIcon(lifter->touchStyle, palette()).pixmap(space::mark));
    m_touch->setText(lifter->gripNote.isEmpty()
            ? core::words(lifter->touchStyle)
            : core::words(lifter->touchStyle) + QStringLiteral(" · ") + lifter->gripNote);

    const core::LiftEstimate *fit = m_estimates.of(lifter->id, core::Lift::bench);
    const BenchSummary bench = benchSummary(fit, today);
    const QString band = bandText(bench, lifter->unit);
    m_bench.remark->say(fit ? core::words(fit->estimate) : tr("working it out…"));
    m_bench.value->setText(band.isEmpty() ? QStringLiteral("–") : band);
    m_bench.box->setToolTip(core::advice(fit ? fit->estimate : strength::LifterEstimate()));

    const QString countdown = meetText(lifter->meetDate, today);
    m_meet.box->setVisible(!countdown.isEmpty());
    if (!countdown.isEmpty()) {
        m_meet.value->setText(countdown);
        m_meet.remark->say(QLocale().toString(*lifter->meetDate, QLocale::ShortFormat));
    }

    m_bodyweight.box->setVisible(lifter->bodyweightKg.has_value());
    if (lifter->bodyweightKg)
        m_bodyweight.value->setText(core::formatLoad(*lifter->bodyweightKg, lifter->unit, 1));
}

void LifterHeader::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && m_mark)
        refresh();
}

} // namespace ui
