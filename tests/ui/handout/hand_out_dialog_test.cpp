#include "ui/handout/hand_out_dialog.h"

#include "tests/core/exchange/hand_out_rows.h"
#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "ui/checks/accept_dialog.h"
#include "ui/roster/insights.h"
#include "ui/roster/selection.h"

#include <QApplication>
#include <QCheckBox>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>
#include <gmock/gmock.h>

using testing::ElementsAre;
using tests::PlannedWeek;
using ui::HandOutDialog;

namespace {

class HandOutDialogTest : public testing::Test
{
protected:
    HandOutDialogTest()
    {
        core::Edit edit;
        core::Lifter bo = week.lifter;
        bo.id = core::LifterId{8};
        bo.name = QStringLiteral("Bo Example");
        edit.lifters.after = {week.lifter, bo};
        edit.cards.after = week.cards;
        EXPECT_TRUE(session.perform(QStringLiteral("Set up"), edit));
        selection.setLifter(week.lifter.id);
        selection.setWeekOf(tests::kMonday);
    }

    QStringList files() const { return QDir(out).entryList(QDir::Files | QDir::Hidden); }

    static QPushButton *button(const HandOutDialog &dialog, const char *text)
    {
        for (QPushButton *one : dialog.findChildren<QPushButton *>())
            if (one->text().remove(u'&').startsWith(QLatin1String(text)))
                return one;
        return nullptr;
    }

    PrivateFolder folder;
    QString out = folder.path(QStringLiteral("out"));
    PlannedWeek week;
    QString rosterFile = folder.path(QStringLiteral("club.benchwright"));
    SetClock clock;
    ui::OpenRoster session{
        std::make_unique<core::RosterFile>(core::RosterFile::create(rosterFile)), clock.today};
    ui::Estimates estimates{session};
    ui::Insights insights{session, estimates};
    ui::Selection selection{session};
};

} // namespace

