#include "ui/planning/block_dialog.h"

#include "ui/look/date_field.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <algorithm>

namespace ui {

namespace {
constexpr int kDeloadColumns = 6;
}

BlockDialog::BlockDialog(
    const QString &title, const core::Block &block, Check check, QWidget *parent)
    : FormDialog(parent)
    , m_start(block)
    , m_check(std::move(check))
    , m_name(new QLineEdit(block.name))
    , m_purpose(new QLineEdit(block.purpose))
    , m_firstDay(named("firstDay", new DateField(block.start, tr("First day"))))
    , m_weeks(new QSpinBox)
    , m_deloadGrid(new QGridLayout)
    , m_note(new FieldNote(FieldNote::Kind::problem))
{
    setWindowTitle(title);
    m_name->setPlaceholderText(tr("such as Strength"));
    m_purpose->setPlaceholderText(tr("what the weeks are for; may stay empty"));
    m_weeks->setRange(1, core::kMostBlockWeeks);
    m_weeks->setValue(block.weeks);

    auto *form = new QFormLayout;
    addRow(form, tr("&Name"), m_name, m_name);
    addRow(form, tr("&Purpose"), m_purpose, m_purpose);
    addRow(form, tr("&First day"), &m_firstDay->field(), m_firstDay);
    addRow(form, tr("&Weeks"), m_weeks, m_weeks);
    form->addRow(tr("Deload weeks"), boxed(m_deloadGrid));

    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    m_take = buttons->button(QDialogButtonBox::Ok);
    layOut(columnLayout({form, m_note, Stretch{1}}), buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_name, &QLineEdit::textChanged, this, &BlockDialog::validate);
    connect(m_purpose, &QLineEdit::textChanged, this, &BlockDialog::validate);
    connect(m_firstDay, &DateField::edited, this, &BlockDialog::validate);
    connect(m_weeks, &QSpinBox::valueChanged, this, &BlockDialog::layWeeks);
    setMinimumWidth(420);
    layWeeks();
    m_name->selectAll();
}

core::Block BlockDialog::block() const
{
    core::Block block = m_start;
    block.name = m_name->text().simplified();
    block.purpose = m_purpose->text().simplified();
    block.start = m_firstDay->date();
    block.weeks = m_weeks->value();
    block.deloadWeeks.clear();
    for (int week = 1; const QCheckBox *box : m_deloads) {
        if (box->isChecked())
            block.deloadWeeks.push_back(week);
        ++week;
    }
    return block;
}

void BlockDialog::layWeeks()
{
    while (int(m_deloads.size()) > m_weeks->value()) {
        delete m_deloads.back();
        m_deloads.pop_back();
    }
    while (int(m_deloads.size()) < m_weeks->value()) {
        const int week = int(m_deloads.size()) + 1;
        auto *box = new QCheckBox(QLocale().toString(week));
        box->setAccessibleName(tr("Week %1 is a deload").arg(week));
        box->setChecked(std::find(m_start.deloadWeeks.begin(), m_start.deloadWeeks.end(), week)
            != m_start.deloadWeeks.end());
        m_deloadGrid->addWidget(box, (week - 1) / kDeloadColumns, (week - 1) % kDeloadColumns);
        m_deloads.push_back(box);
    }
    validate();
}

void BlockDialog::validate()
{
    const QString why = m_check(block());
    m_note->say(why);
    m_take->setEnabled(why.isEmpty() && m_firstDay->isSound());
}

} // namespace ui
