#include "ui/lifters/lifter_header.h"

#include "core/loads/estimate_words.h"
#include "ui/lifters/lifter_summary.h"
#include "ui/look/field_note.h"
#include "ui/look/metrics.h"
#include "ui/look/touch_mark.h"
#include "ui/roster/estimates.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>

namespace ui {

LifterHeader::LifterHeader(
    OpenRoster &roster, Estimates &estimates, Selection &selection, QWidget *parent)
    : QWidget(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_selection(selection)
    , m_name(new QLabel)
    , m_mark(new QLabel)
    , m_touch(new QLabel)
{
    m_name->setObjectName(QStringLiteral("name"));
    m_name->setFont(ui::font(Type::title, font()));
    m_name->setTextFormat(Qt::PlainText);
    // A long name gives way; the facts beside it do not.
    m_name->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);

    auto *touch = new QHBoxLayout;
    touch->setSpacing(space::tight);
    touch->addWidget(m_mark);
    touch->addWidget(m_touch);
    touch->addStretch();
    auto *who = new QVBoxLayout;
    who->setSpacing(space::hair);
    who->addStretch();
    who->addWidget(m_name);
    who->addLayout(touch);
    who->addStretch();

    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(space::group, space::gap, space::group, space::gap);
    row->setSpacing(space::page);
    row->addLayout(who, 1);
    m_bench = addFact(tr("Bench max today, 90 % interval"));
    m_bench.value->setObjectName(QStringLiteral("bench"));
    m_meet = addFact(tr("Meet"));
    m_bodyweight = addFact(tr("Bodyweight"));

    connect(&roster, &OpenRoster::changed, this, [this](const core::RosterChange &change) {
        if (change.has<core::Lifter>(m_selection.lifter()))
            refresh();
    });
    connect(&estimates, &Estimates::changed, this, [this](const QSet<core::LifterId> &lifters) {
        if (lifters.contains(m_selection.lifter()))
            refresh();
    });
    connect(&selection, &Selection::lifterChanged, this, &LifterHeader::refresh);
    refresh();
}

LifterHeader::Fact LifterHeader::addFact(const QString &caption)
{
    Fact fact{new QWidget, new QLabel, new FieldNote(FieldNote::Kind::explanation)};
    fact.value->setFont(ui::font(Type::heading, font()));
    fact.remark->setWordWrap(false);
    auto *words = new FieldNote(FieldNote::Kind::explanation);
    words->setWordWrap(false);
    words->say(caption);
    auto *column = new QVBoxLayout(fact.box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::hair);
    column->addWidget(words);
    column->addWidget(fact.value);
    column->addWidget(fact.remark);
    column->addStretch();
    layout()->addWidget(fact.box);
    return fact;
}

void LifterHeader::refresh()
{
    const core::Lifter *lifter = m_roster.lifter(m_selection.lifter());
    if (!lifter)
        return; // the page is not shown without one
    const QDate today = QDate::currentDate();
    m_name->setText(lifter->name);
    m_name->setToolTip(lifter->notes);
    m_mark->setPixmap(touchMarkIcon(lifter->touchStyle, palette()).pixmap(space::mark));
    m_touch->setText(lifter->gripNote.isEmpty()
            ? core::words(lifter->touchStyle)
            : core::words(lifter->touchStyle) + QStringLiteral(" · ") + lifter->gripNote);

    const core::LiftEstimate *fit = m_estimates.of(lifter->id, core::Lift::bench);
    const BenchSummary bench = benchSummary(fit, today);
    const QString band = bandText(bench, lifter->unit);
    m_bench.remark->say(fit ? core::words(bench.standing) : tr("working it out…"));
    m_bench.value->setText(band.isEmpty() ? QStringLiteral("–") : band);
    m_bench.box->setToolTip(core::advice(bench.standing));

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
