#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "tests/ui/roster/failing_store.h"
#include "ui/board/card_editor.h"
#include "ui/board/week_grid.h"
#include "ui/look/theme.h"
#include "ui/window/main_window.h"
#include "ui/window/roster_view.h"

#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTest>
#include <QTimer>
#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

// What is typed anywhere is stored, or asked about, or stays where it is.

namespace {

enum Page { kBoard, kLog, kReview, kRosterWeek };

/// Ada has one card today; Bea has nothing.
core::Edit adaAndBea(ui::OpenRoster &roster, QDate today)
{
    core::Edit edit;
    for (const QString &name : {u"Ada"_s, u"Bea"_s}) {
        core::Lifter lifter = inventedLifter(name);
        lifter.id = roster.newId<core::Lifter>();
        edit.lifters.after.push_back(lifter);
    }
    core::Card card;
    card.id = roster.newId<core::Card>();
    card.lifter = edit.lifters.after.front().id;
    card.day = today;
    card.variation = core::competitionOf(roster.variations(), core::Lift::bench)->id;
    card.setLine = u"3x3 100kg"_s;
    edit.cards.after = {card};
    return edit;
}

/// The pages of a roster whose disk fails when a test says so.
class OnAFullDisk : public testing::Test
{
protected:
    OnAFullDisk()
    {
        window.resize(1280, 700);
        window.show();
        QApplication::setActiveWindow(&window);
        const core::Edit edit = adaAndBea(window.openRoster(), clock.today.date());
        EXPECT_TRUE(window.openRoster().perform(u"Fill"_s, edit));
        ada = edit.lifters.after[0].id;
        bea = edit.lifters.after[1].id;
        card = edit.cards.after[0].id;
        window.selection().setLifter(ada);
    }
    [[nodiscard]] QString setLine()
    {
        const QDate today = clock.today.date();
        return window.openRoster().cards(ada, today, today).front().setLine;
    }
    [[nodiscard]] ui::CardEditor *editor()
    {
        for (ui::CardEditor *open : window.findChildren<ui::CardEditor *>())
            if (open->isVisible())
                return open;
        return nullptr;
    }

    PrivateFolder folder;
    SetClock clock;
    FailingStore *store = new FailingStore(folder.path(u"club.benchwright"_s));
    ui::RosterView window{std::unique_ptr<core::RosterStore>(store), clock.today};
    core::LifterId ada;
    core::LifterId bea;
    core::CardId card;
};

} // namespace

TEST_F(OnAFullDisk, ACardsTextStaysInTheFieldAndTheLifterToo)
{
    window.showPage(kBoard);
    window.findChild<ui::WeekGrid *>()->edit(card, ui::CardEditing::Field::sets, u"4x4 90kg"_s);
    store->failsToWrite = true;
    QTest::keyClick(editor(), Qt::Key_Return);
    ASSERT_NE(editor(), nullptr);
    EXPECT_EQ(editor()->toPlainText(), u"4x4 90kg"_s);

    window.selection().setLifter(bea);
    EXPECT_EQ(window.selection().lifter(), ada) << "the text would be lost";
    EXPECT_FALSE(window.openRoster().undo());
    EXPECT_THAT(window.openRoster().halfTyped(), testing::SizeIs(1));
    ASSERT_NE(editor(), nullptr);
    EXPECT_EQ(editor()->toPlainText(), u"4x4 90kg"_s);

    store->failsToWrite = false;
    window.selection().setLifter(bea);
    EXPECT_EQ(window.selection().lifter(), bea);
    EXPECT_EQ(setLine(), u"4x4 90kg"_s);
}

TEST_F(OnAFullDisk, TheNoteOfACheckInStaysInTheFieldAndTheLifterToo)
{
    window.showPage(kLog);
    auto *note = window.findChild<QLineEdit *>(u"checkInNote"_s);
    note->setFocus();
    QTest::keyClicks(note, u"slept badly"_s);
    store->failsToWrite = true;
    window.selection().setLifter(bea);
    EXPECT_EQ(window.selection().lifter(), ada);
    EXPECT_EQ(note->text(), u"slept badly"_s);

    store->failsToWrite = false;
    window.selection().setLifter(bea);
    EXPECT_EQ(window.selection().lifter(), bea);
    ASSERT_THAT(window.openRoster().checkIns(ada), testing::SizeIs(1));
    EXPECT_EQ(window.openRoster().checkIns(ada).front().note, u"slept badly"_s);
}