TEST_F(HandOutDialogTest, WritesTheWeekThatIsShownAndTellsWhoHasNothingPlanned)
{
    HandOutDialog dialog(session, estimates, insights, selection);
    ASSERT_NE(button(dialog, "Write"), nullptr);
    EXPECT_FALSE(button(dialog, "Write")->isEnabled()) << "without a folder";
    dialog.chooseFolder(out);
    for (QCheckBox *box : dialog.findChildren<QCheckBox *>())
        box->setChecked(true);
    QSignalSpy written(&dialog, &HandOutDialog::written);
    button(dialog, "Write")->click();
    ASSERT_TRUE(written.wait(20'000));
    EXPECT_EQ(files().size(), 3);
    const QString summary = dialog.findChild<QLabel *>(QStringLiteral("summary"))->text();
    EXPECT_TRUE(summary.contains(QStringLiteral("3 files were written")));
    EXPECT_TRUE(summary.contains(QStringLiteral("Bo Example")));
}

TEST_F(HandOutDialogTest, AFileInPlaceOfTheFolderAndNoKindAreSaidAtOnce)
{
    HandOutDialog dialog(session, estimates, insights, selection);
    dialog.chooseFolder(rosterFile);
    EXPECT_FALSE(button(dialog, "Write")->isEnabled());
    dialog.chooseFolder(out);
    EXPECT_TRUE(button(dialog, "Write")->isEnabled());
    for (QCheckBox *box : dialog.findChildren<QCheckBox *>())
        box->setChecked(false);
    EXPECT_FALSE(button(dialog, "Write")->isEnabled());
}

TEST_F(HandOutDialogTest, ABatchThatIsStoppedLeavesWholeFilesOnly)
{
    ui::HandOutBatch batch;
    for (int i = 1; i <= 5; ++i) {
        core::Lifter lifter = week.lifter;
        lifter.id = core::LifterId{i};
        batch.lifters.push_back(lifter); // all of one name
        for (core::Card card : week.cards) {
            card.lifter = lifter.id;
            batch.cards.push_back(card);
        }
    }
    batch.variations = week.catalogue;
    batch.monday = tests::kMonday;
    batch.folder = out;
    std::stop_source stop;
    const ui::HandOutSummary summary =
        ui::writeHandOuts(batch, {stop.get_token(), [&](double share) {
                                      if (share >= 2.0 / 5.0)
                                          stop.request_stop();
                                  }});
    EXPECT_TRUE(summary.cancelled);
    EXPECT_EQ(summary.files.size(), 2);
    ASSERT_EQ(files().size(), 2) << "two lifters of one name have a file each";
    for (const QString &name : files()) {
        QFile file(QDir(out).filePath(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_TRUE(file.readAll().trimmed().endsWith("</html>"));
    }
}

TEST_F(HandOutDialogTest, AFolderThatCannotBeMadeIsToldAndTheRestOfTheSummaryStands)
{
    ui::HandOutBatch batch;
    batch.lifters = {week.lifter};
    batch.cards = week.cards;
    batch.variations = week.catalogue;
    batch.monday = tests::kMonday;
    batch.folder = rosterFile + QStringLiteral("/below a file");
    const ui::HandOutSummary summary = ui::writeHandOuts(batch);
    EXPECT_FALSE(summary.failure.isEmpty());
    EXPECT_TRUE(summary.files.isEmpty());
    EXPECT_TRUE(ui::summaryLines(summary).front().contains(summary.failure));
}

TEST(HandOutWho, AllGroupsAndTheOneSelectedWithoutThoseWhoTrainNoMore)
{
    core::Lifter ada, bo, cleo;
    ada.id = {1};
    ada.name = QStringLiteral("Ada");
    ada.groups = {QStringLiteral("juniors")};
    bo.id = {2};
    bo.groups = {QStringLiteral("juniors"), QStringLiteral("meet")};
    cleo.id = {3};
    cleo.archived = true;
    const auto who = ui::whoGetsOne({ada, bo, cleo}, ada.id);
    ASSERT_EQ(who.size(), 4u);
    EXPECT_THAT(who[0].lifters, ElementsAre(ada.id, bo.id));
    EXPECT_EQ(who[1].words, QStringLiteral("Group juniors (2)"));
    EXPECT_THAT(who[2].lifters, ElementsAre(bo.id));
    EXPECT_EQ(who[3].words, QStringLiteral("Only Ada"));
    EXPECT_TRUE(ui::whoGetsOne({cleo}, cleo.id).empty());
}

namespace {

/// The lifter's shoulders hurt, and the week benches.
class StoppedHandOutTest : public HandOutDialogTest
{
protected:
    StoppedHandOutTest()
    {
        core::CheckIn said;
        said.id = session.newId<core::CheckIn>();
        said.lifter = week.lifter.id;
        said.day = tests::kMonday.addDays(-1);
        said.pain = core::PainFlag{core::BodyArea::shoulders, {}};
        core::Edit edit;
        edit.checkIns.after = {said};
        EXPECT_TRUE(session.perform(QStringLiteral("Say"), edit));
        dialog.chooseFolder(out);
        dialog.show();
    }
    /// Presses "Write", and acts in the dialog that asks.
    void write(const std::function<void(ui::AcceptDialog &)> &act)
    {
        button(dialog, "Write")->click();
        QTimer timer;
        bool isAsked = false;
        QObject::connect(&timer, &QTimer::timeout, &timer, [&] {
            if (auto *asking = qobject_cast<ui::AcceptDialog *>(QApplication::activeModalWidget());
                asking && !std::exchange(isAsked, true))
                act(*asking);
        });
        timer.start(10);
        EXPECT_TRUE(QTest::qWaitFor([&] { return isAsked && !dialog.isBusy(); }, 20'000));
        QCoreApplication::processEvents();
    }

    /// The other lifter has the same week, and the same pain.
    core::LifterId hurtBo()
    {
        const core::LifterId bo{8};
        core::Edit edit;
        for (core::Card card : week.cards) {
            card.id = {card.id.value + 100}; // those of the week are given by hand
            card.lifter = bo;
            edit.cards.after.push_back(card);
        }
        core::CheckIn said = session.checkIns(week.lifter.id).front();
        said.id = session.newId<core::CheckIn>();
        said.lifter = bo;
        edit.checkIns.after = {said};
        EXPECT_TRUE(session.perform(QStringLiteral("Say"), edit));
        return bo;
    }

    HandOutDialog dialog{session, estimates, insights, selection};
};

} // namespace

TEST_F(StoppedHandOutTest, GoingBackWritesNothing)
{
    QString asked;
    write([&asked](ui::AcceptDialog &asking) {
        asked = asking.findChild<QLabel *>(QStringLiteral("findings"))->text();
        asking.reject();
    });
    EXPECT_TRUE(asked.contains(week.lifter.name)) << asked.toStdString();
    EXPECT_TRUE(asked.contains(QStringLiteral("Monday 6 May")));
    EXPECT_TRUE(asked.contains(QStringLiteral("shoulders")));
    EXPECT_TRUE(files().isEmpty());
    EXPECT_TRUE(session.waivers(week.lifter.id).empty());
    EXPECT_TRUE(session.given(week.lifter.id).empty());
    EXPECT_EQ(dialog.findChild<QLabel *>(QStringLiteral("summary"))->text(),
        QStringLiteral("Nothing was written."));
}

TEST_F(StoppedHandOutTest, ANoteAcceptsAllOfThemAsOneStepAndThenTheFilesAreWritten)
{
    const int steps = session.steps().index();
    QSignalSpy written(&dialog, &HandOutDialog::written);
    write([](ui::AcceptDialog &asking) {
        asking.findChild<QLineEdit *>(QStringLiteral("note"))->setText(QStringLiteral("cleared"));
        asking.accept();
    });
    ASSERT_TRUE(!written.isEmpty() || written.wait(20'000));
    EXPECT_EQ(files().size(), 1);
    EXPECT_EQ(session.steps().index(), steps + 1);
    EXPECT_EQ(session.waivers(week.lifter.id).size(), 3u) << "one a card";
    session.undo();
    EXPECT_TRUE(session.waivers(week.lifter.id).empty());
}

TEST_F(StoppedHandOutTest, EachLifterHasANoteOfTheirOwnAndWhoHasNoneGetsNothing)
{
    const core::LifterId bo = hurtBo();
    QSignalSpy written(&dialog, &HandOutDialog::written);
    write([](ui::AcceptDialog &asking) {
        auto *accept = asking.findChild<QPushButton *>(QStringLiteral("accept"));
        const auto findings = asking.findChildren<QLabel *>(QStringLiteral("findings"));
        const auto notes = asking.findChildren<QLineEdit *>(QStringLiteral("note"));
        ASSERT_EQ(findings.size(), 2);
        ASSERT_EQ(notes.size(), 2);
        EXPECT_FALSE(accept->isEnabled());
        const int boes = findings[0]->text().startsWith(QStringLiteral("Bo Example")) ? 0 : 1;
        EXPECT_EQ(findings[boes]->text().count(QStringLiteral("Bo Example, ")), 3);
        EXPECT_FALSE(findings[1 - boes]->text().contains(QStringLiteral("Bo Example")));
        notes[boes]->setText(QStringLiteral("cleared for Bo"));
        EXPECT_TRUE(accept->isEnabled());
        accept->click();
    });
    ASSERT_TRUE(!written.isEmpty() || written.wait(20'000));
    EXPECT_TRUE(session.waivers(week.lifter.id).empty());
    ASSERT_EQ(session.waivers(bo).size(), 3u);
    EXPECT_EQ(session.waivers(bo).front().note, QStringLiteral("cleared for Bo"));
    ASSERT_EQ(files().size(), 1);
    EXPECT_TRUE(files().front().contains(QStringLiteral("Bo Example")));
    EXPECT_TRUE(session.given(week.lifter.id).empty());
    EXPECT_TRUE(
        dialog.findChild<QLabel *>(QStringLiteral("summary"))
            ->text()
            .contains(
                QStringLiteral("Still stopped by the plan checks: %1.").arg(week.lifter.name)));
}

TEST_F(StoppedHandOutTest, TheSameNoteIsForAllWhereTheCoachSaysSo)
{
    const core::LifterId bo = hurtBo();
    QSignalSpy written(&dialog, &HandOutDialog::written);
    const int steps = session.steps().index();
    write([](ui::AcceptDialog &asking) {
        asking.findChild<QCheckBox *>(QStringLiteral("sameForAll"))->click();
        const auto notes = asking.findChildren<QLineEdit *>(QStringLiteral("note"));
        EXPECT_FALSE(notes[1]->isEnabled());
        notes[0]->setText(QStringLiteral("cleared"));
        asking.accept();
    });
    ASSERT_TRUE(!written.isEmpty() || written.wait(20'000));
    EXPECT_EQ(session.waivers(week.lifter.id).size(), 3u);
    EXPECT_EQ(session.waivers(bo).size(), 3u);
    EXPECT_EQ(files().size(), 2);
    EXPECT_EQ(session.steps().index(), steps + 1) << "one step";
}

TEST_F(StoppedHandOutTest, ADraftHasThemPrintedOnThePage)
{
    ui::HandOutBatch batch;
    batch.monday = tests::kMonday;
    batch.folder = out;
    batch.takeFrom(*session.readers()(), std::vector{week.lifter.id});
    const ui::HandOutSummary summary = ui::writeHandOuts(batch);
    EXPECT_EQ(summary.stops.size(), 3u);
    ASSERT_EQ(files().size(), 1);
    QFile file(QDir(out).filePath(files().front()));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().contains("\"stops\":[\"Stop: Pain was flagged"));
}
