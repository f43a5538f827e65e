#include "ui/planning/lay_template_dialog.h"

#include "core/domain/week.h"
#include "core/plan/block_edits.h"
#include "core/plan/template.h"
#include "core/plan/touch_swap.h"
#include "ui/look/date_field.h"
#include "ui/look/form_parts.h"
#include "ui/planning/what_if_view.h"
#include "ui/roster/open_roster.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>

namespace ui {

namespace {
constexpr int kIdRole = Qt::UserRole;
} // namespace

LayTemplateDialog::LayTemplateDialog(
    OpenRoster &roster, PlanSource source, QDate monday, QWidget *parent)
    : FormDialog(parent)
    , m_roster(roster)
    , m_source(std::move(source))
    , m_latest(core::latestVersions(roster.templates()))
    , m_template(new QComboBox)
    , m_about(plainWords())
    , m_firstDay(named("firstDay", new DateField(monday, tr("First day"))))
    , m_group(new QComboBox)
    , m_lifters(new QListWidget)
    , m_words(new QPlainTextEdit)
    , m_whatIf(new WhatIfView)
{
    setWindowTitle(tr("Lay out a template"));
    const core::LifterId lifter = m_source.lifter().id;
    for (const core::BlockTemplate &each : m_latest)
        m_template->addItem(each.name);
    m_words->setReadOnly(true);
    m_words->setAccessibleName(tr("What it comes to for each lifter"));
    m_lifters->setAccessibleName(tr("Lifters; Space marks one"));

    m_group->addItem(tr("choose by group…"));
    m_group->addItem(tr("all lifters"));
    m_group->addItem(tr("none"));
    QStringList groups;
    for (const core::Lifter &each : roster.lifters()) {
        if (each.archived)
            continue;
        groups << each.groups;
        auto *item = new QListWidgetItem(each.name, m_lifters);
        item->setData(kIdRole, each.id.value);
        item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
        item->setCheckState(each.id == lifter ? Qt::Checked : Qt::Unchecked);
        item->setToolTip(core::words(each.touchStyle));
        if (each.id == lifter)
            m_lifters->setCurrentItem(item);
    }
    groups.removeDuplicates();
    groups.sort();
    for (const QString &group : groups)
        m_group->addItem(tr("group %1").arg(group), group);

    auto *form = new QFormLayout;
    addRow(form, tr("&Template"), m_template, m_template);
    form->addRow(QString(), m_about);
    addRow(form, tr("&First day"), &m_firstDay->field(), m_firstDay);
    QLayout *left = columnLayout({form, m_group, {m_lifters, 1}});
    QLayout *right = columnLayout({new QLabel(tr("What it comes to")), {m_words, 1}});
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    m_take = buttons->addButton(tr("&Lay out"), QDialogButtonBox::AcceptRole);
    layOut(columnLayout({{rowLayout({{left, 1}, {right, 1}}), 3},
               plainWords(tr("What it may bring %1").arg(m_source.lifter().name)), {m_whatIf, 2}}),
        buttons, {880, 660});
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_template, &QComboBox::currentIndexChanged, this, &LayTemplateDialog::preview);
    connect(m_firstDay, &DateField::edited, this, &LayTemplateDialog::preview);
    connect(m_lifters, &QListWidget::itemChanged, this, &LayTemplateDialog::preview);
    connect(m_group, &QComboBox::activated, this, [this](int index) {
        if (index == 1 || index == 2)
            markGroup({});
        if (index == 2)
            mark({});
        if (index > 2)
            markGroup(m_group->itemData(index).toString());
    });
    preview();
}

QString LayTemplateDialog::templateName() const
{
    return m_template->currentText();
}

QDate LayTemplateDialog::firstDay() const
{
    return m_firstDay->date();
}

void LayTemplateDialog::mark(const std::set<core::LifterId> &lifters)
{
    {
        const QSignalBlocker quiet(m_lifters); // one preview, not one a lifter
        for (int row = 0; row < m_lifters->count(); ++row) {
            QListWidgetItem *item = m_lifters->item(row);
            const bool on = lifters.contains(core::LifterId{item->data(kIdRole).toLongLong()});
            item->setCheckState(on ? Qt::Checked : Qt::Unchecked);
        }
    }
    preview();
}

void LayTemplateDialog::markGroup(const QString &group)
{
    std::set<core::LifterId> lifters;
    for (const core::Lifter &lifter : m_roster.lifters())
        if (group.isEmpty() || lifter.groups.contains(group))
            lifters.insert(lifter.id);
    mark(lifters);
}

const core::BlockTemplate *LayTemplateDialog::chosen() const
{
    const int index = m_template->currentIndex();
    return index < 0 ? nullptr : &m_latest[size_t(index)];
}

std::set<core::LifterId> LayTemplateDialog::marked() const
{
    std::set<core::LifterId> lifters;
    for (int row = 0; row < m_lifters->count(); ++row)
        if (m_lifters->item(row)->checkState() == Qt::Checked)
            lifters.insert(core::LifterId{m_lifters->item(row)->data(kIdRole).toLongLong()});
    return lifters;
}

void LayTemplateDialog::preview()
{
    m_edit = {};
    m_laid = 0;
    m_take->setEnabled(false);
    const core::BlockTemplate *layout = chosen();
    if (!layout) {
        m_about->setText(tr("There is no template yet. Save a block as one first: "
                            "Plan, Save as template."));
        return;
    }
    QStringList about{tr("Version %1, weeks: %2, cards: %3.")
                          .arg(layout->version)
                          .arg(layout->weeks)
                          .arg(layout->cards.size())};
    for (const core::TouchSwap &swap : layout->swaps)
        about << core::words(swap, m_roster.variations());
    m_about->setText(about.join(u'\n'));

    QStringList words;
    for (const core::LifterId id : marked()) {
        const core::Lifter *lifter = m_roster.lifter(id);
        if (!lifter)
            continue;
        const std::vector<core::Block> blocks = m_roster.blocks(id);
        const core::Block block = core::blockFor(*layout, blocks, m_roster.templates(), firstDay(),
            [this] { return m_roster.newId<core::Block>(); });
        const QDate last =
            block.start.addDays(core::kWeekDays * std::max(block.weeks, layout->weeks) - 1);
        const std::vector<core::Card> cards = m_roster.cards(id, block.start, last);
        const core::BlockEdit laid =
            core::layTemplate(*layout, block, *lifter, {cards, blocks}, m_roster.templates(),
                m_roster.variations(), [this] { return m_roster.newId<core::Card>(); });
        if (!laid.refused.isEmpty()) {
            words << tr("%1: left out. %2").arg(lifter->name, laid.refused);
            continue;
        }
        ++m_laid;
        m_edit = core::joined(std::move(m_edit), laid.edit);
        words << tr("%1: cards added or changed: %2. %3")
                     .arg(lifter->name)
                     .arg(laid.edit.cards.after.size())
                     .arg(laid.remarks.join(u' '));
    }
    m_words->setPlainText(words.isEmpty() ? tr("Mark the lifters it is for.") : words.join(u'\n'));
    m_whatIf->show(
        m_source.compare(m_edit, firstDay().addDays(core::kWeekDays * layout->weeks - 1)),
        m_source.lifter().unit);
    m_take->setEnabled(!m_edit.isEmpty() && m_firstDay->isSound());
    m_take->setText(m_laid > 1 ? tr("&Lay out for %1 lifters").arg(m_laid) : tr("&Lay out"));
}

} // namespace ui
