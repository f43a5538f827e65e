#include "ui/log/check_in_form.h"

#include "core/domain/check_in.h"
#include "ui/log/scale_field.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/look/page_help.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QLocale>
#include <QSignalBlocker>
#include <algorithm>

namespace ui {

namespace {

enum Pain { notAsked, none, pain };

QString capital(QString words)
{
    words[0] = words[0].toUpper();
    return words;
}

} // namespace

CheckInForm::CheckInForm(QWidget *parent)
    : QWidget(parent)
    , m_sleep(named("sleep", new ScaleField(tr("Sleep"), core::sleepSteps())))
    , m_stress(named("stress", new ScaleField(tr("Stress"), core::stressSteps())))
    , m_motivation(named("motivation", new ScaleField(tr("Motivation"), core::motivationSteps())))
    , m_pain(named("pain", new QComboBox))
    , m_area(named("painArea", new QComboBox))
    , m_painWords(named("painWords", new QLineEdit))
    , m_note(named("checkInNote", new QLineEdit))
    , m_stop(new FieldNote(FieldNote::Kind::problem))
    , m_problem(new FieldNote(FieldNote::Kind::caution))
    , m_readiness(heading({}))
{
    auto *form = new QFormLayout;
    form->setVerticalSpacing(space::hair);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    addRow(form, tr("S&leep"), m_sleep, m_sleep);
    addRow(form, tr("&Stress"), m_stress, m_stress);
    addRow(form, tr("Wish to &train"), m_motivation, m_motivation);
    form->addRow(label(Type::small, tr("Soreness: 1 very sore, 5 not at all")));
    for (const core::BodyArea area : core::kBodyAreas) {
        auto *field =
            new ScaleField(tr("Soreness, %1").arg(core::words(area)), core::sorenessSteps());
        field->setObjectName(core::fileWord(area));
        addRow(form, capital(core::words(area)), field, field);
        m_soreness.emplace(area, field);
        connect(field, &ScaleField::answered, this, &CheckInForm::give);
    }
    m_pain->addItem(tr("not asked"));
    m_pain->addItem(tr("no"));
    m_pain->addItem(tr("yes"));
    m_pain->setToolTip(
        tr("A pain stands, and holds back what works it, until this is answered with "
           "no."));
    auto *painRow = new QFormLayout;
    addRow(painRow, tr("&Pain, not soreness"), m_pain, inRow({m_pain}));
    m_area->addItem(tr("Where?"));
    for (const core::BodyArea area : core::kBodyAreas)
        m_area->addItem(capital(core::words(area)), int(area));
    m_area->addItem(tr("Elsewhere"));
    m_area->setAccessibleName(tr("Area of the pain"));
    m_painWords->setPlaceholderText(tr("Where exactly, and what is it like?"));
    m_painWords->setAccessibleName(tr("The pain in words"));
    m_note->setPlaceholderText(tr("Note"));
    m_note->setAccessibleName(tr("Note on the day"));
    // Items and scale after McLean et al. (2010), Int J Sports Physiol Perform 5:367-383; soreness
    // by area and motivation are our own.
    FieldNote *scale =
        explain(tr("Each from 1 (worst) to 5 (best); no answer counts as not asked. Readiness is "
                   "the mean of sleep, stress, motivation and the sorest area."));
    // Only the rows of answers are a form: a form cuts off words that wrap.
    fill(this,
        columnLayout(
            {form, painRow, m_area, m_painWords, m_problem, m_stop, m_note, m_readiness, scale},
            space::tight));

    new HelpSection(
        tr("Check-in"),
        [] {
            return HelpRows{
                keyRow({Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5}, tr("the answer")),
                keyRow({Qt::Key_Left, Qt::Key_Right}, tr("one step lower, one step higher")),
                keyRow({Qt::Key_Delete}, tr("take the answer back"))};
        },
        this);

    for (ScaleField *field : {m_sleep, m_stress, m_motivation})
        connect(field, &ScaleField::answered, this, &CheckInForm::give);
    connect(m_pain, &QComboBox::currentIndexChanged, this, [this] {
        showPain();
        if (hurts())
            m_area->setFocus();
        give();
    });
    connect(m_area, &QComboBox::currentIndexChanged, this, &CheckInForm::give);
    connect(m_painWords, &QLineEdit::editingFinished, this, &CheckInForm::give);
    connect(m_note, &QLineEdit::editingFinished, this, &CheckInForm::give);
    showPain();
}

void CheckInForm::setCheckIn(const core::CheckIn &checkIn)
{
    m_shown = checkIn;
    m_shown.id = {};
    m_sleep->setAnswer(checkIn.sleep);
    m_stress->setAnswer(checkIn.stress);
    m_motivation->setAnswer(checkIn.motivation);
    for (const auto &[area, field] : m_soreness) {
        const auto answer = checkIn.soreness.find(area);
        field->setAnswer(
            answer == checkIn.soreness.end() ? std::nullopt : std::optional(answer->second));
    }
    const QSignalBlocker quietPain(m_pain);
    const QSignalBlocker quietArea(m_area);
    m_pain->setCurrentIndex(checkIn.pain ? pain : checkIn.isPainFree ? none : notAsked);
    const bool isUntold = checkIn.pain && !checkIn.pain->area && checkIn.pain->words == untold();
    m_area->setCurrentIndex(!checkIn.pain || isUntold ? 0
            : checkIn.pain->area                      ? m_area->findData(int(*checkIn.pain->area))
                                                      : m_area->count() - 1);
    m_painWords->setText(checkIn.pain && !isUntold ? checkIn.pain->words : QString());
    m_note->setText(checkIn.note);
    showPain();
}

void CheckInForm::keepUnsaved(const core::CheckIn &stored)
{
    if (stored.lifter != m_shown.lifter || stored.day != m_shown.day)
        return;
    m_shown = stored;
    m_shown.id = {};
    m_problem->say(tr("Not saved: give any answer again to try once more."));
}

core::CheckIn CheckInForm::typed() const
{
    core::CheckIn checkIn;
    checkIn.lifter = m_shown.lifter;
    checkIn.day = m_shown.day;
    checkIn.sleep = m_sleep->answer();
    checkIn.stress = m_stress->answer();
    checkIn.motivation = m_motivation->answer();
    for (const auto &[area, field] : m_soreness)
        if (field->answer())
            checkIn.soreness[area] = *field->answer();
    checkIn.isPainFree = m_pain->currentIndex() == none;
    if (hurts()) {
        checkIn.pain = core::PainFlag{{}, m_painWords->text().trimmed()};
        if (const QVariant area = m_area->currentData(); area.isValid())
            checkIn.pain->area = core::BodyArea(area.toInt());
        // A pain is never passed over because nobody came to say where it is.
        if (!checkIn.pain->area && checkIn.pain->words.isEmpty())
            checkIn.pain->words = untold();
    }
    checkIn.note = m_note->text().trimmed();
    return checkIn;
}

void CheckInForm::give()
{
    showPain();
    if (!m_shown.lifter.isValid())
        return;
    const core::CheckIn now = typed();
    if (now == m_shown)
        return;
    m_shown = now;
    Q_EMIT said(now);
}

bool CheckInForm::giveUntold()
{
    if (!m_shown.lifter.isValid())
        return true;
    give();
    return typed() == m_shown; // else keepUnsaved() has been told
}

QString CheckInForm::untold()
{
    return tr("not said where");
}

bool CheckInForm::hurts() const
{
    return m_pain->currentIndex() == pain;
}

void CheckInForm::showPain()
{
    const core::CheckIn now = typed();
    m_area->setVisible(hurts());
    m_painWords->setVisible(hurts());
    QString stop;
    if (hurts())
        stop = tr("Stop what hurts. Sharp pain, numbness, or pain that stays is for a physician or "
                  "physiotherapist; no load and no maximal attempt is suggested through it.");
    if (now.pain && !now.pain->area)
        stop += u' '
            + tr("While no area is named, all planned work is held back: ask where it hurts, and "
                 "choose the nearest one.");
    m_stop->say(stop);
    m_problem->say({});
    const std::optional<double> readiness = core::readiness(now);
    m_readiness->setText(readiness
            ? tr("Readiness %1 of 5").arg(QLocale().toString(*readiness, 'f', 1))
            : QString());
    m_readiness->setVisible(readiness.has_value());
}

} // namespace ui
