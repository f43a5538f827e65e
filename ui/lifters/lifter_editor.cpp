#include "ui/lifters/lifter_editor.h"

#include "ui/lifters/gear_editor.h"
#include "ui/look/date_field.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/look/touch_mark.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>

namespace ui {

namespace {

constexpr int kPersonWidth = 440;

template <class Value> Value chosen(const QComboBox *box)
{
    return static_cast<Value>(box->currentData().toInt());
}

} // namespace

LifterEditor::LifterEditor(const core::Lifter &before, const QStringList &otherNames,
    const QStringList &groupsInUse, QDate today, QWidget *parent)
    : FormDialog(parent)
    , m_before(before)
    , m_otherNames(otherNames)
    , m_today(today)
    , m_unit(before.unit)
    , m_hadBodyweight(before.bodyweightKg.has_value())
{
    setWindowTitle(before.id.isValid() ? tr("Edit %1").arg(before.name) : tr("Add a lifter"));

    m_buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    m_buttons->button(QDialogButtonBox::Ok)
        ->setText(before.id.isValid() ? tr("&Save") : tr("&Add lifter"));
    connect(m_buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(m_buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    QLayout *pages = rowLayout({{personPage(groupsInUse), 3}, {gearPage(), 2}}, space::page);
    fill(draftOf(before));
    layOut(pages, m_buttons);
    check();
    m_name->setFocus();
}

QWidget *LifterEditor::personPage(const QStringList &groupsInUse)
{
    m_name = named("name", new QLineEdit);
    m_sex = new QComboBox;
    for (const core::Sex sex : {core::Sex::unstated, core::Sex::female, core::Sex::male})
        m_sex->addItem(core::words(sex), int(sex));
    m_sex->setToolTip(
        tr("Lets the first estimate lean on lifters of the same sex. May stay open."));
    m_birthYear = named("birthYear", new QLineEdit);
    m_birthYear->setMaximumWidth(110);
    m_isAdult = named("isAdult", new QCheckBox(tr("18 or older")));
    m_isAdult->setToolTip(tr("Where the birth year is not known."));
    m_knowsTraining = named("knowsTraining", new QCheckBox(tr("T&rains since")));
    m_trainingSince = named("trainingSince", new DateField(m_today, tr("First day of training")));
    m_trainingSince->setMaximumDate(m_today);
    m_bodyweight = named("bodyweight", new QLineEdit);
    m_bodyweight->setMaximumWidth(110);
    m_bodyweightUnit = new QLabel;
    m_unitChoice = named("unit", new QComboBox);
    m_unitChoice->addItem(tr("kilograms (kg)"), int(core::Unit::kilogram));
    m_unitChoice->addItem(tr("pounds (lb)"), int(core::Unit::pound));
    m_touchStyle = named("touchStyle", new QComboBox);
    for (const core::TouchStyle style :
        {core::TouchStyle::undecided, core::TouchStyle::soft, core::TouchStyle::sinking})
        m_touchStyle->addItem(touchMarkIcon(style, palette()), core::words(style), int(style));
    m_gripNote = new QLineEdit;
    m_gripNote->setPlaceholderText(tr("such as: ring finger on the ring"));
    m_groups = named("groups", new QLineEdit);
    m_groups->setPlaceholderText(groupsInUse.isEmpty()
            ? tr("with commas, such as: juniors, Tuesday evening")
            : tr("in use: %1").arg(groupsInUse.join(QStringLiteral(", "))));
    m_hasMeet = named("hasMeet", new QCheckBox(tr("&Meet on")));
    m_meetDate = named("meetDate", new DateField(m_today, tr("Day of the meet")));
    m_notes = named("notes", new QPlainTextEdit);
    m_notes->setTabChangesFocus(true);
    m_notes->setMinimumHeight(60);

    m_nameProblem = named("nameProblem", new FieldNote(FieldNote::Kind::problem));
    m_birthYearProblem = new FieldNote(FieldNote::Kind::problem);
    m_ageCaution = named("ageCaution", new FieldNote(FieldNote::Kind::caution));
    m_bodyweightProblem = named("bodyweightProblem", new FieldNote(FieldNote::Kind::problem));
    FieldNote *touchHelp =
        explain(tr("Soft: the bar barely touches the chest. Sinking: it settles into the chest."));

    auto *page = new QWidget;
    page->setMinimumWidth(kPersonWidth);
    auto *form = new QFormLayout(page);
    form->setContentsMargins(0, 0, 0, 0);
    addRow(form, tr("&Name"), m_name, withNotes(m_name, {m_nameProblem}));
    addRow(form, tr("Se&x"), m_sex, inRow({m_sex}));
    addRow(form, tr("Birth &year"), m_birthYear,
        withNotes(inRow({m_birthYear, m_isAdult}), {m_birthYearProblem, m_ageCaution}));
    form->addRow(QString(), inRow({m_knowsTraining, m_trainingSince}));
    // Before the weight that is meant in it.
    addRow(form, tr("Un&it"), m_unitChoice, inRow({m_unitChoice}));
    addRow(form, tr("Body&weight"), m_bodyweight,
        withNotes(inRow({m_bodyweight, m_bodyweightUnit}), {m_bodyweightProblem}));
    addRow(form, tr("T&ouch style"), m_touchStyle, withNotes(inRow({m_touchStyle}), {touchHelp}));
    addRow(form, tr("Gri&p"), m_gripNote, m_gripNote);
    addRow(form, tr("&Groups"), m_groups, m_groups);
    form->addRow(QString(), inRow({m_hasMeet, m_meetDate}));
    addRow(form, tr("Not&es"), m_notes, m_notes);

    connect(m_name, &QLineEdit::textEdited, this, &LifterEditor::check);
    connect(m_birthYear, &QLineEdit::textEdited, this, &LifterEditor::check);
    connect(m_bodyweight, &QLineEdit::textEdited, this, &LifterEditor::check);
    connect(m_unitChoice, &QComboBox::activated, this, &LifterEditor::changeUnit);
    connect(m_hasMeet, &QCheckBox::toggled, m_meetDate, &QWidget::setEnabled);
    connect(m_hasMeet, &QCheckBox::toggled, this, &LifterEditor::check);
    connect(m_knowsTraining, &QCheckBox::toggled, m_trainingSince, &QWidget::setEnabled);
    for (QCheckBox *box : {m_isAdult, m_knowsTraining})
        connect(box, &QCheckBox::toggled, this, &LifterEditor::check);
    for (DateField *date : {m_trainingSince, m_meetDate})
        connect(date, &DateField::edited, this, &LifterEditor::check);
    return page;
}

QWidget *LifterEditor::gearPage()
{
    m_gear = new GearEditor;
    connect(m_gear, &GearEditor::edited, this, &LifterEditor::check);
    connect(m_gear, &GearEditor::usualAskedFor, this, &LifterEditor::takeUsual);
    return boxed(columnLayout(
        {explain(tr("Planned loads are rounded to what these plates can make.")), {m_gear, 1}}));
}

void LifterEditor::fill(const LifterDraft &draft)
{
    m_name->setText(draft.name);
    m_sex->setCurrentIndex(m_sex->findData(int(draft.sex)));
    m_birthYear->setText(draft.birthYear);
    m_isAdult->setChecked(draft.isAdult);
    m_knowsTraining->setChecked(draft.trainingSince.has_value());
    m_trainingSince->setDate(draft.trainingSince.value_or(m_today));
    m_trainingSince->setEnabled(draft.trainingSince.has_value());
    m_bodyweight->setText(draft.bodyweight);
    m_bodyweightUnit->setText(core::symbol(draft.unit));
    m_unitChoice->setCurrentIndex(m_unitChoice->findData(int(draft.unit)));
    m_touchStyle->setCurrentIndex(m_touchStyle->findData(int(draft.touchStyle)));
    m_gripNote->setText(draft.gripNote);
    m_gripNote->setCursorPosition(0);
    m_groups->setText(draft.groups);
    m_groups->setCursorPosition(0);
    m_hasMeet->setChecked(draft.meetDate.has_value());
    m_meetDate->setDate(draft.meetDate.value_or(m_today.addMonths(3)));
    m_meetDate->setEnabled(draft.meetDate.has_value());
    m_notes->setPlainText(draft.notes);
    m_gear->setDraft(draft.gear, draft.unit);
}

LifterDraft LifterEditor::draft() const
{
    LifterDraft draft;
    draft.name = m_name->text();
    draft.sex = chosen<core::Sex>(m_sex);
    draft.birthYear = m_birthYear->text();
    draft.isAdult = m_isAdult->isChecked();
    if (m_knowsTraining->isChecked())
        draft.trainingSince = m_trainingSince->date();
    draft.bodyweight = m_bodyweight->text();
    draft.unit = m_unit;
    draft.touchStyle = chosen<core::TouchStyle>(m_touchStyle);
    draft.gripNote = m_gripNote->text();
    draft.gear = m_gear->draft();
    draft.groups = m_groups->text();
    if (m_hasMeet->isChecked())
        draft.meetDate = m_meetDate->date();
    draft.notes = m_notes->toPlainText();
    return draft;
}

void LifterEditor::check()
{
    m_reading = read(draft(), m_before, m_otherNames, m_today);
    const QMap<LifterField, QString> &wrong = m_reading.problems;
    m_nameProblem->say(wrong.value(LifterField::name));
    m_birthYearProblem->say(wrong.value(LifterField::birthYear));
    m_bodyweightProblem->say(wrong.value(LifterField::bodyweight));
    m_isAdult->setEnabled(m_birthYear->text().trimmed().isEmpty());
    m_ageCaution->say(ageCaution(m_reading.lifter, m_today));
    m_gear->setProblems(wrong.value(LifterField::bar), wrong.value(LifterField::collars),
        wrong.value(LifterField::plates));
    m_buttons->button(QDialogButtonBox::Ok)->setEnabled(wrong.isEmpty() && areDatesSound());
}

bool LifterEditor::areDatesSound() const
{
    return (!m_hasMeet->isChecked() || m_meetDate->isSound())
        && (!m_knowsTraining->isChecked() || m_trainingSince->isSound());
}

void LifterEditor::accept()
{
    check(); // fields that cannot be wrong do not check as they change
    if (m_reading.problems.isEmpty() && areDatesSound())
        FormDialog::accept();
}

void LifterEditor::changeUnit()
{
    const auto unit = chosen<core::Unit>(m_unitChoice);
    if (unit == m_unit)
        return;
    const LifterDraft typed = draft();
    check();
    // From here on the converted weights are the exact ones behind the texts.
    m_before = inUnit(m_reading.lifter, unit);
    LifterDraft next = draftOf(m_before);
    next.name = typed.name;
    next.birthYear = typed.birthYear;
    // A weight that was only just typed was meant in the unit that is now set.
    if (!m_hadBodyweight || m_reading.problems.contains(LifterField::bodyweight))
        next.bodyweight = typed.bodyweight;
    m_unit = unit;
    fill(next);
    check();
}

void LifterEditor::takeUsual(core::Unit unit)
{
    m_before.gear = core::usualGear(unit);
    m_gear->setDraft(gearDraft(m_before.gear, m_unit), m_unit);
    check();
}

} // namespace ui
