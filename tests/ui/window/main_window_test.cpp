#include "ui/window/main_window.h"

#include "core/exchange/return_sheet.h"
#include "core/storage/backup.h"
#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "ui/board/week_grid.h"
#include "ui/handout/hand_out_dialog.h"
#include "ui/importing/import_dialog.h"
#include "ui/look/theme.h"
#include "ui/returns/returns_dialog.h"
#include "ui/window/help.h"
#include "ui/window/message_bar.h"
#include "ui/window/roster_view.h"

#include <QAction>
#include <QApplication>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QMimeData>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTest>
#include <QTimer>
#include <QUrl>
#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

namespace {

class Window : public testing::Test
{
protected:
    PrivateFolder folder;
    QString path = folder.path(u"club.benchwright"_s);
    QString other = folder.path(u"other.benchwright"_s);
    ui::Theme theme{*static_cast<QApplication *>(QCoreApplication::instance())};
    SetClock clock;
    ui::MainWindow window{theme, clock.today};

    void makeRoster(const QString &at, const QString &lifter) const
    {
        core::RosterFile file = core::RosterFile::create(at);
        std::vector<core::Lifter> lifters{inventedLifter(lifter)};
        addTo(file, lifters);
    }
    QString message() const
    {
        auto *bar = window.findChild<QWidget *>(u"messageBar"_s);
        return bar->isHidden() ? QString() : bar->findChild<QLabel *>(u"words"_s)->text();
    }
    QAction *action(const QString &text) const
    {
        for (QAction *a : window.findChildren<QAction *>())
            if (a->text().remove(u'&').startsWith(text))
                return a;
        return nullptr;
    }
    static void write(const QString &at, const QByteArray &bytes)
    {
        QFile file(at);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }
};

} // namespace

// Whoever closes a file drops this process's locks on it, SQLite's too: sqlite.org, "How To Corrupt
// An SQLite Database File", section 2.2.
TEST_F(Window, DialogsOfFilesLeaveTheLocksOnTheRosterAlone)
{
    const auto locks = [] {
        QFile file(u"/proc/locks"_s);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        const QByteArray process =
            ' ' + QByteArray::number(QCoreApplication::applicationPid()) + ' ';
        return file.readAll().count(process);
    };
    makeRoster(path, u"Ada"_s);
    window.show();
    ASSERT_TRUE(window.openFile(path));
    ASSERT_GT(locks(), 0);
    const auto before = locks();
    for (const char *name : {"New roster", "Open", "Open a backup"}) {
        QTimer::singleShot(300, &window, [] { // time to list the folder with its files' icons
            QApplication::activeModalWidget()->close();
        });
        action(QString::fromLatin1(name))->trigger();
        EXPECT_EQ(locks(), before) << name;
    }
}

TEST_F(Window, BeginsWithTheStartPageAndOnlyActionsThatWork)
{
    window.show();
    EXPECT_EQ(window.roster(), nullptr);
    EXPECT_TRUE(window.findChild<QPushButton *>(u"newRoster"_s)->isVisible());
    EXPECT_FALSE(action(u"Add a lifter"_s)->isEnabled());
    EXPECT_FALSE(action(u"Undo"_s)->isEnabled());
}

TEST_F(Window, MakesARosterAndInvitesToAddALifter)
{
    window.show();
    ASSERT_TRUE(window.createFile(path));
    EXPECT_TRUE(QFile::exists(path));
    EXPECT_TRUE(window.windowTitle().startsWith(u"club"_s));
    EXPECT_TRUE(window.findChild<QPushButton *>(u"inviteAdd"_s)->isVisible());
    EXPECT_TRUE(action(u"Add a lifter"_s)->isEnabled());
}

TEST_F(Window, NeverWritesOverARosterThatIsThere)
{
    makeRoster(path, u"Ada Quill"_s);
    EXPECT_FALSE(window.createFile(path));
    EXPECT_TRUE(message().contains(u"club"_s));
    EXPECT_TRUE(window.openFile(path));
    EXPECT_EQ(window.roster()->openRoster().lifters().size(), 1U);
}

