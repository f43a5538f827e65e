#include "ui/board/week_board_page.h"

#include "core/notation/notation_help.h"
#include "ui/board/advice_panel.h"
#include "ui/board/board_keys.h"
#include "ui/board/checks_panel.h"
#include "ui/board/paste_day_dialog.h"
#include "ui/board/variation_shelf.h"
#include "ui/board/week_board.h"
#include "ui/board/week_commands.h"
#include "ui/board/week_grid.h"
#include "ui/board/week_plan.h"
#include "ui/look/form_parts.h"
#include "ui/look/keep_question.h"
#include "ui/look/page_help.h"
#include "ui/look/week_header.h"
#include "ui/planning/block_desk.h"
#include "ui/planning/block_ribbon.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"

#include <QStackedWidget>
#include <QTabBar>
#include <QTabWidget>

namespace ui {

namespace {

constexpr int kShelfLeast = 236;
constexpr int kShelfMost = 300;

} // namespace

WeekBoardPage::WeekBoardPage(OpenRoster &roster, Estimates &estimates, const Insights &insights,
    LifterHistory &history, Selection &selection, QWidget *parent)
    : QWidget(parent)
    , m_roster(roster)
    , m_plan(new WeekPlan(roster, estimates, insights, history, selection, this))
    , m_blocks(new BlockDesk(roster, estimates, history, selection, this))
    , m_ribbon(new BlockRibbon(roster, history, selection))
    , m_stack(new QStackedWidget(this))
    , m_header(new WeekHeader(this))
    , m_board(new WeekBoard(*m_plan))
    , m_shelf(new VariationShelf)
    , m_advice(new AdvicePanel(roster, estimates, history, *m_plan))
    , m_checks(new ChecksPanel(roster, estimates, history, *m_plan))
    , m_side(new QTabWidget)
    , m_question(new KeepQuestion(KeepQuestion::Keys::own))
{
    QLabel *nobody = centredWords(tr("Choose a lifter in the list to see the week."));
    nobody->setFont(ui::font(Type::heading, font()));

    m_side->setDocumentMode(true);
    m_side->setAccessibleName(tr("Shelf, advice and checks"));
    m_side->tabBar()->setAccessibleName(m_side->accessibleName());
    m_side->setUsesScrollButtons(false);
    m_side->setFont(ui::font(Type::small, font()));
    for (QWidget *page : std::initializer_list<QWidget *>{m_shelf, m_advice, m_checks})
        page->setFont(font()); // the small type is for the tabs
    m_side->addTab(m_shelf, tr("Shelf"));
    m_side->addTab(m_advice, tr("Advice"));
    m_side->addTab(m_checks, tr("Checks"));
    m_side->setMinimumWidth(kShelfLeast);
    m_side->setMaximumWidth(kShelfMost);
    m_header->addMenu(tr("&Plan"), m_blocks->menu());
    m_stack->addWidget(nobody);
    m_stack->addWidget(boxed(rowLayout({{m_board, 5}, {m_side, 1}}, space::gap)));
    fill(this, columnLayout({m_header, m_ribbon, m_question, {m_stack, 1}}, space::gap),
        {space::gap, space::gap, space::gap, space::gap});

    WeekGrid &grid = m_board->grid();
    connect(m_header, &WeekHeader::weekWanted, &selection, &Selection::setWeekOf);
    connect(m_header, &WeekHeader::thisWeekWanted, &selection, &Selection::setThisWeek);
    connect(m_plan, &WeekPlan::changed, this, &WeekBoardPage::showPlan);
    connect(&m_board->commands(), &WeekCommands::addRequested, this, &WeekBoardPage::beginAdding);
    connect(&grid, &WeekGrid::cardDragged, m_shelf, &VariationShelf::setCardDragged);
    connect(m_ribbon, &BlockRibbon::weekWanted, &selection, &Selection::setWeekOf);
    connect(m_ribbon, &BlockRibbon::blockActivated, m_blocks, &BlockDesk::editBlock);
    connect(m_blocks, &BlockDesk::said, this, &WeekBoardPage::said);
    connect(&m_board->commands(), &WeekCommands::said, this, &WeekBoardPage::said);
    connect(&m_board->commands(), &WeekCommands::asked, m_question, &KeepQuestion::ask);
    connect(m_question, &KeepQuestion::kept, &m_board->commands(), &WeekCommands::pasteAsked);
    connect(m_question, &KeepQuestion::changeWanted, this, // nothing was pasted
        [&grid] { grid.focusPlace(grid.choice().place()); });
    connect(&selection, &Selection::lifterChanged, m_question, &QWidget::hide); // about another
    connect(&selection, &Selection::weekChanged, m_question, &QWidget::hide);
    connect(&m_board->commands(), &WeekCommands::pasteOntoWanted, this, [this](QDate day) {
        PasteDayDialog(m_roster, m_plan->copied(), day, m_plan->lifter()->id, this).exec();
    });
    connect(&grid, &WeekGrid::currentChanged, this,
        [this, &grid] { m_advice->setPlace(grid.choice().placeToAdd()); });
    connect(m_advice, &AdvicePanel::chosen, this,
        [this, &grid](core::VariationId variation, const QString &setLine) {
            grid.focusCard(m_plan->add(variation, grid.choice().placeToAdd(), setLine));
        });
    connect(m_checks, &ChecksPanel::cardWanted, &grid, &WeekGrid::focusCard);
    connect(m_checks, &ChecksPanel::findingsChanged, this, &WeekBoardPage::showChecks);
    connect(m_shelf, &VariationShelf::cardDropped, this,
        [this](core::CardId card) { m_plan->remove({card}); });
    connect(
        m_shelf, &VariationShelf::left, this, [&grid] { grid.focusPlace(grid.choice().place()); });
    connect(m_shelf, &VariationShelf::chosen, this, [this, &grid](core::VariationId variation) {
        grid.focusCard(m_plan->add(variation, grid.choice().placeToAdd()));
    });
    addHelp();
    showPlan();
    showChecks();
}

void WeekBoardPage::addHelp()
{
    new HelpSection(tr("Board"), boardKeys, this);
    new HelpSection(
        tr("While the sets of a card are written"),
        [] {
            return HelpRows{keyRow({Qt::Key_Return}, tr("take the sets")),
                keyRow({Qt::SHIFT | Qt::Key_Return}, tr("another row")),
                keyRow({Qt::Key_Tab}, tr("complete as offered below")),
                keyRow({Qt::Key_Escape}, tr("leave the card as it was"))};
        },
        this);
    new HelpSection(
        tr("Set lines"), [] { return formRows(core::setLineForms()); }, this);
    new HelpSection(
        tr("Shelf and block ribbon"),
        [] {
            return HelpRows{keyRow({Qt::Key_Up, Qt::Key_Down}, tr("to another variation")),
                keyRow({Qt::Key_Return}, tr("put the variation on the day; edit the block")),
                keyRow({Qt::Key_Left, Qt::Key_Right}, tr("in the ribbon: to another week")),
                keyRow({Qt::Key_Escape}, tr("back to the board"))};
        },
        this);
}

void WeekBoardPage::focusInEvent(QFocusEvent *event)
{
    QWidget::focusInEvent(event);
    WeekGrid &grid = m_board->grid(); // a focus proxy would have to follow its current card
    grid.focusPlace(grid.choice().place());
}

std::vector<core::OpenStop> WeekBoardPage::openStops() const
{
    const core::Lifter *lifter = m_plan->lifter();
    return lifter ? core::openStops(m_checks->findings(), *lifter, m_plan->resolved())
                  : std::vector<core::OpenStop>();
}

void WeekBoardPage::showPlan()
{
    const core::Lifter *lifter = m_plan->lifter();
    m_header->setVisible(lifter);
    m_ribbon->setVisible(lifter);
    m_stack->setCurrentIndex(lifter ? 1 : 0);
    if (!lifter)
        return;
    const WeekView &week = m_plan->view();
    QStringList totals;
    for (const QString &total : {week.lifts, week.tonnage, week.done})
        if (!total.isEmpty())
            totals << total;
    m_header->show(m_plan->monday(), totals.join(QStringLiteral(" \u00b7 ")));
    m_shelf->setCatalogue(m_roster.variations(), lifter->touchStyle);
}

void WeekBoardPage::showChecks()
{
    const int open = m_checks->openCount();
    m_side->setTabText(
        m_side->indexOf(m_checks), open > 0 ? tr("Checks (%1)").arg(open) : tr("Checks"));
}

void WeekBoardPage::beginAdding(const QString &typed)
{
    const BoardPlace place = m_board->grid().choice().placeToAdd();
    m_side->setCurrentWidget(m_shelf);
    const DayView &day = m_plan->view().days[size_t(place.day)];
    m_shelf->search(typed, tr("%1 %2, place %3").arg(day.name, day.date).arg(place.position + 1));
}

} // namespace ui
