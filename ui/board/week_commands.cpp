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
    connect(&grid, &WeekGrid::commandGiven, this, &WeekCommands::run);
}

void WeekCommands::run(const BoardCommand &command)
{
    const CardChoice &choice = m_grid.choice();
    const core::CardId card = choice.card();
    const CardCounts counts = m_plan.places().counts();
    switch (command.act) {
    case BoardAct::go:
        m_grid.choose({});
        m_grid.focusPlace(stepped(choice.place(), command.step, counts));
        break;
    case BoardAct::extend:
        m_grid.extendTo(stepped(choice.place(), command.step, counts));
        break;
    case BoardAct::moveCard:
        if (const auto to = cardStepped(choice.place(), command.step, counts);
            card.isValid() && to) {
            m_plan.move(card, *to);
            m_grid.focusCard(card);
        }
        break;
    case BoardAct::editSets:
        if (card.isValid())
            m_grid.edit(card, CardEditing::Field::sets, command.typed);
        else
            Q_EMIT addRequested(command.typed);
        break;
    case BoardAct::editNote:
        if (card.isValid())
            m_grid.edit(card, CardEditing::Field::note, {});
        break;
    case BoardAct::removeCard:
        m_plan.remove(choice.forAction());
        break;
    case BoardAct::duplicateCard:
        if (card.isValid())
            m_grid.focusCard(m_plan.duplicate(card, choice.placeToAdd()));
        break;
    case BoardAct::addCard:
        Q_EMIT addRequested({});
        break;
    case BoardAct::chooseAll:
        m_grid.chooseAll();
        break;
    case BoardAct::chooseNone:
        m_grid.choose({});
        break;
    case BoardAct::copy:
        copy();
        break;
    case BoardAct::cut:
        copy();
        m_plan.cut(choice.forAction());
        break;
    case BoardAct::paste:
        paste(QApplication::clipboard()->text(), choice.placeToAdd(), false);
        break;
    case BoardAct::giveDay:
        if (const QString refused = m_plan.giveDay(choice.place().day); !refused.isEmpty())
            Q_EMIT said(refused);
        break;
    }
}

void WeekCommands::copy() const
{
    if (const std::vector<core::CardId> cards = m_grid.choice().forAction(); !cards.empty())
        QApplication::clipboard()->setText(m_plan.text(cards));
}

void WeekCommands::pasteAsked()
{
    paste(m_asked, m_askedFor, true);
}

void WeekCommands::paste(const QString &text, BoardPlace place, bool isMeant)
{
    const WeekPlan::Pasted pasted = m_plan.paste(text, place, isMeant);
    if (!pasted.refused.isEmpty()) {
        Q_EMIT said(pasted.refused);
    } else if (!pasted.question.isEmpty()) {
        m_asked = text;
        m_askedFor = place;
        Q_EMIT asked(pasted.question);
    } else if (!pasted.cards.empty()) {
        m_grid.focusCard(pasted.cards.front());
        m_grid.choose({pasted.cards.begin(), pasted.cards.end()});
    }
}

} // namespace ui
