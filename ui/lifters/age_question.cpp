#include "ui/lifters/age_question.h"

#include "core/domain/lifter_edits.h"
#include "core/safety/unknown_age.h"
#include "ui/lifters/lifter_draft.h"
#include "ui/look/colours.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/today.h"

#include <QLineEdit>
#include <QPainter>
#include <QPushButton>

namespace ui {

namespace {
constexpr int kYearWidth = 70;
}

AgeQuestion::AgeQuestion(OpenRoster &roster, QWidget *parent)
    : QWidget(parent)
    , m_roster(roster)
    , m_words(named("ageWords", new FieldNote(FieldNote::Kind::caution)))
    , m_year(named("yearOfBirth", new QLineEdit))
{
    m_words->setFont(font());
    auto *adult = named("adult", new QPushButton(tr("&18 or older")));
    m_year->setFixedWidth(kYearWidth);
    m_year->setAccessibleName(tr("Year of birth"));
    auto *born = new FieldNote(FieldNote::Kind::caution, tr("or &born in"));
    born->setTextFormat(Qt::AutoText); // plain text has no mnemonic
    born->setWordWrap(false);
    born->setFont(font());
    born->setBuddy(m_year);
    fill(this, rowLayout({{m_words, 1}, adult, born, m_year}, space::gap),
        {space::group, space::tight, space::group, space::tight});
    connect(adult, &QPushButton::clicked, this, &AgeQuestion::sayAdult);
    connect(m_year, &QLineEdit::returnPressed, this, &AgeQuestion::takeYear);
    connect(m_year, &QLineEdit::textEdited, this, [this] {
        if (const core::Lifter *lifter = m_roster.lifter(m_lifter))
            ask(*lifter);
    });
    connect(&roster, &OpenRoster::settling, this, [this] {
        if (isVisible() && !m_year->text().trimmed().isEmpty())
            takeYear();
    });
    hide();
}

void AgeQuestion::askAbout(const core::Lifter &lifter)
{
    if (lifter.id != m_lifter) {
        m_lifter = lifter.id;
        m_year->clear();
        ask(lifter);
    }
    setVisible(core::isAgeUnknown(lifter));
}

void AgeQuestion::ask(const core::Lifter &lifter)
{
    m_words->say(
        tr("How old is %1? %2")
            .arg(lifter.name,
                core::whyNoMaximalYet(core::limitsOn(lifter, m_roster.today().date(), {}))));
}

void AgeQuestion::sayAdult()
{
    const core::Lifter *lifter = m_roster.lifter(m_lifter);
    if (!lifter)
        return;
    core::Lifter after = *lifter;
    after.isAdult = true;
    m_roster.perform(
        tr("Say that %1 is an adult").arg(lifter->name), core::changeLifter(*lifter, after));
}

void AgeQuestion::takeYear()
{
    const core::Lifter *lifter = m_roster.lifter(m_lifter);
    if (!lifter)
        return;
    LifterDraft draft = draftOf(*lifter);
    draft.birthYear = m_year->text();
    const LifterReading said = read(draft, *lifter, {}, m_roster.today().date());
    if (const QString wrong = said.problems.value(LifterField::birthYear); !wrong.isEmpty()) {
        m_words->say(wrong);
        return;
    }
    core::Lifter after = *lifter;
    after.birthYear = said.lifter.birthYear;
    if (m_roster.perform(
            tr("Say the age of %1").arg(lifter->name), core::changeLifter(*lifter, after)))
        m_year->clear();
}

void AgeQuestion::paintEvent(QPaintEvent *)
{
    QPainter(this).fillRect(rect(), colours(palette()).cautionGround);
}

} // namespace ui
