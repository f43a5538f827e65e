#include "ui/importing/import_dialog.h"

#include "core/storage/roster_file.h"
#include "tests/support/set_clock.h"
#include "ui/importing/file_field.h"
#include "ui/importing/problem_model.h"
#include "ui/look/field_note.h"
#include "ui/roster/open_roster.h"

#include <QAbstractItemModelTester>
#include <QDropEvent>
#include <QLabel>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QUndoStack>
#include <gmock/gmock.h>

using ui::ImportDialog;

namespace {

const QByteArray kHeader = "lifter,date,variation,load_kg,reps_planned,reps_done,rpe,failed\n";
const QByteArray kRow = "Ada,2026-03-30,comp,100,5,5,8,0\n";

class ImportDialogTest : public testing::Test
{
protected:
    QString write(const QString &name, const QByteArray &contents)
    {
        QFile file(m_folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(contents);
        return file.fileName();
    }

    void offer(const QStringList &paths)
    {
        QSignalSpy planned(&dialog, &ImportDialog::planned);
        dialog.offer(paths);
        EXPECT_TRUE(planned.wait(10'000));
    }

    QPushButton *importButton()
    {
        for (QPushButton *button : dialog.findChildren<QPushButton *>())
            if (button->isDefault())
                return button;
        return nullptr;
    }

    QAbstractItemModel *problems() { return dialog.findChild<QTableView *>()->model(); }

    QString cell(int row, int column) { return problems()->index(row, column).data().toString(); }

private:
    QTemporaryDir m_folder;

protected:
    QString rosterFile = m_folder.filePath(QStringLiteral("club.benchwright"));
    SetClock clock;
    ui::OpenRoster session{
        std::make_unique<core::RosterFile>(core::RosterFile::create(rosterFile)), clock.today};
    ImportDialog dialog{session};
};

} // namespace

TEST_F(ImportDialogTest, NothingCanBeImportedBeforeAFileIsThere)
{
    ASSERT_NE(importButton(), nullptr);
    EXPECT_FALSE(importButton()->isEnabled());
}

TEST_F(ImportDialogTest, ASoundLogIsOneUndoStep)
{
    offer({write("log.csv", kHeader + kRow),
        write("who.csv", "lifter,sex,bodyweight_kg\nAda,f,62\n")});
    ASSERT_TRUE(importButton()->isEnabled());
    EXPECT_TRUE(session.lifters().empty()) << "a dry run changes nothing";

    dialog.show();
    QTest::keyClick(&dialog, Qt::Key_Return);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    ASSERT_EQ(session.lifters().size(), 1u);
    EXPECT_EQ(session.lifters()[0].bodyweightKg, 62.0);
    EXPECT_EQ(session.sessions().size(), 1u);
    EXPECT_EQ(session.steps().count(), 1);

    session.undo();
    EXPECT_TRUE(session.lifters().empty());
    EXPECT_TRUE(session.sessions().empty());
    session.redo();
    EXPECT_EQ(session.sessions().size(), 1u);
}

TEST_F(ImportDialogTest, ProblemsAreListedByLineFieldAndRemedyAndBlockTheImport)
{
    offer({write("log.csv",
        kHeader + kRow
            + "Ada,2026-03-30,comp,100,5,5,11,0\n"
              "Ada,2026-03-30,feetup,100,5,5,8,0\n")});
    EXPECT_FALSE(importButton()->isEnabled());
    ASSERT_EQ(problems()->rowCount(), 2);
    using M = ui::ProblemModel;
    EXPECT_EQ(cell(0, M::fileColumn), QStringLiteral("log.csv"));
    EXPECT_EQ(cell(0, M::lineColumn), QStringLiteral("3"));
    EXPECT_EQ(cell(0, M::fieldColumn), QStringLiteral("rpe"));
    EXPECT_TRUE(cell(0, M::wordsColumn).contains(QStringLiteral("halves")));
    EXPECT_TRUE(cell(1, M::remedyColumn).contains(QStringLiteral("feet_up")));
    QTest::keyClick(&dialog, Qt::Key_Return);
    EXPECT_TRUE(session.lifters().empty());
}

TEST_F(ImportDialogTest, AMendedFileClearsTheProblems)
{
    const QString bad = write("log.csv", kHeader + "Ada\n");
    offer({bad});
    EXPECT_FALSE(importButton()->isEnabled());
    write("log.csv", kHeader + kRow);
    offer({bad});
    EXPECT_TRUE(importButton()->isEnabled());
}

TEST_F(ImportDialogTest, AMendedFileThatIsChosenOnceMoreIsReadAgain)
{
    const QString log = write("log.csv", kHeader + "Ada\n");
    offer({log});
    ASSERT_FALSE(importButton()->isEnabled());
    write("log.csv", kHeader + kRow);
    QSignalSpy planned(&dialog, &ImportDialog::planned);
    ui::FileField *field = dialog.findChildren<ui::FileField *>().front();
    ASSERT_EQ(field->path(), log);
    field->setPath(log);
    ASSERT_TRUE(planned.wait(10'000));
    EXPECT_TRUE(importButton()->isEnabled());
    planned.clear();
    field->setPath({});
    field->setPath({});
    EXPECT_FALSE(importButton()->isEnabled());
}

TEST_F(ImportDialogTest, AFileThatIsInTheRosterAlreadyLeavesNothingToDo)
{
    const QString log = write("log.csv", kHeader + kRow);
    offer({log});
    ASSERT_TRUE(session.perform(QStringLiteral("Import"), dialog.plan().edit));
    offer({log});
    EXPECT_TRUE(dialog.plan().isClean());
    EXPECT_FALSE(importButton()->isEnabled());
}

TEST_F(ImportDialogTest, DroppedFilesGoWhereTheirHeaderAsks)
{
    QMimeData mime;
    mime.setUrls({QUrl::fromLocalFile(write("a.csv", "lifter,sex,bodyweight_kg\nBo,m,90\n")),
        QUrl::fromLocalFile(write("b.csv", kHeader + kRow))});
    QSignalSpy planned(&dialog, &ImportDialog::planned);
    QDragEnterEvent enter(QPoint(5, 5), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&dialog, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(5, 5), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&dialog, &drop);
    ASSERT_TRUE(planned.wait(10'000));
    EXPECT_TRUE(dialog.files().people.endsWith(QStringLiteral("a.csv")));
    EXPECT_TRUE(dialog.files().log.endsWith(QStringLiteral("b.csv")));
    EXPECT_EQ(dialog.plan().counts.newLifters, 2);
}

TEST_F(ImportDialogTest, AFileOfAnotherKindIsNamedAndTheRestIsKept)
{
    offer({write("log.csv", kHeader + kRow), write("letter.csv", "Dear coach,\n")});
    EXPECT_TRUE(importButton()->isEnabled());
    const auto notes = dialog.findChildren<ui::FieldNote *>();
    ASSERT_EQ(notes.size(), 1);
    EXPECT_TRUE(notes[0]->text().contains(QStringLiteral("letter.csv is neither")));
}

TEST_F(ImportDialogTest, TheKeyboardReachesEverything)
{
    offer({write("log.csv", kHeader + "Ada\n")});
    dialog.show();
    QSet<QString> reached;
    for (int tabs = 0; tabs < 20; ++tabs) {
        QTest::keyClick(dialog.focusWidget() ? dialog.focusWidget() : &dialog, Qt::Key_Tab);
        if (const auto *button = qobject_cast<QPushButton *>(dialog.focusWidget()))
            reached << button->text();
        else if (qobject_cast<QTableView *>(dialog.focusWidget()))
            reached << QStringLiteral("table");
    }
    for (const char *name : {"Choose…", "Clear", "table", "&Copy all problems"})
        EXPECT_TRUE(reached.contains(QString::fromUtf8(name))) << name;
}

TEST_F(ImportDialogTest, AFileThatHasGoneIsToldNotThrown)
{
    const QString log = write("log.csv", kHeader + kRow);
    offer({log});
    QFile::remove(log);
    QSignalSpy planned(&dialog, &ImportDialog::planned);
    dialog.offer({write("who.csv", "lifter,sex,bodyweight_kg\nAda,f,62\n")});
    ASSERT_TRUE(planned.wait(10'000));
    EXPECT_FALSE(importButton()->isEnabled());
    EXPECT_TRUE(cell(0, ui::ProblemModel::wordsColumn).contains(QStringLiteral("cannot be read")));
}

TEST_F(ImportDialogTest, ClosedWhileALargeFileIsReadItStopsAndLeavesNothing)
{
    const QString log = write("log.csv", kHeader + kRow.repeated(500'000));
    QSignalSpy planned(&dialog, &ImportDialog::planned);
    QSignalSpy finished(&dialog, &QDialog::finished);
    QObject::connect(dialog.findChild<QProgressBar *>(), &QProgressBar::valueChanged, &dialog,
        &QDialog::reject); // as soon as it is under way
    dialog.open();
    dialog.offer({log});
    ASSERT_TRUE(finished.wait(10'000));
    EXPECT_FALSE(dialog.isBusy());
    QCoreApplication::processEvents();
    EXPECT_EQ(planned.count(), 0);
    EXPECT_TRUE(dialog.plan().edit.isEmpty());
    EXPECT_TRUE(session.lifters().empty());
    EXPECT_EQ(session.steps().count(), 0);
}

TEST_F(ImportDialogTest, WhenTheRosterChangesMeanwhileTheFilesAreJudgedAnew)
{
    offer({write("log.csv", kHeader + kRow)});
    EXPECT_EQ(dialog.plan().counts.newLifters, 1);
    core::Lifter ada;
    ada.id = session.newId<core::Lifter>();
    ada.name = QStringLiteral("Ada");
    ada.gear = core::usualGear(ada.unit);
    core::Edit edit;
    edit.lifters.after = {ada};
    QSignalSpy planned(&dialog, &ImportDialog::planned);
    ASSERT_TRUE(session.perform(QStringLiteral("Add"), edit));
    EXPECT_FALSE(importButton()->isEnabled()) << "by the plan of before";
    ASSERT_TRUE(planned.wait(10'000));
    EXPECT_EQ(dialog.plan().counts.newLifters, 0);
    importButton()->click();
    EXPECT_EQ(session.sessions(ada.id).size(), 1u);
}

TEST_F(ImportDialogTest, ARosterThatCannotBeReadIsSaidAndNothingIsImported)
{
    const QString log = write("log.csv", kHeader + kRow);
    QSignalSpy failed(&session, &ui::OpenRoster::failed);
    ASSERT_TRUE(QFile::remove(rosterFile)); // the worker cannot open it
    dialog.offer({log});
    ASSERT_TRUE(failed.wait(10'000));
    EXPECT_FALSE(importButton()->isEnabled());
    EXPECT_FALSE(dialog.findChildren<ui::FieldNote *>()[0]->text().isEmpty());
}

TEST(ProblemModel, KeepsTheRulesOfModels)
{
    ui::ProblemModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    core::ProblemList list;
    for (int line = 1; line <= 2000; ++line)
        list.add({QStringLiteral("log.csv"), line, {}, QStringLiteral("wrong"), {}});
    model.setProblems(list);
    EXPECT_EQ(model.rowCount(), int(ui::ProblemModel::kShown));
    model.setProblems({});
    EXPECT_EQ(model.rowCount(), 0);
}
