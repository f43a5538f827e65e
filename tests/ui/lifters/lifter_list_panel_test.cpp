#include "ui/lifters/lifter_list_panel.h"

#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "ui/lifters/lifter_editor.h"
#include "ui/roster/estimates.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"

#include <QApplication>
#include <QCheckBox>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>
#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

namespace {

class Panel : public testing::Test
{
protected:
    PrivateFolder folder;
    std::vector<core::Lifter> lifters{inventedLifter(u"Ada Núñez"_s),
        inventedLifter(u"Bo Stone"_s, core::TouchStyle::sinking), inventedLifter(u"Cy Archer"_s)};
    SetClock clock;
    ui::OpenRoster roster{std::make_unique<core::RosterFile>(makeFile()), clock.today};
    ui::Estimates estimates{roster};
    ui::Selection selection{roster};
    ui::LifterListPanel panel{roster, estimates, selection};
    QListView *list = panel.findChild<QListView *>(u"lifters"_s);
    QLineEdit *search = panel.findChild<QLineEdit *>(u"search"_s);

    core::RosterFile makeFile()
    {
        core::RosterFile file = core::RosterFile::create(folder.path(u"roster.benchwright"_s));
        addTo(file, lifters);
        return file;
    }
    void SetUp() override
    {
        panel.resize(320, 600);
        panel.show();
        panel.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&panel));
    }
    QStringList names() const
    {
        QStringList result;
        for (int i = 0; i < list->model()->rowCount(); ++i)
            result << list->model()->index(i, 0).data().toString();
        return result;
    }
    /// Runs `act` in the editor that the next action opens.
    static void inEditor(const std::function<void(ui::LifterEditor &)> &act)
    {
        QTimer::singleShot(0, [act] {
            auto *editor = qobject_cast<ui::LifterEditor *>(QApplication::activeModalWidget());
            ASSERT_NE(editor, nullptr);
            act(*editor);
        });
    }
};

} // namespace

TEST_F(Panel, ChoosesTheFirstLifterToBeginWith)
{
    EXPECT_EQ(selection.lifter(), lifters[0].id);
    EXPECT_EQ(list->currentIndex().row(), 0);
}

TEST_F(Panel, FindsAsOneTypesAndGoesIntoTheListByKeyboard)
{
    panel.focusSearch();
    QTest::keyClicks(search, u"stone"_s);
    EXPECT_EQ(names(), QStringList{u"Bo Stone"_s});
    EXPECT_EQ(selection.lifter(), lifters[0].id) << "typing alone turns no page";
    QTest::keyClick(search, Qt::Key_Down);
    EXPECT_TRUE(list->hasFocus());
    EXPECT_EQ(selection.lifter(), lifters[1].id);
    search->setFocus();
    QTest::keyClick(search, Qt::Key_Escape);
    EXPECT_EQ(names().size(), 3);
    EXPECT_EQ(list->currentIndex().data().toString(), u"Bo Stone"_s);
}

TEST_F(Panel, NoLetterArchivesALifterAndArchivingIsTold)
{
    QSignalSpy told(&panel, &ui::LifterListPanel::told);
    const auto isArchived = [this] { return roster.lifter(lifters[0].id)->archived; };
    for (const Qt::Key letter : {Qt::Key_C, Qt::Key_R, Qt::Key_H})
        QTest::keyClick(list, letter, Qt::AltModifier);
    EXPECT_FALSE(isArchived());
    EXPECT_THAT(told, testing::IsEmpty());

    panel.findChild<QPushButton *>(u"archive"_s)->click();
    EXPECT_TRUE(isArchived());
    ASSERT_EQ(told.size(), 1);
    EXPECT_THAT(told[0][0].toString().toStdString(),
        testing::AllOf(testing::HasSubstr("Ada Núñez is archived"), testing::HasSubstr("Ctrl+Z")));
    ASSERT_TRUE(roster.undo());
    EXPECT_FALSE(isArchived());
}

TEST_F(Panel, StepsThroughLiftersAndStaysAtTheEnds)
{
    panel.stepLifter(-1);
    EXPECT_EQ(selection.lifter(), lifters[0].id);
    panel.stepLifter(+1);
    EXPECT_EQ(selection.lifter(), lifters[1].id);
    panel.stepLifter(+5);
    EXPECT_EQ(selection.lifter(), lifters[2].id);
}

TEST_F(Panel, ArchivesRestoresAndUndoes)
{
    selection.setLifter(lifters[1].id);
    auto *archive = panel.findChild<QPushButton *>(u"archive"_s);
    QTest::mouseClick(archive, Qt::LeftButton);
    EXPECT_EQ(names(), (QStringList{u"Ada Núñez"_s, u"Cy Archer"_s}));
    EXPECT_NE(selection.lifter(), lifters[1].id) << "a neighbour takes its place";
    EXPECT_TRUE(selection.lifter().isValid());

    auto *showArchived = panel.findChild<QCheckBox *>(u"showArchived"_s);
    EXPECT_TRUE(showArchived->text().contains(u'1'));
    showArchived->click();
    EXPECT_EQ(names().size(), 3);
    selection.setLifter(lifters[1].id);
    EXPECT_TRUE(archive->text().contains(u"estore"_s));
    QTest::mouseClick(archive, Qt::LeftButton);
    EXPECT_FALSE(roster.lifter(lifters[1].id)->archived);

    roster.undo();
    EXPECT_TRUE(roster.lifter(lifters[1].id)->archived);
    roster.undo();
    EXPECT_FALSE(roster.lifter(lifters[1].id)->archived);
    EXPECT_FALSE(roster.steps().canUndo()) << "one undo step an action";
}

TEST_F(Panel, AddsALifterInOneStepAndShowsIt)
{
    inEditor([](ui::LifterEditor &editor) {
        QTest::keyClicks(editor.findChild<QLineEdit *>(u"name"_s), u"Di Vale"_s);
        QTest::keyClick(&editor, Qt::Key_Return);
    });
    QTest::mouseClick(panel.findChild<QPushButton *>(u"add"_s), Qt::LeftButton);
    ASSERT_EQ(roster.lifters().size(), 4U);
    EXPECT_EQ(roster.lifter(selection.lifter())->name, u"Di Vale"_s);
    EXPECT_EQ(roster.steps().undoText(), u"Add Di Vale"_s);
    roster.undo();
    EXPECT_EQ(roster.lifters().size(), 3U);
    EXPECT_TRUE(roster.lifter(selection.lifter())) << "a lifter who is there is chosen again";
    roster.redo();
    EXPECT_EQ(roster.lifters().size(), 4U);
}

TEST_F(Panel, EditsTheChosenLifterOnEnter)
{
    selection.setLifter(lifters[2].id);
    inEditor([](ui::LifterEditor &editor) {
        auto *name = editor.findChild<QLineEdit *>(u"name"_s);
        name->selectAll();
        QTest::keyClicks(name, u"Aaron Archer"_s);
        QTest::keyClick(&editor, Qt::Key_Return);
    });
    QTest::keyClick(list, Qt::Key_Return);
    EXPECT_EQ(roster.lifter(lifters[2].id)->name, u"Aaron Archer"_s);
    EXPECT_EQ(names()[0], u"Aaron Archer"_s) << "the list stays in order";
    EXPECT_EQ(selection.lifter(), lifters[2].id);
}

TEST_F(Panel, CancellingLeavesNoStep)
{
    inEditor([](ui::LifterEditor &editor) { QTest::keyClick(&editor, Qt::Key_Escape); });
    panel.editLifter();
    EXPECT_FALSE(roster.steps().canUndo());
}
