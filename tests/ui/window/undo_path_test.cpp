#include "core/storage/roster_file.h"
#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "ui/lifters/lifter_list_panel.h"
#include "ui/look/theme.h"
#include "ui/window/main_window.h"
#include "ui/window/roster_view.h"

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QSettings>
#include <QTabWidget>
#include <QTest>
#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

namespace {

// Where undo, the selection and what is half typed meet: the paths on which one wrote while
// another was being told.
class UndoPath : public testing::Test
{
protected:
    UndoPath()
    {
        QSettings().clear();
        {
            core::RosterFile file = core::RosterFile::create(path);
            std::vector<core::Lifter> lifters{inventedLifter(u"Ada"_s), inventedLifter(u"Bo"_s)};
            addTo(file, lifters);
            ada = lifters[0].id;
            bo = lifters[1].id;
        }
        EXPECT_TRUE(window.openFile(path));
        window.show();
        QApplication::setActiveWindow(&window);
        roster().showPage(1); // the log
        roster().selection().setLifter(ada);
    }
    ui::RosterView &roster() { return *window.roster(); }
    ui::OpenRoster &open() { return roster().openRoster(); }
    template <class Widget> Widget &the(const char *name)
    {
        return *window.findChild<Widget *>(QString::fromLatin1(name));
    }
    [[nodiscard]] bool isArchived(core::LifterId id) { return open().lifter(id)->archived; }

    PrivateFolder folder;
    QString path = folder.path(u"club.benchwright"_s);
    core::LifterId ada, bo;
    ui::Theme theme{*qApp};
    SetClock clock;
    ui::MainWindow window{theme, clock.today};
};

} // namespace

TEST_F(UndoPath, PainTickedBetweenUndoAndRedoIsStoredOnceAndBreaksNothing)
{
    roster().lifters().toggleArchived();
    ASSERT_TRUE(isArchived(ada));
    ASSERT_TRUE(open().undo());
    ASSERT_FALSE(isArchived(ada));
    roster().selection().setLifter(ada);
    the<QComboBox>("pain").setCurrentIndex(2); // no place is named
    EXPECT_EQ(open().checkIns(ada).size(), 1u) << "before it is told where";

    // The answer is what was done last now, so there is nothing left to do again.
    EXPECT_FALSE(open().redo());
    ASSERT_EQ(open().checkIns(ada).size(), 1u);
    EXPECT_TRUE(open().checkIns(ada).front().pain);
    EXPECT_FALSE(isArchived(ada));

    while (open().steps().canUndo())
        ASSERT_TRUE(open().undo());
    EXPECT_THAT(open().checkIns(ada), testing::IsEmpty());
    while (open().steps().canRedo())
        ASSERT_TRUE(open().redo());
    EXPECT_EQ(open().checkIns(ada).size(), 1u);
}

TEST_F(UndoPath, PainHalfToldIsStoredForTheLifterItIsAboutWhenThatOneIsArchived)
{
    the<QComboBox>("pain").setCurrentIndex(2);
    roster().lifters().toggleArchived(); // the list goes on to Bo
    EXPECT_TRUE(isArchived(ada));
    ASSERT_EQ(open().checkIns(ada).size(), 1u);
    EXPECT_TRUE(open().checkIns(ada).front().pain);
    EXPECT_THAT(open().checkIns(bo), testing::IsEmpty());
}

TEST_F(UndoPath, WordsHalfTypedAreStoredWhenThePageTheLifterOrTheRosterIsLeft)
{
    const auto type = [this](const char *words) {
        auto &note = the<QLineEdit>("checkInNote");
        note.setFocus();
        note.clear();
        QTest::keyClicks(&note, QString::fromLatin1(words));
    };
    const auto stored = [this] {
        const std::vector<core::CheckIn> checkIns = open().checkIns(ada);
        return checkIns.empty() ? QString() : checkIns.front().note;
    };
    type("slept badly");
    roster().showPage(0);
    EXPECT_EQ(stored(), u"slept badly"_s);
    roster().showPage(1);
    type("slept well");
    roster().selection().setLifter(bo);
    EXPECT_EQ(stored(), u"slept well"_s);
    EXPECT_THAT(open().checkIns(bo), testing::IsEmpty());
    roster().selection().setLifter(ada);
    type("as ever");
    window.closeFile();
    EXPECT_EQ(
        core::RosterFile::open(path, clock.today.now()).checkIns(ada).front().note, u"as ever"_s);
}

TEST_F(UndoPath, TheMenuTakesBackAndDoesAgainWhatItNames)
{
    const auto action = [this](const QKeySequence &keys) {
        for (QAction *each : window.findChildren<QAction *>())
            if (each->shortcut() == keys)
                return each;
        return static_cast<QAction *>(nullptr);
    };
    QAction *undo = action(QKeySequence::Undo);
    QAction *redo = action(QKeySequence::Redo);
    ASSERT_TRUE(undo && redo);
    EXPECT_FALSE(undo->isEnabled());
    roster().lifters().toggleArchived();
    EXPECT_TRUE(undo->text().contains(u"Archive Ada"_s)) << undo->text().toStdString();
    undo->trigger();
    EXPECT_FALSE(isArchived(ada));
    EXPECT_FALSE(undo->isEnabled());
    EXPECT_TRUE(redo->text().contains(u"Archive Ada"_s)) << redo->text().toStdString();
    redo->trigger();
    EXPECT_TRUE(isArchived(ada));
    window.closeFile();
    EXPECT_FALSE(undo->isEnabled());
}