TEST_F(OnAFullDisk, ACellOfAllLiftersWeekStaysOpen)
{
    window.showPage(kRosterWeek);
    auto *table = window.pages().currentWidget()->findChild<QTableView *>();
    const int day = clock.today.date().dayOfWeek() - 1;
    table->setCurrentIndex(table->model()->index(1, day));
    QTest::keyClick(table, Qt::Key_Return);
    auto *field = table->findChild<QPlainTextEdit *>();
    ASSERT_NE(field, nullptr);
    QTest::keyClicks(field, u"comp: 2x2 80kg"_s);
    store->failsToWrite = true;
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_TRUE(field->isVisible());
    EXPECT_EQ(field->toPlainText(), u"comp: 2x2 80kg"_s);
    EXPECT_THAT(window.openRoster().halfTyped(), testing::SizeIs(1));

    store->failsToWrite = false;
    EXPECT_TRUE(window.openRoster().settle());
    const QDate today = clock.today.date();
    EXPECT_THAT(window.openRoster().cards(bea, today, today), testing::SizeIs(1));
}

namespace {

class InTheWindow : public testing::Test
{
protected:
    InTheWindow()
    {
        window.show();
        QApplication::setActiveWindow(&window);
        EXPECT_TRUE(window.createFile(folder.path(u"club.benchwright"_s)));
        const core::Edit edit = adaAndBea(roster(), clock.today.date());
        EXPECT_TRUE(roster().perform(u"Fill"_s, edit));
        ada = edit.lifters.after[0].id;
        bea = edit.lifters.after[1].id;
        card = edit.cards.after[0].id;
        window.roster()->selection().setLifter(ada);
    }
    [[nodiscard]] ui::OpenRoster &roster() { return window.roster()->openRoster(); }
    [[nodiscard]] QString message() const
    {
        auto *bar = window.findChild<QWidget *>(u"messageBar"_s);
        return bar->isHidden() ? QString() : bar->findChild<QLabel *>(u"words"_s)->text();
    }
    [[nodiscard]] QAction &action(const QString &text) const
    {
        for (QAction *each : window.findChildren<QAction *>())
            if (each->text().remove(u'&').startsWith(text))
                return *each;
        ADD_FAILURE() << qPrintable(text);
        return *window.findChild<QAction *>();
    }
    /// Answers the question that comes up next; says whether one came.
    void answer(bool drops, bool &isAsked)
    {
        QTimer::singleShot(0, &window, [drops, &isAsked] {
            auto *box = qobject_cast<QMessageBox *>(QApplication::activeModalWidget());
            isAsked = box != nullptr;
            if (!box)
                return;
            if (drops)
                box->findChild<QPushButton *>(u"drop"_s)->click();
            else
                box->close();
        });
    }

    PrivateFolder folder;
    ui::Theme theme{*qApp};
    SetClock clock;
    ui::MainWindow window{theme, clock.today};
    core::LifterId ada;
    core::LifterId bea;
    core::CardId card;
};

} // namespace

TEST_F(InTheWindow, ACardBeingEditedIsStoredWhenTheWindowIsClosed)
{
    window.roster()->showPage(kBoard);
    window.findChild<ui::WeekGrid *>()->edit(card, ui::CardEditing::Field::sets, u"4x4 90kg"_s);
    const QString path = window.path();
    EXPECT_TRUE(window.close());
    EXPECT_TRUE(window.closeFile());
    const QDate today = clock.today.date();
    EXPECT_EQ(core::RosterFile::open(path, clock.today.now()).cards(ada, today, today)[0].setLine,
        u"4x4 90kg"_s);
}

TEST_F(InTheWindow, SetsThatCannotBeReadHoldTheirPageAndAreAskedAboutWhenTheWindowIsClosed)
{
    window.roster()->showPage(kBoard);
    window.findChild<ui::WeekGrid *>()->edit(card, ui::CardEditing::Field::sets, u"4y3"_s);
    for (const int page : {kLog, kRosterWeek}) {
        window.roster()->showPage(page);
        EXPECT_EQ(window.roster()->pages().currentIndex(), kBoard);
        auto *editor = window.findChild<ui::CardEditor *>();
        ASSERT_NE(editor, nullptr);
        EXPECT_TRUE(editor->isVisible() && editor->hasFocus());
        EXPECT_EQ(editor->toPlainText(), u"4y3"_s);
        EXPECT_THAT(editor->accessibleDescription().toStdString(), testing::HasSubstr("Column 2"));
    }
    window.roster()->importLog();
    EXPECT_EQ(window.roster()->findChild<QDialog *>(), nullptr);

    bool isAsked = false;
    answer(false, isAsked);
    EXPECT_FALSE(window.close());
    EXPECT_TRUE(isAsked);
    const QDate today = clock.today.date();
    EXPECT_EQ(roster().cards(ada, today, today)[0].setLine, u"3x3 100kg"_s);

    QTest::keyClick(window.findChild<ui::CardEditor *>(), Qt::Key_Escape);
    window.roster()->showPage(kLog);
    EXPECT_EQ(window.roster()->pages().currentIndex(), kLog);
}

