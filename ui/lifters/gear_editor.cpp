#include "ui/lifters/gear_editor.h"

#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"

#include <QFormLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QTableWidget>

namespace ui {

namespace {

/// A field with its unit behind it and its note below.
QWidget *weightField(QLineEdit *edit, QLabel *unit, QLabel *note)
{
    edit->setMaximumWidth(110);
    return boxed(columnLayout({rowLayout({edit, unit, Stretch{}}), note}, space::hair));
}

} // namespace

GearEditor::GearEditor(QWidget *parent)
    : QWidget(parent)
    , m_bar(named("bar", new QLineEdit))
    , m_collars(named("collars", new QLineEdit))
    , m_barUnit(new QLabel)
    , m_collarsUnit(new QLabel)
    , m_plates(named("plates", new QTableWidget(0, 2)))
    , m_barProblem(new FieldNote(FieldNote::Kind::problem))
    , m_collarsProblem(new FieldNote(FieldNote::Kind::problem))
    , m_platesProblem(new FieldNote(FieldNote::Kind::problem))
{
    m_plates->setAccessibleName(tr("Plates at hand"));
    m_plates->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_plates->verticalHeader()->hide();
    m_plates->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_plates->setTabKeyNavigation(false); // Tab leaves the table; the arrows move inside it
    m_plates->setMinimumHeight(150);

    auto *add = new QPushButton(tr("Add pla&te"));
    auto *remove = new QPushButton(tr("&Remove plate"));
    auto *usual = new QPushButton(tr("&Usual plates"));
    auto *menu = new QMenu(usual);
    menu->addAction(tr("Kilogram bar and plates"), this,
        [this] { Q_EMIT usualAskedFor(core::Unit::kilogram); });
    menu->addAction(
        tr("Pound bar and plates"), this, [this] { Q_EMIT usualAskedFor(core::Unit::pound); });
    usual->setMenu(menu);
    for (QPushButton *button : {add, remove, usual})
        button->setAutoDefault(false);

    auto *form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    auto *barLabel = new QLabel(tr("&Bar"));
    barLabel->setBuddy(m_bar);
    form->addRow(barLabel, weightField(m_bar, m_barUnit, m_barProblem));
    auto *collarsLabel = new QLabel(tr("&Collars, both"));
    collarsLabel->setBuddy(m_collars);
    form->addRow(collarsLabel, weightField(m_collars, m_collarsUnit, m_collarsProblem));
    auto *platesLabel = new QLabel(tr("P&lates at hand"));
    platesLabel->setBuddy(m_plates);
    form->addRow(platesLabel);
    form->addRow(m_plates);
    form->addRow(m_platesProblem);
    form->addRow(rowLayout({add, remove, usual, Stretch{}}));

    connect(m_bar, &QLineEdit::textEdited, this, &GearEditor::edited);
    connect(m_collars, &QLineEdit::textEdited, this, &GearEditor::edited);
    connect(m_plates, &QTableWidget::itemChanged, this, &GearEditor::edited);
    connect(add, &QPushButton::clicked, this, &GearEditor::addPlate);
    connect(remove, &QPushButton::clicked, this, &GearEditor::removePlate);
}

void GearEditor::setDraft(const GearDraft &draft, core::Unit unit)
{
    const QSignalBlocker quiet(m_plates);
    m_bar->setText(draft.bar);
    m_collars->setText(draft.collars);
    m_barUnit->setText(core::symbol(unit));
    m_collarsUnit->setText(core::symbol(unit));
    m_plates->setHorizontalHeaderLabels({tr("Plate, %1").arg(core::symbol(unit)), tr("Pairs")});
    m_plates->setRowCount(0);
    for (const PlateDraft &plate : draft.plates)
        appendPlate(plate);
}

GearDraft GearEditor::draft() const
{
    GearDraft draft{m_bar->text(), m_collars->text(), {}};
    for (int row = 0; row < m_plates->rowCount(); ++row)
        draft.plates.push_back({m_plates->item(row, 0)->text(), m_plates->item(row, 1)->text()});
    return draft;
}

void GearEditor::setProblems(const QString &bar, const QString &collars, const QString &plates)
{
    m_barProblem->say(bar);
    m_collarsProblem->say(collars);
    m_platesProblem->say(plates);
}

void GearEditor::appendPlate(const PlateDraft &plate)
{
    const int row = m_plates->rowCount();
    m_plates->insertRow(row);
    int column = 0;
    for (const QString &text : {plate.plate, plate.pairs}) {
        auto *item = new QTableWidgetItem(text);
        item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        m_plates->setItem(row, column++, item);
    }
}

void GearEditor::addPlate()
{
    {
        const QSignalBlocker quiet(m_plates);
        appendPlate({QString(), QStringLiteral("1")});
    }
    const int row = m_plates->rowCount() - 1;
    m_plates->setFocus();
    m_plates->setCurrentCell(row, 0);
    m_plates->editItem(m_plates->item(row, 0));
    Q_EMIT edited();
}

void GearEditor::removePlate()
{
    const int row = m_plates->currentRow();
    if (row < 0)
        return;
    m_plates->removeRow(row);
    Q_EMIT edited();
}

} // namespace ui
