#include "ui/planning/block_desk.h"

#include "core/domain/week.h"
#include "core/plan/template.h"
#include "ui/planning/block_dialog.h"
#include "ui/planning/carry_forward_dialog.h"
#include "ui/planning/lay_template_dialog.h"
#include "ui/planning/save_template_dialog.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"

#include <QAction>
#include <QInputDialog>
#include <QLocale>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>

namespace ui {

namespace {
constexpr int kMostShift = 366;
} // namespace

BlockDesk::BlockDesk(OpenRoster &roster, Estimates &estimates, LifterHistory &history,
    Selection &selection, QWidget *window)
    : QObject(window)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_history(history)
    , m_selection(selection)
    , m_window(window)
    , m_menu(new QMenu(tr("Plan"), window))
{
    add(tr("&New block…"), tr("Ctrl+B"), &BlockDesk::newBlock, false);
    add(
        tr("&Edit block…"), tr("Ctrl+Shift+B"),
        [this] { editBlock(current() ? current()->id : core::BlockId{}); }, true);
    add(tr("&Shift block…"), {}, &BlockDesk::shiftBlock, true);
    add(tr("&Copy block…"), {}, &BlockDesk::copyBlock, true);
    add(tr("&Remove block…"), {}, &BlockDesk::removeBlock, true);
    m_menu->addSeparator();
    add(tr("Carry this week &forward…"), tr("Ctrl+Shift+F"), &BlockDesk::carryForward, false);
    add(tr("Copy this &week to…"), tr("Ctrl+Shift+C"), &BlockDesk::copyWeek, false);
    m_menu->addSeparator();
    add(tr("Save block as &template…"), tr("Ctrl+Shift+S"), &BlockDesk::saveTemplate, true);
    add(tr("&Lay out a template…"), tr("Ctrl+L"), &BlockDesk::layTemplate, false);
    connect(&selection, &Selection::lifterChanged, this, &BlockDesk::refresh);
    connect(&selection, &Selection::weekChanged, this, &BlockDesk::refresh);
    connect(&roster, &OpenRoster::changed, this, [this](const core::RosterChange &change) {
        if (change.has<core::Block, core::Lifter>(lifter()))
            refresh();
    });
    refresh();
}

template <class Slot>
void BlockDesk::add(const QString &text, const QKeySequence &keys, Slot slot, bool needsBlock)
{
    QAction *action = m_menu->addAction(text, keys, this, slot);
    // Wherever the focus is in the window, while the page shows.
    action->setShortcutContext(Qt::WindowShortcut);
    m_window->addAction(action);
    if (needsBlock)
        m_ofBlock.push_back(action);
}

void BlockDesk::refresh()
{
    const bool known = m_roster.lifter(lifter());
    const bool hasBlock = known && current();
    for (QAction *action : m_menu->actions())
        action->setEnabled(known);
    for (QAction *action : m_ofBlock)
        action->setEnabled(hasBlock);
}

core::LifterId BlockDesk::lifter() const
{
    return m_selection.lifter();
}

std::vector<core::Block> BlockDesk::blocks() const
{
    return m_roster.blocks(lifter());
}

std::optional<core::Block> BlockDesk::current() const
{
    const std::vector<core::Block> all = blocks();
    // A block may begin within the week shown.
    for (int day = 0; day < core::kWeekDays; ++day)
        if (const core::Block *block = core::blockOn(all, m_selection.monday().addDays(day)))
            return *block;
    return std::nullopt;
}

std::vector<core::Card> BlockDesk::cards(QDate from, QDate to) const
{
    return m_roster.cards(lifter(), from, to);
}

core::NewCardId BlockDesk::newCardId()
{
    return [this] { return m_roster.newId<core::Card>(); };
}

bool BlockDesk::perform(const QString &name, const core::BlockEdit &done)
{
    if (!done.refused.isEmpty())
        Q_EMIT said(done.refused);
    const bool isDone = done.refused.isEmpty() && m_roster.perform(name, done.edit);
    if (isDone && !done.remarks.isEmpty())
        Q_EMIT said(done.remarks.join(u' '));
    return isDone;
}

void BlockDesk::openBlockDialog(const QString &title, const QString &step, const core::Block &block)
{
    const std::vector<core::Block> all = blocks();
    BlockDialog dialog(
        title, block,
        [&all](const core::Block &made) {
            return core::putBlock(made, {{}, all}).refused;
        },
        m_window);
    dialog.keepBy([&] {
        return perform(step.arg(dialog.block().name), core::putBlock(dialog.block(), {{}, all}));
    });
    dialog.exec();
}

void BlockDesk::newBlock()
{
    if (!m_roster.lifter(lifter()))
        return;
    core::Block block;
    block.id = m_roster.newId<core::Block>();
    block.lifter = lifter();
    block.name = tr("Block %1").arg(blocks().size() + 1);
    block.start = m_selection.monday();
    openBlockDialog(tr("New block"), tr("Add block %1"), block);
}

void BlockDesk::editBlock(core::BlockId id)
{
    for (const core::Block &block : blocks())
        if (block.id == id) {
            openBlockDialog(tr("Edit block"), tr("Change block %1"), block);
            return;
        }
    newBlock();
}

void BlockDesk::shiftBlock()
{
    const std::optional<core::Block> block = current();
    if (!block)
        return;
    bool accepted = false;
    const int days = QInputDialog::getInt(m_window, tr("Shift %1").arg(block->name),
        tr("Days later (7 = a week; below 0 = earlier). Its cards move along."), core::kWeekDays,
        -kMostShift, kMostShift, 1, &accepted);
    if (!accepted)
        return;
    const QDate from = std::min(block->start, block->start.addDays(days));
    const QDate to = std::max(block->end(), block->end().addDays(days));
    perform(tr("Shift block %1").arg(block->name),
        core::shiftBlock(*block, {cards(from, to), blocks()}, days));
}

void BlockDesk::copyBlock()
{
    const std::optional<core::Block> block = current();
    if (!block)
        return;
    const std::vector<core::Block> all = blocks();
    BlockDialog dialog(
        tr("Copy %1").arg(block->name), core::copyOf(*block, all, m_roster.newId<core::Block>()),
        [&all](const core::Block &made) {
            return core::putBlock(made, {{}, all}).refused;
        },
        m_window);
    dialog.keepBy([&] {
        const core::Block copy = dialog.block();
        const QDate from = std::min(block->start, copy.start);
        const QDate to = std::max(block->end(), copy.end());
        return perform(tr("Copy block %1").arg(block->name),
            core::copyBlock(*block, copy, {cards(from, to), all}, newCardId()));
    });
    dialog.exec();
}

void BlockDesk::removeBlock()
{
    const std::optional<core::Block> block = current();
    if (!block)
        return;
    QMessageBox ask(QMessageBox::Question, tr("Remove %1").arg(block->name),
        tr("Remove the block alone, or its cards too? Either can be undone."), QMessageBox::Cancel,
        m_window);
    const QAbstractButton *alone = ask.addButton(tr("&Block alone"), QMessageBox::AcceptRole);
    const QAbstractButton *both =
        ask.addButton(tr("Block and &cards"), QMessageBox::DestructiveRole);
    ask.exec();
    if (ask.clickedButton() != alone && ask.clickedButton() != both)
        return;
    perform(tr("Remove block %1").arg(block->name),
        core::removeBlock(
            *block, {cards(block->start, block->end()), blocks()}, ask.clickedButton() == both));
}

void BlockDesk::saveTemplate()
{
    const std::optional<core::Block> block = current();
    if (!block)
        return;
    SaveTemplateDialog dialog(
        block->name, core::latestVersions(m_roster.templates()), m_roster.variations(), m_window);
    dialog.keepBy([&] {
        const std::vector<core::Card> held = cards(block->start, block->end());
        core::BlockTemplate made = dialog.earlier()
            ? core::nextVersion(*dialog.earlier(), *block, held, m_roster.variations())
            : core::templateOf(dialog.name(), *block, held, m_roster.variations(), dialog.swaps());
        made.swaps = dialog.swaps();
        made.id = m_roster.newId<core::BlockTemplate>();
        return m_roster.perform(
            tr("Save template %1").arg(made.name), core::keepTemplate(made, *block));
    });
    dialog.exec();
}

void BlockDesk::layTemplate()
{
    if (!m_roster.lifter(lifter()))
        return;
    LayTemplateDialog dialog(m_roster, PlanSource(m_roster, m_estimates, m_history, lifter()),
        m_selection.monday(), m_window);
    dialog.keepBy([&] {
        const QString name = dialog.lifterCount() > 1
            ? tr("Lay %1 on %2 lifters").arg(dialog.templateName()).arg(dialog.lifterCount())
            : tr("Lay out %1").arg(dialog.templateName());
        return m_roster.perform(name, dialog.edit());
    });
    if (dialog.exec() == QDialog::Accepted)
        m_selection.setWeekOf(dialog.firstDay());
}

void BlockDesk::carryForward()
{
    if (!m_roster.lifter(lifter()))
        return;
    CarryForwardDialog dialog(PlanSource(m_roster, m_estimates, m_history, lifter()),
        m_selection.monday(), newCardId(), m_window);
    dialog.keepBy([&] { return m_roster.perform(tr("Carry a week forward"), dialog.edit()); });
    dialog.exec();
}

void BlockDesk::copyWeek()
{
    if (!m_roster.lifter(lifter()))
        return;
    const QDate monday = m_selection.monday();
    bool accepted = false;
    const int weeks = QInputDialog::getInt(m_window, tr("Copy this week"),
        tr("Weeks later (negative = earlier). What is planned there stays, above the "
           "copies."),
        1, -52, 52, 1, &accepted);
    if (!accepted || weeks == 0)
        return;
    const QDate to = monday.addDays(core::kWeekDays * weeks);
    core::BlockEdit done;
    done.edit = core::copyDays(cards(monday, monday.addDays(core::kWeekDays - 1)), monday,
        core::kWeekDays, cards(to, to.addDays(core::kWeekDays - 1)), lifter(), to,
        core::OnOccupiedDays::keep, newCardId());
    if (done.edit.isEmpty())
        done.refused = tr("The week holds no card to copy.");
    perform(tr("Copy a week"), done);
    if (done.refused.isEmpty())
        m_selection.setWeekOf(to);
}

} // namespace ui
