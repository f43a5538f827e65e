#include "core/domain/week.h"
#include "tests/ui/tour/window_tour.h"
#include "ui/board/card_editor.h"
#include "ui/board/checks_panel.h"
#include "ui/board/week_grid.h"
#include "ui/charts/time_chart.h"
#include "ui/log/log_page.h"
#include "ui/planning/block_ribbon.h"
#include "ui/review/compare_button.h"
#include "ui/review/review_page.h"
#include "ui/room/room.h"
#include "ui/squad/squad_page.h"
#include "ui/window/roster_view.h"

#include <QComboBox>
#include <QContextMenuEvent>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QPointer>
#include <QPushButton>
#include <QRadioButton>
#include <QTabWidget>
#include <QTableView>
#include <QTest>
#include <QToolButton>
#include <QToolTip>

using namespace core;

namespace tests {

namespace {
enum Page { board, log, review, rosterWeek, squad, carryOver, room };
} // namespace

TEST_F(WindowTour, StartPage)
{
    window.closeFile();
    look(window, "start page");
}

TEST_F(WindowTour, NobodyChosen)
{
    const QString path = folder.path(QStringLiteral("ψ.benchwright"));
    makeEmptyRoster(path);
    ASSERT_TRUE(window.openFile(path));
    look(window, "no lifter");
    lookAtPages("no lifter");
    Lifter newcomer = inventedLifter(written(QStringLiteral("New")), TouchStyle::undecided);
    newcomer.id = roster().openRoster().newId<Lifter>();
    Edit edit;
    edit.lifters.after = {newcomer};
    ASSERT_TRUE(roster().openRoster().perform(written(QStringLiteral("Add")), edit));
    roster().selection().setLifter(newcomer.id);
    lookAtPages("newcomer");
}

TEST_F(WindowTour, EveryPageOfEveryLifter)
{
    for (const Lifter &lifter : roster().openRoster().lifters()) {
        roster().selection().setLifter(lifter.id);
        lookAtPages("this week");
    }
    roster().selection().setWeekOf(clock.today.date().addDays(10 * kWeekDays));
    lookAtPages("empty week");
}

TEST_F(WindowTour, FindingsOfTheBoard)
{
    roster().showPage(board);
    auto *checks = window.findChild<ui::ChecksPanel *>();
    const QDate monday = roster().selection().monday();
    for (const Lifter &lifter : roster().openRoster().lifters()) {
        Edit edit; // too much of everything, and what cannot be read
        for (int day = 0; day < kWeekDays; ++day)
            for (const char *sets : {"1x1 @10", "8x12 @9.5", "3x200kg", "3x"})
                edit.cards.after.push_back({roster().openRoster().newId<Card>(), lifter.id,
                    monday.addDays(day), 90 + int(edit.cards.after.size()),
                    roster().openRoster().variations()[edit.cards.after.size() % 20].id,
                    QString::fromLatin1(sets), written(QStringLiteral("note"))});
        ASSERT_TRUE(roster().openRoster().perform(written(QStringLiteral("Add")), edit));
        roster().selection().setLifter(lifter.id);
        lookAtPages("too much");
    }
    roster().showPage(board);
    EXPECT_GT(checks->openCount(), 5);
    lookAtDialog(
        "accept a finding",
        [checks] { checks->findChild<QPushButton *>(QStringLiteral("waveThrough"))->click(); },
        [] { static_cast<QDialog *>(QApplication::activeModalWidget())->accept(); });
    look(window, "accepted");
    EXPECT_NE(checks->findChild<QPushButton *>(QStringLiteral("takeUp")), nullptr);
}

TEST_F(WindowTour, MenusAndTipsOfTheBoard)
{
    roster().showPage(board);
    auto *grid = window.findChild<ui::WeekGrid *>();
    for (const ui::BoardPlace place : {ui::BoardPlace{0, 0}, ui::BoardPlace{6, 0}}) {
        grid->focusPlace(place);
        lookAtDialog("menu of the board", [grid] {
            QContextMenuEvent asked(QContextMenuEvent::Keyboard, {}, {});
            QApplication::sendEvent(grid, &asked);
        });
    }
    auto *ribbon = window.findChild<ui::BlockRibbon *>();
    for (int week = 0; week < int(ribbon->ribbon().weeks.size()); ++week) {
        const QPoint at = ribbon->weekRect(week).center();
        QHelpEvent asked(QEvent::ToolTip, at, ribbon->mapToGlobal(at));
        QApplication::sendEvent(ribbon, &asked);
        read(QToolTip::text(), "tip of the ribbon");
    }
}

TEST_F(WindowTour, EditorOfTheSets)
{
    roster().showPage(board);
    auto *grid = window.findChild<ui::WeekGrid *>();
    // What the notation is written in.
    data << QStringLiteral("AMRAP") << QStringLiteral("RIR") << QStringLiteral("max ")
         << QStringLiteral("tempo ") << QStringLiteral("pause ") << QStringLiteral("rest 3min");
    for (const char *sets : {"", "3", "3x", "3x5 ", "3x5 @", "3x5 @8 ", "3x5 @80", "3x5 wrong",
             "3x5(", "1x5+ 70%", "3x5 @8; "}) {
        data << QString::fromLatin1(sets).section(u' ', 1);
        grid->focusPlace({0, 0});
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        const QPointer editor(qobject_cast<ui::CardEditor *>(QApplication::focusWidget()));
        ASSERT_NE(editor, nullptr);
        editor->clear();
        QTest::keyClicks(editor, QString::fromLatin1(sets));
        look(window, QStringLiteral("set line ") + QLatin1String(sets));
        QTest::keyClick(editor, Qt::Key_Return);
        look(window, QStringLiteral("set line taken ") + QLatin1String(sets));
        if (editor)
            QTest::keyClick(editor, Qt::Key_Escape);
    }
}

TEST_F(WindowTour, EntriesOfTheLog)
{
    roster().showPage(log);
    auto *page = window.findChild<ui::LogPage *>();
    auto *entry = page->findChild<QLineEdit *>(QStringLiteral("entry"));
    for (const char *name : {"Greta Holmsund", "Ewa Lindqvarn", "Tomas Brackwell"}) {
        choose(name);
        for (int ago = -2; ago <= 7; ++ago) {
            page->showDay(clock.today.date().addDays(-ago));
            look(*page, "day of the log");
            QTest::keyClick(entry, Qt::Key_Insert);
            look(*page, "extra set");
            QTest::keyClick(entry, Qt::Key_Escape);
        }
    }
    for (const char *said : {"100x5 8.5 t3", "100x5 0.35", "x3 miss", "9x", "t9", "@@", "x100",
             "99999x1", "100x5 11", "100x5; "}) {
        data << QString::fromLatin1(said) << QStringLiteral("\"x\"");
        entry->setText(QString::fromLatin1(said));
        look(*page, QStringLiteral("entry ") + QLatin1String(said));
        QTest::keyClick(entry, Qt::Key_Return);
        look(*page, QStringLiteral("entry taken ") + QLatin1String(said));
        QTest::keyClick(entry, Qt::Key_Escape);
    }
    for (QToolButton *step : page->findChildren<QToolButton *>())
        if (step->isVisible() && step->isCheckable())
            step->click();
    look(*page, "check-in");
}

TEST_F(WindowTour, SeveralLiftersInTheRoom)
{
    constexpr size_t kMost = 6; // more than stand beside each other
    roster().showPage(room);
    size_t inside = 0;
    for (const Lifter &lifter : roster().openRoster().lifters()) {
        if (lifter.archived || inside == kMost)
            continue;
        roster().room().enter(lifter.id);
        look(window, QStringLiteral("%1 in the room").arg(++inside));
    }
    ASSERT_EQ(inside, kMost);
    for (size_t place = 0; place < inside; ++place) {
        roster().room().goTo(place);
        for (int turns = 0; turns <= ui::kSharedRacks; ++turns) {
            roster().room().turnRack();
            look(window, QStringLiteral("another rack"));
        }
        roster().room().turnRack(); // the first one that is shared
        const QString typed = QStringLiteral("100x5 8.5 t3; and so on");
        data << typed << typed.split(u' '); // it is told beside the field, on more lines
        for (QLineEdit *field : window.findChildren<QLineEdit *>(QStringLiteral("entry")))
            if (field->isVisible())
                field->setText(typed);
        look(window, QStringLiteral("half typed in the room"));
    }
    lookAtPages("the room beside");
}

TEST_F(WindowTour, EveryMeasureOfTheReview)
{
    roster().showPage(review);
    auto *page = window.findChild<ui::ReviewPage *>();
    auto *measures = page->findChild<QComboBox *>(QStringLiteral("measure"));
    ASSERT_GT(measures->count(), 5);
    const auto readCharts = [&] {
        for (int measure = 0; measure < measures->count(); ++measure) {
            measures->setCurrentIndex(measure);
            for (ui::TimeChart *chart : page->findChildren<ui::TimeChart *>())
                QTest::keyClick(chart, Qt::Key_Left, Qt::ControlModifier);
            look(*page, measures->currentText());
        }
    };
    for (const Lift lift : {Lift::bench, Lift::squat, Lift::deadlift}) {
        page->showLift(lift);
        readCharts();
    }
    page->showLift(Lift::bench);
    for (const char *name : {"Tomas Brackwell", "Priya Talwandi"}) {
        choose(name);
        readCharts();
    }
    for (QRadioButton *knowledge : page->findChildren<QRadioButton *>()) {
        knowledge->click();
        readCharts();
    }
    for (QToolButton *button : page->findChildren<QToolButton *>())
        if (button->isCheckable()) {
            button->click();
            look(*page, "range");
        }
}

TEST_F(WindowTour, AllThatCanBeComparedAndOneMore)
{
    roster().showPage(review);
    auto *page = window.findChild<ui::ReviewPage *>();
    auto *compare = page->findChild<ui::CompareButton *>();
    auto *list = compare->menu()->findChild<QListWidget *>();
    for (int row = 0; row < list->count(); ++row)
        list->item(row)->setCheckState(Qt::Checked);
    EXPECT_LT(int(compare->chosen().size()), list->count());
    EXPECT_FALSE(
        compare->menu()->findChild<QLabel *>(QStringLiteral("compareFull"))->text().isEmpty())
        << "one more is refused in words";
    look(*page, "compared");
    lookAtDialog("menu of the compared", [compare] { compare->showMenu(); });
}

TEST_F(WindowTour, MessagesOverEveryPage)
{
    Q_EMIT roster().openRoster().failed(
        said(QStringLiteral("and more words that a disk has for it ")).repeated(12), {});
    lookAtPages("a failure");
    Q_EMIT roster().stepTold(written(QStringLiteral("undone")).repeated(60));
    lookAtPages("a step");
}

TEST_F(WindowTour, EveryRowOfTheSquad)
{
    roster().showPage(squad);
    QTableView &table = window.findChild<ui::SquadPage *>()->table();
    for (int row = 0; row < table.model()->rowCount(); ++row) {
        table.setCurrentIndex(table.model()->index(row, 0));
        look(window, "row of the squad");
    }
    window.findChild<QLineEdit *>(QStringLiteral("squadQuery"))->setText(QStringLiteral("?"));
    look(window, "no such lifter");
}

TEST_F(WindowTour, EditorOfAllLiftersWeek)
{
    roster().showPage(rosterWeek);
    auto *table = roster().pages().currentWidget()->findChild<QTableView *>();
    for (const char *said : {"?", "?: 3x5", "3x", ": 3x5 @", ""}) {
        table->model()->setData(table->model()->index(0, 1), QString::fromLatin1(said));
        look(window, "cell of all lifters' week");
    }
}

TEST_F(WindowTour, ListOfLifters)
{
    auto *search = window.findChild<QLineEdit *>(QStringLiteral("search"));
    search->setText(QStringLiteral("?"));
    look(window, "no such lifter");
    search->clear();
    auto *list = window.findChild<QWidget *>(QStringLiteral("lifters"));
    lookAtDialog("menu of the list", [list] { Q_EMIT list->customContextMenuRequested({}); });
    action("Archive or restore the lifter")->trigger();
    look(window, "one is archived");
    window.findChild<QAbstractButton *>(QStringLiteral("showArchived"))->click();
    look(window, "archived are shown");
}

} // namespace tests
