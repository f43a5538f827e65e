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
    case BoardAct::copyDay:
        copyDay();
        break;
    case BoardAct::pasteDay:
        pasteDay();
        break;
    case BoardAct::pasteOntoLifters:
        pasteOntoLifters();
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
    if (!pasted.refused.isEmpty())
        Q_EMIT said(pasted.refused);
    if (!pasted.question.isEmpty()) {
        m_asked = text;
        m_askedFor = place;
        Q_EMIT asked(pasted.question);
    }
    choosePasted(pasted.cards);
}

void WeekCommands::copyDay()
{
    const int day = m_grid.choice().place().day;
    const std::vector<core::CardId> &cards = m_plan.places().days[size_t(day)];
    if (cards.empty())
        Q_EMIT said(tr("Nothing is planned for this day."));
    else
        ui::copyDay(m_plan.text(cards), *m_plan.lifter());
}

void WeekCommands::pasteDay()
{
    const WeekPlan::Pasted pasted = m_plan.pasteDay(m_plan.copied(), m_grid.choice().place().day);
    if (!pasted.refused.isEmpty())
        Q_EMIT said(pasted.refused);
    choosePasted(pasted.cards);
}

void WeekCommands::pasteOntoLifters()
{
    if (const CopiedDay copied = m_plan.copied(); !copied.refused.isEmpty())
        Q_EMIT said(copied.refused);
    else
        Q_EMIT pasteOntoWanted(m_plan.monday().addDays(m_grid.choice().place().day));
}

void WeekCommands::choosePasted(const std::vector<core::CardId> &cards)
{
    if (cards.empty())
        return;
    m_grid.focusCard(cards.front());
    m_grid.choose({cards.begin(), cards.end()});
}

} // namespace ui
