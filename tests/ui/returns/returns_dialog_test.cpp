#include "ui/returns/returns_dialog.h"

#include "tests/core/exchange/return_files.h"
#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "ui/look/field_note.h"
#include "ui/returns/return_files.h"
#include "ui/returns/return_tree.h"

#include <QDropEvent>
#include <QMimeData>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <gmock/gmock.h>

using testing::ElementsAre;
using tests::PlannedWeek;
using tests::ReturnFile;
using ui::ReturnsDialog;
using ui::ReturnTree;

namespace {

class ReturnsDialogTest : public testing::Test
{
protected:
    ReturnsDialogTest()
    {
        core::Edit edit;
        edit.lifters.after = {week.lifter};
        edit.cards.after = week.cards;
        EXPECT_TRUE(session.perform(QStringLiteral("Set up"), edit));
    }

    QString write(const QString &name, const ReturnFile &contents) const
    {
        QFile file(folder.path(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(contents.text());
        return file.fileName();
    }

    void offer(const QStringList &paths)
    {
        QSignalSpy reviewed(&dialog, &ReturnsDialog::reviewed);
        dialog.offer(paths);
        EXPECT_TRUE(reviewed.wait(10'000));
    }

    QPushButton *acceptButton() const
    {
        for (QPushButton *button : dialog.findChildren<QPushButton *>())
            if (button->isDefault())
                return button;
        return nullptr;
    }
    QTreeWidgetItem *sheetAt(int row) const { return tree->topLevelItem(row); }

    static bool hasBox(const QTreeWidgetItem *item)
    {
        return item->data(ReturnTree::whatColumn, Qt::CheckStateRole).isValid();
    }

    PrivateFolder folder;
    PlannedWeek week;
    ReturnFile sheet{week};
    SetClock clock;
    ui::OpenRoster session{std::make_unique<core::RosterFile>(core::RosterFile::create(
                               folder.path(QStringLiteral("club.benchwright")))),
        clock.today};
    ReturnsDialog dialog{session};
    ReturnTree *tree = dialog.findChild<ReturnTree *>();
};

} // namespace

TEST_F(ReturnsDialogTest, NothingCanBeAcceptedBeforeASheetIsThere)
{
    ASSERT_NE(acceptButton(), nullptr);
    EXPECT_FALSE(acceptButton()->isEnabled());
}

TEST_F(ReturnsDialogTest, ASoundSheetIsTickedAndEnterAcceptsItAsOneUndoStep)
{
    offer({write(QStringLiteral("ada.csv"), sheet)});
    ASSERT_EQ(tree->topLevelItemCount(), 1);
    EXPECT_EQ(sheetAt(0)->checkState(0), Qt::Checked);
    EXPECT_EQ(sheetAt(0)->childCount(), 2) << "its days";
    EXPECT_EQ(sheetAt(0)->child(0)->child(0)->text(ReturnTree::plannedColumn),
        QStringLiteral("3 x 100 kg"));
    EXPECT_EQ(sheetAt(0)->child(0)->child(0)->text(ReturnTree::differenceColumn),
        QStringLiteral("as planned"));
    EXPECT_TRUE(session.sessions().empty()) << "nothing is changed before it is accepted";

    dialog.show();
    QTest::keyClick(&dialog, Qt::Key_Return);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_EQ(session.sessions().size(), 2u);
    const int steps = session.steps().count();
    session.undo();
    EXPECT_TRUE(session.sessions().empty());
    session.redo();
    EXPECT_EQ(session.sessions().size(), 2u);
    EXPECT_EQ(session.steps().count(), steps);
}

TEST_F(ReturnsDialogTest, PainStandsFirstIsMarkedInWordsAndIsStored)
{
    ReturnFile painful = sheet;
    painful.rows[0]["lifter"] = QStringLiteral("Zoe Example");
    painful.rows[0]["lifter_id"] = QStringLiteral("9");
    painful.rows.append({{"row", "check_in"}, {"date", "2024-05-06"}, {"pain", "elbows"}});
    core::Lifter zoe = week.lifter;
    zoe.id = core::LifterId{9};
    zoe.name = QStringLiteral("Zoe Example");
    core::Edit edit;
    edit.lifters.after = {zoe};
    ASSERT_TRUE(session.perform(QStringLiteral("Add"), edit));
    offer({write(QStringLiteral("ada.csv"), sheet), write(QStringLiteral("zoe.csv"), painful)});
    EXPECT_TRUE(sheetAt(0)->text(0).startsWith(QStringLiteral("Zoe")));
    EXPECT_TRUE(sheetAt(0)->child(0)->text(0).startsWith(QStringLiteral("PAIN")));
    EXPECT_TRUE(sheetAt(0)->child(0)->text(0).contains(QStringLiteral("elbows")));
    bool isSaid = false;
    for (const ui::FieldNote *note : dialog.findChildren<ui::FieldNote *>())
        isSaid = isSaid || note->text().contains(QStringLiteral("says pain"));
    EXPECT_TRUE(isSaid);
    sheetAt(0)->setCheckState(0, Qt::Checked);
    acceptButton()->click();
    ASSERT_EQ(session.checkIns(zoe.id).size(), 1u);
    EXPECT_EQ(session.checkIns(zoe.id)[0].pain->area, core::BodyArea::elbows);
}

TEST_F(ReturnsDialogTest, LongWordsAboutPainAreShownToTheLast)
{
    sheet.rows.append({{"row", "check_in"}, {"date", "2024-05-06"}, {"pain", "elbows"},
        {"pain_words", QStringLiteral("left and sharp ").repeated(20)}});
    offer({write(QStringLiteral("ada.csv"), sheet)});
    dialog.show();
    const int wide = sheetAt(0)->child(0)->sizeHint(0).height();
    dialog.resize(dialog.width() * 2 / 3, dialog.height());
    QCoreApplication::processEvents();
    EXPECT_GT(wide, 3 * tree->fontMetrics().height());
    EXPECT_GT(sheetAt(0)->child(0)->sizeHint(0).height(), wide);
}

TEST_F(ReturnsDialogTest, TheCoachTicksWhatIsOdd)
{
    core::Edit edit;
    edit.cards.before = {week.cards[0]};
    core::Card changed = week.cards[0];
    changed.setLine = QStringLiteral("5x5 80kg");
    edit.cards.after = {changed};
    ASSERT_TRUE(session.perform(QStringLiteral("Change the plan"), edit));
    offer({write(QStringLiteral("ada.csv"), sheet)});
    EXPECT_EQ(sheetAt(0)->checkState(0), Qt::Unchecked) << "of an old plan";
    EXPECT_TRUE(sheetAt(0)->child(0)->text(0).contains(QStringLiteral("plan was changed")));
    EXPECT_FALSE(acceptButton()->isEnabled());
    tree->setFocus();
    QTest::keyClick(tree, Qt::Key_Space);
    EXPECT_EQ(sheetAt(0)->checkState(0), Qt::Checked) << "by keyboard";
    EXPECT_TRUE(acceptButton()->isEnabled());
    acceptButton()->click();
    EXPECT_EQ(session.sessions().size(), 2u);
}

TEST_F(ReturnsDialogTest, HostileSheetsHaveNoBoxAndSayWhy)
{
    const QString hostile = QStringLiteral("<img src=x onerror=alert(1)>");
    ReturnFile stranger = sheet;
    stranger.rows[0]["lifter"] = hostile;
    stranger.rows[0]["lifter_id"] = QStringLiteral("99");
    ReturnFile cut = sheet;
    cut.hasEnd = false;
    offer({write(QStringLiteral("stranger.csv"), stranger), write(QStringLiteral("cut.csv"), cut),
        folder.path(QStringLiteral("gone.csv"))});
    ASSERT_EQ(tree->topLevelItemCount(), 3);
    QStringList words;
    for (int row = 0; row < 3; ++row) {
        EXPECT_FALSE(hasBox(sheetAt(row)));
        ASSERT_GE(sheetAt(row)->childCount(), 1);
        words << sheetAt(row)->text(0) << sheetAt(row)->child(0)->text(0);
    }
    const QString all = words.join(u'\n');
    EXPECT_TRUE(all.contains(hostile)) << "shown as the text it is";
    EXPECT_TRUE(all.contains(QStringLiteral("no lifter named")));
    EXPECT_TRUE(all.contains(QStringLiteral("was cut")));
    EXPECT_TRUE(all.contains(QStringLiteral("cannot be read")));
    EXPECT_FALSE(acceptButton()->isEnabled());
}

TEST_F(ReturnsDialogTest, DroppedSheetsJoinThoseThatAreThereAndNoneIsReadTwice)
{
    const QString ada = write(QStringLiteral("ada.csv"), sheet);
    offer({ada});
    QMimeData mime;
    mime.setUrls(
        {QUrl::fromLocalFile(ada), QUrl::fromLocalFile(write(QStringLiteral("again.csv"), sheet))});
    QSignalSpy reviewed(&dialog, &ReturnsDialog::reviewed);
    QDragEnterEvent enter(QPoint(5, 5), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&dialog, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(5, 5), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&dialog, &drop);
    ASSERT_TRUE(reviewed.wait(10'000));
    ASSERT_EQ(tree->topLevelItemCount(), 2);
    EXPECT_THAT(tree->accepted(), ElementsAre(0u));
    EXPECT_FALSE(hasBox(sheetAt(1))) << "the same content under another name";
}

TEST_F(ReturnsDialogTest, WhenTheRosterChangesMeanwhileTheSheetsAreJudgedAnew)
{
    offer({write(QStringLiteral("ada.csv"), sheet)});
    ASSERT_EQ(sheetAt(0)->checkState(0), Qt::Checked);
    core::Edit edit;
    edit.cards.before = {week.cards[0]};
    edit.cards.after = edit.cards.before;
    edit.cards.after[0].setLine = QStringLiteral("5x5 80kg");
    QSignalSpy reviewed(&dialog, &ReturnsDialog::reviewed);
    ASSERT_TRUE(session.perform(QStringLiteral("Change the plan"), edit));
    EXPECT_FALSE(acceptButton()->isEnabled()) << "by the reviews of before";
    ASSERT_TRUE(reviewed.wait(10'000));
    EXPECT_EQ(dialog.reviews()[0].standing, core::SheetStanding::byChoice);
    EXPECT_EQ(sheetAt(0)->checkState(0), Qt::Unchecked);
}

TEST_F(ReturnsDialogTest, AJudgementThatStaysKeepsTheCoachesTick)
{
    offer({write(QStringLiteral("ada.csv"), sheet)});
    sheetAt(0)->setCheckState(0, Qt::Unchecked);
    core::Lifter bo = week.lifter;
    bo.id = core::LifterId{8};
    bo.name = QStringLiteral("Bo Example");
    core::Edit edit;
    edit.lifters.after = {bo};
    QSignalSpy reviewed(&dialog, &ReturnsDialog::reviewed);
    ASSERT_TRUE(session.perform(QStringLiteral("Add"), edit));
    ASSERT_TRUE(reviewed.wait(10'000));
    EXPECT_EQ(sheetAt(0)->checkState(0), Qt::Unchecked);
    EXPECT_FALSE(acceptButton()->isEnabled());
}

TEST_F(ReturnsDialogTest, ClosedWhileItReadsItStopsAndLeavesNothing)
{
    QSignalSpy reviewed(&dialog, &ReturnsDialog::reviewed);
    dialog.open();
    dialog.offer({write(QStringLiteral("ada.csv"), sheet)});
    dialog.reject();
    QCoreApplication::processEvents();
    EXPECT_EQ(reviewed.count(), 0);
    EXPECT_TRUE(dialog.reviews().empty());
    EXPECT_TRUE(session.sessions().empty());
}

TEST(ReturnFiles, SheetsAreReadPainFirstThenUsableThenByName)
{
    std::vector<core::SheetReview> reviews(4);
    reviews[0].name = QStringLiteral("Bo");
    reviews[1].name = QStringLiteral("Ada");
    reviews[2].standing = core::SheetStanding::refused;
    reviews[3].name = QStringLiteral("Zoe");
    reviews[3].hasPain = true;
    EXPECT_THAT(ui::readingOrder(reviews), ElementsAre(3u, 1u, 0u, 2u));
}
