#include "ui/planning/carry_forward_dialog.h"

#include "core/domain/language.h"
#include "core/domain/variation.h"
#include "core/domain/week.h"
#include "core/loads/limited_lines.h"
#include "core/notation/set_line_check.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/planning/rule_editor.h"
#include "ui/planning/what_if_view.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QTableWidget>

namespace ui {

namespace {

constexpr int kMostWeeks = 12;
constexpr int kWidestColumn = 340; ///< px
enum Column { kDay, kVariation, kSets, kLoads, kColumns };

QString loadsText(const core::ResolvedCard &card, core::Unit unit)
{
    if (card.parsed.error)
        return card.parsed.error->words;
    QStringList loads;
    for (const core::ResolvedLine &line : card.lines)
        loads << (line.load ? core::formatLoad(line.load->loadKg, unit) : QStringLiteral("\u2013"));
    QStringList said{loads.join(QStringLiteral(", "))};
    said << core::withheldWords(card, unit);
    return said.join(QStringLiteral("; "));
}

} // namespace

CarryForwardDialog::CarryForwardDialog(
    PlanSource source, QDate monday, std::function<core::CardId()> newId, QWidget *parent)
    : FormDialog(parent)
    , m_source(std::move(source))
    , m_monday(monday)
    , m_newId(std::move(newId))
    , m_week(m_source.cards(monday, monday.addDays(core::kWeekDays - 1)))
    , m_rule(new RuleEditor(m_source.lifter().unit))
    , m_weeks(new QSpinBox)
    , m_occupied(new QComboBox)
    , m_remarks(new FieldNote(FieldNote::Kind::caution))
    , m_table(new QTableWidget(0, kColumns))
    , m_whatIf(new WhatIfView)
{
    setWindowTitle(tr("Carry the week forward"));
    m_weeks->setRange(1, kMostWeeks);
    m_weeks->setValue(3);
    m_occupied->addItem(tr("goes below what is planned there"), int(core::OnOccupiedDays::keep));
    m_occupied->addItem(
        tr("takes the place of what is planned there"), int(core::OnOccupiedDays::replace));
    m_table->setHorizontalHeaderLabels({tr("Day"), tr("Variation"), tr("Sets"), tr("Load")});
    m_table->horizontalHeaderItem(kSets)->setToolTip(tr("Can be changed here."));
    m_table->verticalHeader()->hide();
    m_table->setAccessibleName(tr("The weeks that come of it"));
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setMaximumSectionSize(kWidestColumn);
    m_table->horizontalHeader()->setSectionResizeMode(kSets, QHeaderView::Stretch);

    auto *form = new QFormLayout;
    form->addRow(tr("Rule"), m_rule);
    form->addRow(tr("Weeks to add"), m_weeks);
    form->addRow(tr("On days with cards it"), m_occupied);
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    m_take = buttons->addButton(tr("&Lay out"), QDialogButtonBox::AcceptRole);
    layOut(columnLayout({form, m_remarks, {m_table, 3}, {m_whatIf, 2}}), buttons, {900, 640});
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_rule, &RuleEditor::changed, this, &CarryForwardDialog::preview);
    connect(m_weeks, &QSpinBox::valueChanged, this, &CarryForwardDialog::preview);
    connect(m_occupied, &QComboBox::currentIndexChanged, this, &CarryForwardDialog::compare);
    connect(m_table, &QTableWidget::itemChanged, this, &CarryForwardDialog::takeSets);
    preview();
}

core::Edit CarryForwardDialog::edit() const
{
    const QDate from = m_monday.addDays(core::kWeekDays);
    return core::layOut(m_source.cards(from, from.addDays(core::kWeekDays * m_weeks->value() - 1)),
        m_rows, core::OnOccupiedDays(m_occupied->currentData().toInt()));
}

void CarryForwardDialog::preview()
{
    core::Progression progression =
        core::progress(m_week, m_rule->rule(), m_weeks->value(), m_source.lifter(), m_newId);
    m_rows = std::move(progression.rows);
    m_refused.clear();
    m_remarks->say(m_week.empty() ? tr("The week holds no card to carry forward.")
                                  : progression.remarks.join(u'\n'));
    const QSignalBlocker quiet(m_table);
    m_table->setRowCount(int(m_rows.size()));
    for (int row = 0; row < int(m_rows.size()); ++row)
        fillRow(row);
    compare();
}

void CarryForwardDialog::fillRow(int row)
{
    const core::Card &card = m_rows[size_t(row)];
    const core::Variation *variation = core::find(m_source.catalogue(), card.variation);
    const auto put = [this, row](int column, const QString &text, bool editable) {
        auto *item = new QTableWidgetItem(text);
        if (!editable)
            item->setFlags(item->flags() & ~Qt::ItemIsEditable);
        m_table->setItem(row, column, item);
    };
    put(kDay, core::dateWords(card.day, tr("ddd d MMM")), false);
    put(kVariation, variation ? variation->name : QString(), false);
    put(kSets, core::onOneRow(card.setLine), true);
    const auto refused = m_refused.find(row);
    put(kLoads,
        refused != m_refused.end()
            ? refused->second
            : loadsText(m_source.resolved({card}).front(), m_source.lifter().unit),
        false);
}

void CarryForwardDialog::takeSets(QTableWidgetItem *item)
{
    if (item->column() != kSets)
        return;
    core::Card &card = m_rows[size_t(item->row())];
    const core::Variation *variation = core::find(m_source.catalogue(), card.variation);
    const core::ParsedSetLines parsed = variation
        ? core::parseSetLines(item->text(), variation->lift, m_source.catalogue())
        : core::parseSetLines(item->text());
    // A line that is refused is kept as written, and the load column says what is wrong.
    card.setLine = parsed.error ? item->text() : core::setLineText(parsed.lines);
    m_refused.erase(item->row());
    if (parsed.error)
        m_refused.emplace(item->row(), parsed.error->words);
    const QSignalBlocker quiet(m_table);
    fillRow(item->row());
    compare();
}

void CarryForwardDialog::compare()
{
    m_take->setEnabled(!m_rows.empty() && m_refused.empty());
    m_whatIf->show(
        m_source.compare(edit(), m_monday.addDays(core::kWeekDays * (m_weeks->value() + 1) - 1)),
        m_source.lifter().unit);
}

} // namespace ui
