#include "ui/window/roster_view.h"

#include "core/domain/language.h"
#include "core/loads/estimate_words.h"
#include "core/loads/week_sheet.h"
#include "ui/board/week_board_page.h"
#include "ui/board/week_plan.h"
#include "ui/checks/accept_dialog.h"
#include "ui/handout/hand_out_dialog.h"
#include "ui/importing/import_dialog.h"
#include "ui/lifters/lifter_header.h"
#include "ui/lifters/lifter_list_panel.h"
#include "ui/log/log_page.h"
#include "ui/look/form_parts.h"
#include "ui/print/plan_preview.h"
#include "ui/returns/returns_dialog.h"
#include "ui/review/carry_over_page.h"
#include "ui/review/review_page.h"
#include "ui/room/room_page.h"
#include "ui/roster/today.h"
#include "ui/roster_week/roster_week_page.h"
#include "ui/squad/squad_page.h"

#include <QDialog>
#include <QLocale>
#include <QPushButton>
#include <QSettings>
#include <QSplitter>
#include <QStackedWidget>
#include <QTabWidget>

namespace ui {

namespace {
const QString kSplitterKey = QStringLiteral("window/lifterList");
constexpr int kListWidth = 274;
constexpr int kTextWidth = 520;

/// Invalid without any set.
QDate newestSet(const Estimates::Fits &fits)
{
    std::optional<int> newest;
    for (const auto &[key, fit] : fits)
        newest = std::max(newest, fit->estimate.lastSet);
    return newest ? core::fromEngineDay(*newest) : QDate();
}
} // namespace

RosterView::RosterView(std::unique_ptr<core::RosterStore> store, Today &today, QWidget *parent)
    : QWidget(parent)
    , m_roster(std::move(store), today)
    , m_estimates(m_roster)
    , m_passedDays(m_roster, m_estimates)
    , m_insights(m_roster, m_estimates)
    , m_selection(m_roster)
    , m_history(m_roster, m_selection)
    , m_lifters(new LifterListPanel(m_roster, m_estimates, m_selection))
    , m_pages(new QTabWidget)
    , m_board(new WeekBoardPage(m_roster, m_estimates, m_insights, m_history, m_selection))
    , m_review(new ReviewPage(m_roster, m_estimates, m_insights, m_history, m_selection))
    , m_squad(new SquadPage(m_roster, m_estimates))
    , m_room(new RoomPage(m_roster, m_estimates, m_insights, m_selection))
    , m_rosterWeek(new RosterWeekPage(m_roster, m_estimates, m_insights, m_selection))
    , m_splitter(new QSplitter)
    , m_right(new QStackedWidget)
    , m_invitation(invitation())
{
    m_pages->setDocumentMode(true);
    auto *log = new LogPage(m_roster, m_estimates, m_insights, m_history, m_selection);
    auto *carryOver = new CarryOverPage(m_roster, m_insights);
    const QStringList names = pageNames();
    for (QWidget *page : std::initializer_list<QWidget *>{
             m_board, log, m_review, m_rosterWeek, m_squad, carryOver, m_room})
        m_pages->addTab(page, names[m_pages->count()]);
    connect(m_squad, &SquadPage::reasonAskedFor, this, [this](core::LifterId lifter, bool plan) {
        m_selection.setLifter(lifter);
        if (plan)
            showWeekBoard();
        else
            showReview();
    });

    m_page = m_pages->currentWidget();
    connect(m_pages, &QTabWidget::currentChanged, this, &RosterView::followPage);
    auto *header = new LifterHeader(m_roster, m_estimates, m_selection);
    // These are about all lifters: no single one stands above them.
    connect(m_pages, &QTabWidget::currentChanged, header, [this, header, carryOver] {
        const QWidget *page = m_pages->currentWidget();
        header->setVisible(
            page != m_rosterWeek && page != m_squad && page != carryOver && page != m_room);
    });
    m_right->addWidget(boxed(columnLayout({header, {m_pages, 1}}, 0)));
    m_right->addWidget(m_invitation);

    m_splitter->addWidget(m_lifters);
    m_splitter->addWidget(m_right);
    m_splitter->setStretchFactor(1, 1);
    m_splitter->setChildrenCollapsible(false);
    if (!m_splitter->restoreState(QSettings().value(kSplitterKey).toByteArray()))
        m_splitter->setSizes({kListWidth, 10 * kListWidth});

    fill(this, columnLayout({m_splitter}));
    connect(&m_estimates, &Estimates::rosterFitted, this, &RosterView::compareClock);
    connect(m_lifters, &LifterListPanel::told, this, &RosterView::stepTold);
    connect(m_board, &WeekBoardPage::said, this, &RosterView::said);
    connect(m_room, &RoomPage::said, this, &RosterView::said);
    connect(m_rosterWeek, &RosterWeekPage::said, this, &RosterView::said);
    connect(m_rosterWeek, &RosterWeekPage::lifterWanted, this, &RosterView::showWeekBoard);
    connect(&m_selection, &Selection::lifterChanged, this, &RosterView::showLifterOrInvitation);
    connect(&m_roster, &OpenRoster::changed, this, [this](const core::RosterChange &change) {
        if (change.has<core::Lifter>())
            showLifterOrInvitation();
    });
    showLifterOrInvitation();
}

QStringList RosterView::pageNames()
{
    return {tr("&Week board"), tr("Lo&g"), tr("Re&view"), tr("&All lifters' week"), tr("S&quad"),
        tr("Carry-&over"), tr("Roo&m")};
}

RosterView::~RosterView()
{
    QSettings().setValue(kSplitterKey, m_splitter->saveState());
    // Pages and open dialogs refer to the roster, which as a member would go before them.
    qDeleteAll(findChildren<QDialog *>(Qt::FindDirectChildrenOnly));
    delete m_splitter;
}

void RosterView::compareClock()
{
    const QString trouble =
        core::clockTrouble(m_roster.today().date(), newestSet(m_estimates.all()));
    if (trouble == m_clockTrouble)
        return;
    m_clockTrouble = trouble;
    if (!trouble.isEmpty())
        Q_EMIT clockTold(trouble);
}

void RosterView::followPage()
{
    if (m_roster.settle())
        m_page = m_pages->currentWidget();
    else
        m_pages->setCurrentWidget(m_page); // and back in sight it is asked once more
}

void RosterView::undo()
{
    tellStep(tr("Undone: %1, of %2, who is not shown."), m_roster.steps().undoText(),
        [this] { return m_roster.undo(); });
}

void RosterView::redo()
{
    tellStep(tr("Done again: %1, of %2, who is not shown."), m_roster.steps().redoText(),
        [this] { return m_roster.redo(); });
}

void RosterView::tellStep(
    const QString &pattern, const QString &step, const std::function<bool()> &go)
{
    QSet<core::LifterId> touched;
    const auto noting = connect(&m_roster, &OpenRoster::changed, this,
        [&touched](const core::RosterChange &change) { touched = change.lifters; });
    const bool gone = go();
    disconnect(noting);
    const bool showsAll = m_pages->currentWidget() == m_rosterWeek;
    if (!gone || touched.isEmpty() || touched.contains(m_selection.lifter()) || showsAll)
        return;
    QStringList names;
    for (const core::LifterId id : touched)
        if (const core::Lifter *lifter = m_roster.lifter(id))
            names << lifter->name;
    names.sort();
    if (!names.isEmpty())
        Q_EMIT stepTold(pattern.arg(step, core::language().createSeparatedList(names)));
}

void RosterView::showWeekBoard()
{
    showPage(m_pages->indexOf(m_board));
}

void RosterView::showReview()
{
    showPage(m_pages->indexOf(m_review));
}

void RosterView::showPage(int index)
{
    m_pages->setCurrentIndex(index);
    if (m_pages->currentIndex() == index) // else the one before has something to finish
        m_pages->currentWidget()->setFocus();
}

Room &RosterView::room()
{
    return m_room->room();
}

void RosterView::toggleInRoom()
{
    const core::Lifter *lifter = m_roster.lifter(m_selection.lifter());
    if (!lifter)
        return;
    const QString name = lifter->name;
    if (!room().holds(lifter->id)) {
        room().enter(lifter->id);
        Q_EMIT said(tr("%1 is in the room now.").arg(name));
    } else if (const auto refused = room().leave(lifter->id)) {
        Q_EMIT said(tr("%1 stays in the room: %2").arg(name, refused->words));
    } else {
        Q_EMIT said(tr("%1 has left the room.").arg(name));
    }
}

void RosterView::importLog(const QStringList &paths)
{
    if (!m_roster.settle())
        return;
    auto *dialog = new ImportDialog(m_roster, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    if (!paths.isEmpty())
        dialog->offer(paths);
    dialog->open(); // a drop that waited for the dialog would hold up where it came from
}

void RosterView::readReturns(const QStringList &paths)
{
    if (!m_roster.settle())
        return;
    auto *dialog = new ReturnsDialog(m_roster, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    if (!paths.isEmpty())
        dialog->offer(paths);
    dialog->open();
}

void RosterView::writeHandOuts()
{
    if (!m_roster.settle())
        return;
    auto *dialog = new HandOutDialog(m_roster, m_estimates, m_insights, m_selection, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

HelpOn RosterView::helpOn() const
{
    return {m_pages->currentWidget(), m_pages->tabText(m_pages->currentIndex()), m_lifters};
}

void RosterView::printPlan()
{
    if (!m_roster.settle())
        return;
    const core::Lifter *lifter = m_roster.lifter(m_selection.lifter());
    if (!lifter)
        return;
    const core::WeekSheet sheet = weekSheet();
    if (sheet.days.empty()) {
        Q_EMIT said(
            tr("Nothing is planned for %1 in the week from %2. Put cards on the week board "
               "first, then print.")
                .arg(lifter->name, QLocale().toString(m_selection.monday(), QLocale::ShortFormat)));
        return;
    }
    PlanPreview preview(sheet, this);
    preview.setGate([this, &preview] { return sheetToHandOver(&preview); });
    connect(&preview, &PlanPreview::handedOver, this,
        [this] { m_board->plan().give(core::GivenBy::print); });
    preview.exec();
}

core::WeekSheet RosterView::weekSheet() const
{
    return core::weekSheet(*m_roster.lifter(m_selection.lifter()), m_selection.monday(),
        m_board->plan().resolved(), m_roster.variations(), core::stopNotes(m_board->openStops()));
}

std::optional<core::WeekSheet> RosterView::sheetToHandOver(QWidget *asking)
{
    if (const std::vector<core::OpenStop> stops = m_board->openStops(); !stops.empty()) {
        AcceptDialog dialog(stops, asking);
        if (dialog.exec() != QDialog::Accepted || !acceptStops(m_roster, stops, dialog.notes()))
            return std::nullopt;
    }
    return weekSheet();
}

QWidget *RosterView::invitation()
{
    QLabel *words = plainWords(
        tr("This roster shows no lifter yet. Add one with name and touch style; bar, plates and "
           "meet can follow later. Or import a training log, and its lifters come with it."));
    auto *add = named("inviteAdd", new QPushButton(tr("&Add a lifter…")));
    add->setDefault(true);
    auto *import = named("inviteImport", new QPushButton(tr("&Import a log…")));
    connect(import, &QPushButton::clicked, this, [this] { importLog(); });
    connect(add, &QPushButton::clicked, m_lifters, &LifterListPanel::addLifter);

    auto *middle = new QWidget;
    middle->setFixedWidth(kTextWidth);
    middle->setLayout(columnLayout({Stretch{2}, label(Type::title, tr("Whom do you coach?")), words,
        space::gap, rowLayout({add, import, Stretch{}}), Stretch{3}}));
    auto *page = new QWidget;
    page->setLayout(rowLayout({Stretch{}, middle, Stretch{}}));
    return page;
}

void RosterView::showLifterOrInvitation()
{
    if (m_roster.lifter(m_selection.lifter()))
        m_right->setCurrentIndex(0);
    else
        m_right->setCurrentWidget(m_invitation);
}

} // namespace ui
