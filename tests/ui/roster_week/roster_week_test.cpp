#include "tests/ui/board/board_roster.h"
#include "ui/look/keep_question.h"
#include "ui/planning/copied_day.h"
#include "ui/roster_week/roster_week_model.h"
#include "ui/roster_week/roster_week_page.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <gmock/gmock.h>

using namespace ui;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

class RosterWeekTest : public testing::Test
{
protected:
    RosterWeekTest()
    {
        bea = roster.addLifter(QStringLiteral("Bea"), core::TouchStyle::sinking);
        page.resize(1000, 500);
        page.show();
        QApplication::setActiveWindow(&page);
        QObject::connect(
            &page, &RosterWeekPage::said, [this](const QString &words) { said = words; });
    }
    QModelIndex cell(int row, int day) { return page.model().index(row, day); }
    std::string shown(int row, int day) { return cell(row, day).data().toString().toStdString(); }
    /// Types the text into the current cell, Shift+Enter between its rows.
    void typeInto(const QModelIndex &at, const QStringList &rows)
    {
        page.table().setCurrentIndex(at);
        page.table().setFocus();
        QTest::keyClick(&page.table(), Qt::Key_Return);
        auto *editor = page.table().findChild<QPlainTextEdit *>();
        ASSERT_TRUE(editor);
        editor->selectAll();
        for (qsizetype i = 0; i < rows.size(); ++i) {
            if (i > 0)
                QTest::keyClick(editor, Qt::Key_Return, Qt::ShiftModifier);
            QTest::keyClicks(editor, rows[i]);
        }
        QTest::keyClick(editor, Qt::Key_Return);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }

