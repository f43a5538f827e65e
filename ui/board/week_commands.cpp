#include "ui/board/week_commands.h"

#include "ui/board/week_grid.h"

#include <QApplication>
#include <QClipboard>

namespace ui {

WeekCommands::WeekCommands(WeekPlan &plan, WeekGrid &grid)
    : QObject(&grid)
    , m_plan(plan)
    , m_grid(grid)
{
    connect(&grid, &WeekGrid::commandGiven, this, [this](const BoardCommand &command) {
        std::visit([this](const auto &c) { run(c); }, command);
    });
}

void WeekCommands::run(const GoTo &command)
{
    const CardChoice &choice = m_grid.choice();
    m_grid.choose({});
    m_grid.focusPlace(stepped(choice.place(), command.step, m_plan.places().counts()));
}

void WeekCommands::run(const ExtendTo &command)
{
    m_grid.extendTo(stepped(m_grid.choice().place(), command.step, m_plan.places().counts()));
}

void WeekCommands::run(const ChooseAll &)
{
    m_grid.chooseAll();
}

void WeekCommands::run(const ChooseNone &)
{
    m_grid.choose({});
}

void WeekCommands::run(const CopyCards &)
{
    if (const std::vector<core::CardId> cards = m_grid.choice().forAction(); !cards.empty())
        QApplication::clipboard()->setText(m_plan.text(cards));
}

void WeekCommands::run(const CutCards &)
{
    const std::vector<core::CardId> cards = m_grid.choice().forAction();
    if (cards.empty())
        return;
    QApplication::clipboard()->setText(m_plan.text(cards));
    m_plan.cut(cards);
}

void WeekCommands::run(const PasteCards &)
{
    const WeekPlan::Pasted pasted =
        m_plan.paste(QApplication::clipboard()->text(), m_grid.choice().placeToAdd());
    if (!pasted.refused.isEmpty()) {
        Q_EMIT said(pasted.refused);
    } else if (!pasted.cards.empty()) {
        m_grid.focusCard(pasted.cards.front());
        m_grid.choose({pasted.cards.begin(), pasted.cards.end()});
    }
}

void WeekCommands::run(const MoveCardTo &command)
{
    const core::CardId card = m_grid.choice().card();
    const auto to = cardStepped(m_grid.choice().place(), command.step, m_plan.places().counts());
    if (!card.isValid() || !to)
        return;
    m_plan.move(card, *to, WeekPlan::MovedBy::key);
    m_grid.focusCard(card);
}

void WeekCommands::run(const EditSets &command)
{
    if (const core::CardId card = m_grid.choice().card(); card.isValid())
        m_grid.edit(card, CardEditing::Field::sets, command.typed);
    else
        Q_EMIT addRequested(command.typed);
}

void WeekCommands::run(const EditNote &)
{
    if (const core::CardId card = m_grid.choice().card(); card.isValid())
        m_grid.edit(card, CardEditing::Field::note, {});
}

void WeekCommands::run(const RemoveCard &)
{
    m_plan.remove(m_grid.choice().forAction());
}

void WeekCommands::run(const DuplicateCard &)
{
    if (const core::CardId card = m_grid.choice().card(); card.isValid())
        m_grid.focusCard(m_plan.duplicate(card, m_grid.choice().placeToAdd()));
}

void WeekCommands::run(const AddCard &)
{
    Q_EMIT addRequested({});
}

} // namespace ui
