#include "ui/board/week_board_page.h"

#include "ui/board/variation_shelf.h"
#include "ui/board/week_board.h"
#include "ui/board/week_grid.h"
#include "ui/board/week_header.h"
#include "ui/board/week_plan.h"
#include "ui/look/metrics.h"
#include "ui/session/roster_session.h"
#include "ui/session/selection.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ui {

namespace {

constexpr int kShelfLeast = 205;
constexpr int kShelfMost = 300;

} // namespace

WeekBoardPage::WeekBoardPage(
    RosterSession &session, Estimates &estimates, Selection &selection, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_plan(new WeekPlan(session, estimates, selection, this))
    , m_stack(new QStackedWidget(this))
    , m_header(new WeekHeader(this))
    , m_board(new WeekBoard(*m_plan))
    , m_shelf(new VariationShelf)
{
    auto *nobody = new QLabel(tr("Choose a lifter in the list to see the week."));
    nobody->setAlignment(Qt::AlignCenter);
    nobody->setWordWrap(true);
    nobody->setFont(ui::font(Type::heading, font()));

    m_shelf->setMinimumWidth(kShelfLeast);
    m_shelf->setMaximumWidth(kShelfMost);
    auto *work = new QWidget;
    auto *beside = new QHBoxLayout(work);
    beside->setContentsMargins(0, 0, 0, 0);
    beside->setSpacing(space::gap);
    beside->addWidget(m_board, 5);
    beside->addWidget(m_shelf, 1);
    m_stack->addWidget(nobody);
    m_stack->addWidget(work);

    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(space::gap, space::gap, space::gap, space::gap);
    layout->setSpacing(space::gap);
    layout->addWidget(m_header);
    layout->addWidget(m_stack, 1);

    WeekGrid &grid = m_board->grid();
    connect(m_header, &WeekHeader::weekWanted, &selection, &Selection::setWeekOf);
    connect(m_plan, &WeekPlan::changed, this, &WeekBoardPage::showPlan);
    connect(&grid, &WeekGrid::addRequested, this, &WeekBoardPage::beginAdding);
    connect(&grid, &WeekGrid::cardDragged, m_shelf, &VariationShelf::setCardDragged);
    connect(m_shelf, &VariationShelf::cardDropped, m_plan, &WeekPlan::remove);
    connect(m_shelf, &VariationShelf::left, this, [&grid] { grid.focusPlace(grid.current()); });
    connect(m_shelf, &VariationShelf::chosen, this, [this, &grid](core::VariationId variation) {
        grid.focusCard(m_plan->add(variation, grid.placeToAdd()));
    });
    showPlan();
}

void WeekBoardPage::showPlan()
{
    const core::Lifter *lifter = m_plan->lifter();
    m_header->setVisible(lifter);
    m_stack->setCurrentIndex(lifter ? 1 : 0);
    if (!lifter)
        return;
    const WeekView &week = m_plan->view();
    QStringList totals;
    for (const QString &total : {week.lifts, week.tonnage})
        if (!total.isEmpty())
            totals << total;
    m_header->show(m_plan->monday(), totals.join(QStringLiteral(" \u00b7 ")));
    m_shelf->setCatalogue(m_session.variations(), lifter->touchStyle);
}

void WeekBoardPage::beginAdding(const QString &typed)
{
    const BoardPlace place = m_board->grid().placeToAdd();
    const DayView &day = m_plan->view().days[size_t(place.day)];
    m_shelf->search(typed, tr("%1 %2, place %3").arg(day.name, day.date).arg(place.position + 1));
}

} // namespace ui