TEST_F(InTheWindow, AHalfTypedSetIsAskedAboutAlsoOfALifterThatIsNotShown)
{
    window.roster()->showPage(kLog);
    auto *entry = window.findChild<QLineEdit *>(u"entry"_s);
    QTest::keyClicks(entry, u"95x3"_s);
    window.roster()->selection().setLifter(bea);
    EXPECT_EQ(entry->text(), QString());
    for (const QString &way : {u"Close roster"_s, u"Quit"_s}) {
        bool isAsked = false;
        answer(false, isAsked);
        action(way).trigger();
        EXPECT_TRUE(isAsked) << qPrintable(way);
        ASSERT_NE(window.roster(), nullptr) << qPrintable(way);
        EXPECT_TRUE(window.isVisible());
    }
    bool isAsked = false;
    answer(false, isAsked);
    EXPECT_FALSE(window.createFile(folder.path(u"other.benchwright"_s)));
    EXPECT_TRUE(isAsked);
    window.roster()->selection().setLifter(ada);
    EXPECT_EQ(entry->text(), u"95x3"_s) << "it is all still there";

    answer(true, isAsked);
    EXPECT_TRUE(window.closeFile());
    EXPECT_EQ(window.roster(), nullptr);
}

TEST_F(InTheWindow, AFormIsNotLeftWithoutAQuestion)
{
    QTimer::singleShot(0, &window, [this] {
        auto *form = qobject_cast<QDialog *>(QApplication::activeModalWidget());
        ASSERT_NE(form, nullptr);
        auto *name = form->findChild<QLineEdit *>(u"name"_s);
        name->setText(u"Cleo"_s);
        bool isAsked = false;
        answer(false, isAsked);
        QTest::keyClick(name, Qt::Key_Escape);
        EXPECT_TRUE(isAsked);
        EXPECT_TRUE(form->isVisible());
        EXPECT_EQ(name->text(), u"Cleo"_s);
        answer(true, isAsked);
        form->close();
        EXPECT_FALSE(form->isVisible());
    });
    action(u"Add a lifter"_s).trigger();
    EXPECT_THAT(roster().lifters(), testing::SizeIs(2));
    // Where nothing was typed nothing is asked.
    QTimer::singleShot(0, &window, [] { QApplication::activeModalWidget()->close(); });
    action(u"Add a lifter"_s).trigger();
}

TEST_F(InTheWindow, AFailureIsShownUntilTheNextSuccess)
{
    Q_EMIT roster().failed(u"The disk is full."_s, u"ENOSPC"_s);
    EXPECT_EQ(message(), u"The disk is full."_s);
    ASSERT_TRUE(roster().undo());
    EXPECT_EQ(message(), QString());
}

TEST_F(InTheWindow, AStepOfALifterWhoIsNotShownIsToldWhenItIsUndone)
{
    core::Edit edit;
    edit.lifters.before = {*roster().lifter(bea)};
    edit.lifters.after = edit.lifters.before;
    edit.lifters.after[0].notes = u"left-handed"_s;
    ASSERT_TRUE(roster().perform(u"Edit Bea"_s, edit));
    action(u"Undo"_s).trigger();
    EXPECT_THAT(message().toStdString(), testing::HasSubstr("Bea"));
    action(u"Redo"_s).trigger();
    EXPECT_THAT(message().toStdString(), testing::HasSubstr("Done again"));
    window.roster()->selection().setLifter(bea);
    action(u"Undo"_s).trigger();
    EXPECT_EQ(message(), QString());
    EXPECT_TRUE(action(u"Redo"_s).shortcuts().contains(QKeySequence(u"Ctrl+Y"_s)));
}

TEST_F(InTheWindow, UndoInAFieldWithNothingToUndoIsOfTheStep)
{
    auto *search = window.findChild<QLineEdit *>(u"search"_s);
    search->setFocus();
    QTest::keyClicks(search, u"a"_s);
    QTest::keyClick(search, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(search->text(), QString()) << "the field's own letters come first";
    EXPECT_TRUE(roster().steps().canUndo());
    QTest::keyClick(search, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(roster().steps().canUndo());
}