TEST_F(Window, SaysWhyAFileCannotBeOpenedAndKeepsWhatItHad)
{
    makeRoster(path, u"Ada Quill"_s);
    makeRoster(other, u"Bo Stone"_s);
    ASSERT_TRUE(window.openFile(path));

    const QString text = folder.path(u"text.benchwright"_s);
    write(text, "not a roster at all");
    const core::RosterFile held = core::RosterFile::open(other, clock.today.now());
    for (const QString &bad : {text, folder.path(u"missing.benchwright"_s), other}) {
        EXPECT_FALSE(window.openFile(bad));
        EXPECT_FALSE(message().isEmpty());
        ASSERT_NE(window.roster(), nullptr);
        EXPECT_EQ(window.path(), path);
    }
    EXPECT_TRUE(message().contains(u"another window"_s));
}

TEST_F(Window, AClockBehindTheNewestSetIsPointedOutOnce)
{
    const QDate newest = clock.today.date();
    {
        core::RosterFile file = core::RosterFile::create(path);
        std::vector<core::Lifter> lifters{inventedLifter(u"Ada Quill"_s)};
        addTo(file, lifters);
        core::LoggedSession session;
        session.id = file.newId<core::LoggedSession>();
        session.lifter = lifters.front().id;
        session.day = newest;
        core::SetEntry set;
        set.variation = core::competitionOf(file.variations(), core::Lift::bench)->id;
        set.loadKg = 60.0;
        set.repsDone = 5;
        session.sets = {set};
        core::Edit edit;
        edit.sessions.after = {session};
        file.apply(edit);
    }
    const auto open = [this] {
        ASSERT_TRUE(window.openFile(path));
        QSignalSpy fitted(&window.roster()->estimates(), &ui::Estimates::rosterFitted);
        ASSERT_TRUE(fitted.wait(20'000));
    };
    open();
    EXPECT_EQ(message(), QString()) << "the clock is right";
    window.closeFile();

    clock.set(newest.addDays(-200));
    open();
    EXPECT_THAT(message().toStdString(),
        testing::AllOf(testing::HasSubstr("This computer's clock says 9 May 2026"),
            testing::HasSubstr("the newest set is of 25 November 2026")));
    window.findChild<QPushButton *>(u"dismiss"_s)->click();
    QSignalSpy fitted(&window.roster()->estimates(), &ui::Estimates::rosterFitted);
    std::vector<core::Lifter> more{inventedLifter(u"Bo Stone"_s)};
    more.front().id = window.roster()->openRoster().newId<core::Lifter>();
    core::Edit edit;
    edit.lifters.after = more;
    ASSERT_TRUE(window.roster()->openRoster().perform(u"Add"_s, edit));
    ASSERT_TRUE(fitted.wait(20'000));
    EXPECT_EQ(message(), QString()) << "said once";
}

TEST_F(Window, WordsOfTheClockDoNotPushAsideWhatWasSaidBefore)
{
    auto *bar = window.findChild<ui::MessageBar *>();
    bar->say(u"No backup could be made."_s, u"disk full"_s);
    bar->sayToo(u"The clock is behind."_s);
    EXPECT_EQ(message(), u"No backup could be made. The clock is behind."_s);
    bar->hide();
    bar->sayToo(u"The clock is behind."_s);
    EXPECT_EQ(message(), u"The clock is behind."_s);
}

TEST_F(Window, TellsOfABackupThatFailedAndWorksOn)
{
    makeRoster(path, u"Ann"_s);
    write(folder.path(u"club backups"_s), "a file where the folder should be");
    EXPECT_TRUE(window.openFile(path));
    EXPECT_NE(window.roster(), nullptr);
    EXPECT_TRUE(message().startsWith(u"No backup could be made"_s)) << message().toStdString();
}

TEST_F(Window, OpeningABackupOpensACopyOfIt)
{
    makeRoster(path, u"Ann"_s);
    ASSERT_TRUE(window.openFile(path)); // makes the day's backup
    const auto backups = core::backupsOf(path);
    ASSERT_EQ(backups.size(), 1u);
    ASSERT_TRUE(window.openFile(backups[0].path));
    const QString copy = window.path();
    EXPECT_EQ(QFileInfo(copy).absolutePath(), QFileInfo(path).absolutePath());
    EXPECT_NE(copy, path);
    EXPECT_TRUE(message().contains(u"copy of the backup"_s));
    EXPECT_EQ(window.roster()->openRoster().lifters().size(), 1u);
    EXPECT_EQ(core::backupsOf(path).size(), 1u);
}

TEST_F(Window, OpeningTheOpenRosterAgainIsNoMistake)
{
    makeRoster(path, u"Ada Quill"_s);
    ASSERT_TRUE(window.openFile(path));
    EXPECT_TRUE(window.openFile(path));
    EXPECT_TRUE(message().isEmpty());
}

TEST_F(Window, GoesFromOneRosterToAnotherAndLetsTheFirstGo)
{
    makeRoster(path, u"Ada Quill"_s);
    makeRoster(other, u"Bo Stone"_s);
    ASSERT_TRUE(window.openFile(path));
    ASSERT_TRUE(window.openFile(other));
    EXPECT_EQ(window.roster()->openRoster().lifters()[0].name, u"Bo Stone"_s);
    EXPECT_NO_THROW(static_cast<void>(core::RosterFile::open(path, clock.today.now())))
        << "no lock was left behind";
    window.closeFile();
    EXPECT_EQ(window.roster(), nullptr);
}

TEST_F(Window, NamesWhatUndoAndRedoWouldDo)
{
    makeRoster(path, u"Ada Quill"_s);
    ASSERT_TRUE(window.openFile(path));
    action(u"Archive or restore"_s)->trigger();
    EXPECT_EQ(action(u"Undo"_s)->text().remove(u'&'), u"Undo Archive Ada Quill"_s);
    action(u"Undo"_s)->trigger();
    EXPECT_EQ(action(u"Redo"_s)->text().remove(u'&'), u"Redo Archive Ada Quill"_s);
    EXPECT_FALSE(window.roster()->openRoster().lifters()[0].archived);
}

TEST_F(Window, ShowsAFailedChangeInWordsWithoutStoppingTheWork)
{
    makeRoster(path, u"Ada Quill"_s);
    ASSERT_TRUE(window.openFile(path));
    Q_EMIT window.roster()->openRoster().failed(u"The disk is full."_s, u"SQLITE_FULL"_s);
    EXPECT_EQ(message(), u"The disk is full."_s);
    window.findChild<QPushButton *>(u"dismiss"_s)->click();
    EXPECT_TRUE(message().isEmpty());
}

TEST_F(Window, OpensARosterThatIsDroppedOnIt)
{
    makeRoster(path, u"Ada Quill"_s);
    window.show();
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(path)});
    QDragEnterEvent enter({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &drop);
    ASSERT_NE(window.roster(), nullptr);
}

TEST_F(Window, AReturnSheetThatIsDroppedIsReadAsOneAndNotAsALog)
{
    const QString sheet = folder.path(u"return.csv"_s);
    write(sheet, core::returnColumns().join(u',').toUtf8() + "\r\n");
    ASSERT_TRUE(window.createFile(path));
    window.show();
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(sheet)});
    QDragEnterEvent enter({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &enter);
    ASSERT_TRUE(enter.isAccepted());
    QDropEvent drop({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &drop);
    EXPECT_EQ(window.findChildren<ui::ReturnsDialog *>().size(), 1);
    EXPECT_TRUE(window.findChildren<ui::ImportDialog *>().isEmpty());
}

TEST_F(Window, OffersHandOutsAndReturnsInTheFileMenu)
{
    ASSERT_TRUE(window.createFile(path));
    window.show();
    action(u"Write hand-outs"_s)->trigger();
    EXPECT_EQ(window.findChildren<ui::HandOutDialog *>().size(), 1);
    action(u"Read return sheets"_s)->trigger();
    EXPECT_EQ(window.findChildren<ui::ReturnsDialog *>().size(), 1);
}

TEST_F(Window, OffersToImportByMenuByInvitationAndByDrop)
{
    const QString log = folder.path(u"log.csv"_s);
    write(log,
        "lifter,date,variation,load_kg,reps_planned,reps_done,rpe,failed\n"
        "Ada Quill,2026-03-30,comp,100,5,5,8,0\n");
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(log)});
    QDragEnterEvent onStart({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    onStart.ignore();
    QApplication::sendEvent(&window, &onStart);
    EXPECT_FALSE(onStart.isAccepted()) << "without a roster there is nothing to import into";

    ASSERT_TRUE(window.createFile(path));
    window.show();
    const auto dialogs = [this] { return window.findChildren<ui::ImportDialog *>(); };
    const auto closeDialog = [&] {
        ASSERT_EQ(dialogs().size(), 1);
        dialogs().front()->close();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        EXPECT_TRUE(dialogs().isEmpty());
    };
    action(u"Import log"_s)->trigger();
    closeDialog();
    window.findChild<QPushButton *>(u"inviteImport"_s)->click();
    closeDialog();

    QDragEnterEvent enter({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &drop);
    ASSERT_EQ(dialogs().size(), 1);
    EXPECT_EQ(dialogs().front()->files().log, log);
    closeDialog();
}

TEST_F(Window, SaysWhatIsMissingWhenThereIsNothingToPrint)
{
    makeRoster(path, u"Ada Quill"_s);
    ASSERT_TRUE(window.openFile(path));
    action(u"Print plan"_s)->trigger();
    EXPECT_TRUE(message().contains(u"Ada Quill"_s));
    EXPECT_TRUE(message().contains(u"week board"_s));
}

TEST_F(Window, TurnsToThePagesByTheirActions)
{
    makeRoster(path, u"Ada Quill"_s);
    ASSERT_TRUE(window.openFile(path));
    action(u"Review"_s)->trigger();
    EXPECT_EQ(window.roster()->pages().currentIndex(), 2);
    action(u"Week board"_s)->trigger();
    EXPECT_EQ(window.roster()->pages().currentIndex(), 0);
}

TEST_F(Window, KeepsTheColoursChosen)
{
    action(u"Dark colours"_s)->trigger();
    EXPECT_EQ(ui::schemeOf(QApplication::palette()), ui::Scheme::dark);
    const ui::Theme next{*static_cast<QApplication *>(QCoreApplication::instance())};
    EXPECT_EQ(next.choice(), ui::SchemeChoice::dark);
    action(u"Light colours"_s)->trigger();
    EXPECT_EQ(ui::schemeOf(QApplication::palette()), ui::Scheme::light);
}

TEST_F(Window, GivesEveryMenuItemAMnemonicThatIsUniqueInItsMenu)
{
    makeRoster(path, u"Ada Quill"_s);
    ASSERT_TRUE(window.openFile(path));
    for (const QAction *top : window.menuBar()->actions()) {
        QStringList letters;
        for (const QAction *item : top->menu()->actions()) {
            if (item->isSeparator())
                continue;
            const qsizetype at = item->text().indexOf(u'&');
            ASSERT_GE(at, 0) << qPrintable(item->text());
            letters << item->text().mid(at + 1, 1).toLower();
        }
        EXPECT_EQ(QStringList(letters).removeDuplicates(), 0) << qPrintable(top->text());
    }
}

TEST_F(Window, GivesNoShortcutTwiceAndListsThemAll)
{
    QStringList keys;
    const QString help = ui::helpHtml(window, {});
    for (const QAction *a : window.findChildren<QAction *>())
        if (!a->shortcut().isEmpty()) {
            keys << a->shortcut().toString();
            EXPECT_TRUE(
                help.contains(a->shortcut().toString(QKeySequence::NativeText).toHtmlEscaped()))
                << qPrintable(a->text());
        }
    EXPECT_GT(keys.size(), 8);
    EXPECT_EQ(QStringList(keys).removeDuplicates(), 0);
}

TEST(Safety, DefersToRulesAndLicensedPractice)
{
    const QString note = ui::safetyNote();
    for (const char *part : {"not medical advice", "rule book", "licensed", "spotter", "pain"})
        EXPECT_TRUE(note.contains(QLatin1String(part))) << part;
}

TEST_F(Window, AKeyToAPageGivesItTheKeyboard)
{
    makeRoster(path, u"Ada"_s);
    window.show();
    QApplication::setActiveWindow(&window);
    ASSERT_TRUE(window.openFile(path));
    QTabWidget &pages = window.roster()->pages();
    for (int page = pages.count() - 1; page >= 0; --page) {
        QTest::keyClick(&window, Qt::Key(Qt::Key_1 + page), Qt::ControlModifier);
        ASSERT_EQ(pages.currentIndex(), page);
        const QWidget *focus = QApplication::focusWidget();
        EXPECT_TRUE(focus == pages.currentWidget() || pages.currentWidget()->isAncestorOf(focus))
            << page;
    }
    const auto *grid = window.findChild<ui::WeekGrid *>();
    ASSERT_TRUE(grid->isAncestorOf(QApplication::focusWidget()));
    const int day = grid->choice().place().day;
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Right);
    EXPECT_EQ(grid->choice().place().day, day + 1);
}