    BoardRoster roster;
    core::LifterId bea;
    RosterWeekPage page{roster.session, roster.estimates, roster.insights, roster.selection};
    QString said;
    QAbstractItemModelTester tester{
        &page.model(), QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_F(RosterWeekTest, ADayIsTypedAndResolvedByEachLiftersOwnEstimate)
{
    typeInto(cell(0, 2), {QStringLiteral("comp: 4x3 @8"), QStringLiteral("feet_up: 3x8 @7")});
    EXPECT_THAT(roster.cards(), ElementsAre("comp 2:0 4x3 @8", "feet_up 2:1 3x8 @7"));
    EXPECT_THAT(shown(0, 2), HasSubstr("4x3 @8: "));
    EXPECT_THAT(shown(0, 2), HasSubstr(" kg"));
    EXPECT_EQ(roster.session.steps().count(), 2) << "the lifter, and the day";
    roster.session.undo();
    EXPECT_EQ(shown(0, 2), "");
}

TEST_F(RosterWeekTest, TextThatCannotBeReadStaysInTheField)
{
    typeInto(cell(0, 0), {QStringLiteral("comp: 4x @8")});
    EXPECT_TRUE(roster.cards().isEmpty());
    auto *editor = page.table().findChild<QPlainTextEdit *>();
    ASSERT_TRUE(editor);
    EXPECT_EQ(editor->toPlainText(), QStringLiteral("comp: 4x @8"));
    EXPECT_FALSE(page.model().whyNot(editor->toPlainText()).isEmpty());
}

TEST_F(RosterWeekTest, ADayIsCopiedToAnotherLifterAndCut)
{
    typeInto(cell(0, 0), {QStringLiteral("comp: 1x1 100kg")});
    page.table().setCurrentIndex(cell(0, 0));
    QTest::keyClick(&page.table(), Qt::Key_C, Qt::ControlModifier);
    EXPECT_THAT(QApplication::clipboard()->text().toStdString(), HasSubstr("1x1 100kg"));
    page.table().setCurrentIndex(cell(1, 4));
    QTest::keyClick(&page.table(), Qt::Key_V, Qt::ControlModifier);
    QTest::keyClick(&page.table(), Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(roster.session.cards(bea, roster.monday, roster.monday.addDays(6)).size(), 2u);
    page.table().setCurrentIndex(cell(0, 0));
    QTest::keyClick(&page.table(), Qt::Key_X, Qt::ControlModifier);
    EXPECT_TRUE(roster.cards().isEmpty());
    QApplication::clipboard()->setText(QStringLiteral("see you on Friday"));
    QTest::keyClick(&page.table(), Qt::Key_V, Qt::ControlModifier);
    EXPECT_THAT(said.toStdString(), HasSubstr("no variation"));
    EXPECT_TRUE(roster.cards().isEmpty());
}

TEST_F(RosterWeekTest, WhatIsPastedIsEasedForTheLifterAndSaidAsOnTheBoard)
{
    core::CheckIn hurts;
    hurts.id = roster.session.newId<core::CheckIn>();
    hurts.lifter = bea;
    hurts.day = roster.monday;
    hurts.pain = core::PainFlag{core::BodyArea::chest, {}};
    core::Edit edit;
    edit.checkIns.after = {hurts};
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Say"), edit));
    const auto cardsOfBea = [this] {
        return roster.session.cards(bea, roster.monday, roster.monday.addDays(6));
    };
    typeInto(cell(0, 0),
        {QStringLiteral("comp: 1x1 100kg"), QStringLiteral("squat: 1x1 @9.5"),
            QStringLiteral("squat: 3x5 140kg")});
    page.table().setCurrentIndex(cell(0, 0));
    QTest::keyClick(&page.table(), Qt::Key_C, Qt::ControlModifier);
    page.table().setCurrentIndex(cell(1, 2));
    QTest::keyClick(&page.table(), Qt::Key_V, Qt::ControlModifier);
    ASSERT_EQ(cardsOfBea().size(), 2u) << "the bench is left out";
    EXPECT_EQ(cardsOfBea()[0].setLine, QStringLiteral("1x1 @8"));
    EXPECT_EQ(cardsOfBea()[1].setLine, QStringLiteral("3x5"));
    EXPECT_THAT(said.toStdString(), HasSubstr("Bea: Competition bench 1x1 is left out."));
    EXPECT_THAT(said.toStdString(), HasSubstr("1x1 @8 in place of 1x1 @9.5"));
    EXPECT_THAT(said.toStdString(), HasSubstr("comes without a load"));
    const int steps = roster.session.steps().index();
    ASSERT_TRUE(roster.session.undo()) << "one step";
    EXPECT_EQ(roster.session.steps().index(), steps - 1);
    EXPECT_TRUE(cardsOfBea().empty());

    page.table().setCurrentIndex(cell(0, 3));
    QTest::keyClick(&page.table(), Qt::Key_V, Qt::ControlModifier);
    EXPECT_THAT(shown(0, 3), HasSubstr("140 kg")) << "the lifter's own loads stay";
}

TEST_F(RosterWeekTest, LiftersComeAndGoInTheirOrder)
{
    ASSERT_EQ(page.model().rowCount(), 2);
    const core::LifterId abe = roster.addLifter(QStringLiteral("Abe"), core::TouchStyle::soft);
    ASSERT_EQ(page.model().rowCount(), 3);
    EXPECT_EQ(page.model().lifterAt(0), abe);
    core::Edit archived;
    archived.lifters.before = {*roster.session.lifter(bea)};
    archived.lifters.after = archived.lifters.before;
    archived.lifters.after[0].archived = true;
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Archive"), archived));
    ASSERT_EQ(page.model().rowCount(), 2);
    EXPECT_EQ(page.model().lifterAt(1), roster.lifter);
    roster.selection.setWeekOf(roster.monday.addDays(7));
    EXPECT_EQ(page.model().dayAt(0), roster.monday.addDays(7));
}

TEST_F(RosterWeekTest, CardsThatStayKeepTheirIds)
{
    typeInto(cell(0, 0), {QStringLiteral("comp: 1x1 @8"), QStringLiteral("feet_up: 3x8 @7")});
    const auto before = roster.session.cards(roster.lifter, roster.monday, roster.monday);
    typeInto(cell(0, 0), {QStringLiteral("comp: 1x1 @8.5"), QStringLiteral("feet_up: 3x8 @7")});
    const auto after = roster.session.cards(roster.lifter, roster.monday, roster.monday);
    ASSERT_EQ(after.size(), 2u);
    EXPECT_EQ(after[0].id, before[0].id);
    EXPECT_EQ(after[1], before[1]);
}

TEST_F(RosterWeekTest, ALoadFarAboveTheMaxIsAskedAboutInTheCellAndKeptByEnter)
{
    typeInto(cell(0, 0), {QStringLiteral("comp: 1x3 225kg")});
    auto *editor = page.table().findChild<QPlainTextEdit *>();
    ASSERT_TRUE(editor);
    EXPECT_EQ(editor->toPlainText(), QStringLiteral("comp: 1x3 225kg"));
    EXPECT_TRUE(page.table().findChild<KeepQuestion *>()->isVisible());
    EXPECT_TRUE(roster.cards().isEmpty());
    QTest::keyClick(editor, Qt::Key_Tab);
    EXPECT_TRUE(roster.cards().isEmpty()) << "no answer";
    QTest::keyClick(editor, Qt::Key_Return);
    EXPECT_THAT(roster.cards(), ElementsAre("comp 0:0 1x3 225kg"));
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);

    typeInto(cell(0, 0), {QStringLiteral("comp: 1x3 225kg"), QStringLiteral("feet_up: 3x8 @7")});
    EXPECT_EQ(roster.cards().size(), 2) << "the first was asked about already";
}

TEST_F(RosterWeekTest, AClickOnAnotherCellNeitherDropsNorKeepsWhatIsAskedAbout)
{
    for (const char *text : {"comp: 3x3 zzz", "comp: 1x3 225kg"}) {
        typeInto(cell(0, 0), {QString::fromLatin1(text)});
        const QPoint other = page.table().visualRect(cell(1, 5)).center();
        QTest::mouseClick(page.table().viewport(), Qt::LeftButton, {}, other);
        QTest::mouseDClick(page.table().viewport(), Qt::LeftButton, {}, other);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        EXPECT_TRUE(roster.cards().isEmpty()) << text;
        auto *editor = page.table().findChild<QPlainTextEdit *>();
        ASSERT_TRUE(editor) << text;
        EXPECT_EQ(editor->toPlainText(), QLatin1String(text));
        EXPECT_EQ(page.table().currentIndex(), cell(0, 0));
        editor->setPlainText(QStringLiteral("comp: 3x3 @8"));
        QTest::mouseClick(page.table().viewport(), Qt::LeftButton, {}, other);
        EXPECT_THAT(roster.cards(), ElementsAre("comp 0:0 3x3 @8")) << "what is sound is taken";
        EXPECT_EQ(page.table().currentIndex().column(), 5);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        roster.session.undo();
    }
}

TEST_F(RosterWeekTest, APastedFarLoadIsAskedAboutAsIfItWereTyped)
{
    copyDay(QStringLiteral("comp: 1x3 225kg"), *roster.session.lifter(roster.lifter));
    page.table().setCurrentIndex(cell(0, 1));
    page.table().setFocus();
    QTest::keyClick(&page.table(), Qt::Key_V, Qt::ControlModifier);
    EXPECT_TRUE(roster.cards().isEmpty());
    auto *question = page.table().findChild<KeepQuestion *>();
    ASSERT_TRUE(question && question->isVisible());
    question->findChild<QPushButton *>(QStringLiteral("keep"))->click();
    EXPECT_THAT(roster.cards(), ElementsAre("comp 1:0 1x3 225kg"));
}

TEST_F(RosterWeekTest, AMissOfTodayStandsBesideTheLoadsThatAreLeft)
{
    core::Card card;
    card.id = roster.session.newId<core::Card>();
    card.lifter = roster.lifter;
    card.day = roster.monday.addDays(2);
    card.variation = roster.variation("comp");
    card.setLine = QStringLiteral("1x1 110kg\n3x3 100kg");
    core::LoggedSession session;
    session.id = roster.session.newId<core::LoggedSession>();
    session.lifter = roster.lifter;
    session.day = roster.monday.addDays(2);
    core::SetEntry missed;
    missed.variation = roster.variation("comp");
    missed.loadKg = 110.0;
    missed.repsPlanned = 1;
    missed.failed = true;
    session.sets = {missed};
    core::Edit edit;
    edit.cards.after = {card};
    edit.sessions.after = {session};
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Log"), edit));
    roster.waitForEstimate(roster.lifter);
    EXPECT_THAT(shown(0, 2), HasSubstr("3x3 100kg: 100 kg"));
    EXPECT_THAT(shown(0, 2), HasSubstr("after the miss"));
}
