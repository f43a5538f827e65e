#include "tests/ui/board/shown_week_board.h"
#include "ui/checks/accept_dialog.h"
#include "ui/look/keep_question.h"

#include <QTimer>

// What stands between the coach and a plan that may do harm.

namespace {

class WeekBoardGatesTest : public WeekBoardPageTest
{
protected:
    KeepQuestion &question(const QWidget &in) const
    {
        for (KeepQuestion *one : in.findChildren<KeepQuestion *>())
            if (one->isVisible())
                return *one;
        return *page.findChild<KeepQuestion *>();
    }
    bool isAsked() const { return question(page).isVisible(); }
    void answer(const char *button)
    {
        question(page).findChild<QPushButton *>(QString::fromLatin1(button))->click();
    }
    void hurts(core::BodyArea area)
    {
        core::Edit edit;
        core::CheckIn said;
        said.id = roster.session.newId<core::CheckIn>();
        said.lifter = roster.lifter;
        said.day = roster.monday;
        said.pain = core::PainFlag{area, {}};
        edit.checkIns.after = {said};
        ASSERT_TRUE(roster.session.perform(QStringLiteral("Say"), edit));
    }
    /// The next dialog of the kind, once it is open.
    static void inDialog(const std::function<void(AcceptDialog &)> &act)
    {
        QTimer::singleShot(0, [act] {
            auto *dialog = qobject_cast<AcceptDialog *>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            act(*dialog);
        });
    }
    QPushButton *waveThrough() const
    {
        for (auto *button : page.findChildren<QPushButton *>(QStringLiteral("waveThrough")))
            if (!button->parentWidget()->isHidden()) // else its row is on its way out
                return button;
        return nullptr;
    }
};

} // namespace

TEST_F(WeekBoardGatesTest, ALoadFarAboveTheMaxIsAskedAboutInPlaceAndKeptByEnter)
{
    add("competition bench");
    const auto before = cards();
    type("1x3 225kg");
    press(Qt::Key_Return);
    ASSERT_TRUE(editor()) << "nothing typed is lost";
    EXPECT_EQ(editor()->toPlainText(), QStringLiteral("1x3 225kg"));
    EXPECT_TRUE(isAsked());
    EXPECT_EQ(cards(), before);
    press(Qt::Key_Return);
    EXPECT_FALSE(editor());
    EXPECT_THAT(cards(), ElementsAre("comp 0:0 1x3 225kg"));

    press(Qt::Key_F2);
    ASSERT_TRUE(editor());
    press(Qt::Key_Return);
    EXPECT_FALSE(isAsked()) << "asked once";
}

TEST_F(WeekBoardGatesTest, TypingOnChangesWhatWasAskedAbout)
{
    add("competition bench");
    type("3x3 150%");
    press(Qt::Key_Return);
    ASSERT_TRUE(isAsked());
    answer("change");
    EXPECT_FALSE(isAsked());
    EXPECT_TRUE(editor()->hasFocus());
    press(Qt::Key_Backspace);
    press(Qt::Key_Backspace);
    press(Qt::Key_Backspace);
    press(Qt::Key_Backspace);
    type("75%");
    press(Qt::Key_Return);
    EXPECT_THAT(cards(), ElementsAre("comp 0:0 3x3 75%"));
}

TEST_F(WeekBoardGatesTest, LeavingTheFieldIsNoAnswer)
{
    add("competition bench");
    type("1x1 225kg");
    shelf->setFocus();
    EXPECT_TRUE(isAsked());
    page.findChild<QTabWidget *>()->setFocus();
    EXPECT_TRUE(editor());
    EXPECT_THAT(cards(), testing::Not(ElementsAre("comp 0:0 1x1 225kg")));
    answer("keep");
    EXPECT_THAT(cards(), ElementsAre("comp 0:0 1x1 225kg"));
}

TEST_F(WeekBoardGatesTest, AnotherLifterIsNoAnswerEither)
{
    const core::LifterId bea = roster.addLifter(QStringLiteral("Bea"), core::TouchStyle::sinking);
    add("competition bench");
    const auto before = cards();
    type("1x3 225kg");
    roster.selection.setLifter(bea);
    EXPECT_EQ(roster.selection.lifter(), roster.lifter);
    EXPECT_TRUE(isAsked());
    ASSERT_TRUE(editor());
    EXPECT_EQ(editor()->toPlainText(), QStringLiteral("1x3 225kg"));
    EXPECT_EQ(cards(), before);
    EXPECT_THAT(roster.session.halfTyped(), testing::SizeIs(1)) << "asked about before it closes";
    EXPECT_EQ(cards(), before);

    answer("keep");
    EXPECT_THAT(cards(), ElementsAre("comp 0:0 1x3 225kg"));
    roster.selection.setLifter(bea);
    EXPECT_EQ(roster.selection.lifter(), bea);
}

TEST_F(WeekBoardGatesTest, APasteWithAFarLoadIsAskedAboutBeforeAnythingIsPasted)
{
    QApplication::clipboard()->setText(QStringLiteral("comp: 1x3 225kg"));
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_THAT(cards(), IsEmpty());
    ASSERT_TRUE(isAsked());
    answer("change");
    EXPECT_THAT(cards(), IsEmpty());
    grid->focusPlace({});
    press(Qt::Key_V, Qt::ControlModifier);
    ASSERT_TRUE(isAsked());
    answer("keep");
    EXPECT_THAT(cards(), ElementsAre("comp 0:0 1x3 225kg"));
}

TEST_F(WeekBoardGatesTest, AStopIsLetStandWithWordsOnly)
{
    hurts(core::BodyArea::shoulders);
    add("competition bench");
    ASSERT_EQ(page.openStops().size(), 1u);
    inDialog([](AcceptDialog &dialog) {
        auto *accept = dialog.findChild<QPushButton *>(QStringLiteral("accept"));
        auto *note = dialog.findChild<QLineEdit *>(QStringLiteral("note"));
        EXPECT_FALSE(accept->isEnabled());
        for (const QString &blank : {QStringLiteral("   "), QStringLiteral("\u200B")}) {
            note->setText(blank);
            EXPECT_FALSE(accept->isEnabled());
        }
        QTest::keyClick(note, Qt::Key_Return);
        EXPECT_TRUE(dialog.isVisible()) << "Enter accepts nothing without words";
        note->setText(QStringLiteral("cleared by the physio"));
        accept->click();
    });
    const int steps = roster.session.steps().index();
    ASSERT_TRUE(waveThrough());
    waveThrough()->click();
    EXPECT_THAT(page.openStops(), IsEmpty());
    EXPECT_EQ(roster.session.steps().index(), steps + 1);
    ASSERT_EQ(roster.session.waivers(roster.lifter).size(), 1u);
    EXPECT_EQ(
        roster.session.waivers(roster.lifter)[0].note, QStringLiteral("cleared by the physio"));
    roster.session.undo();
    EXPECT_EQ(page.openStops().size(), 1u);
}

TEST_F(WeekBoardGatesTest, AMissOfTodayStandsBesideTheLoadsThatAreLeft)
{
    grid->focusPlace({2, 0}); // today
    add("competition bench");
    page.plan().setSetLine(
        page.plan().view().days[2].cards[0].id, QStringLiteral("1x1 110kg\n3x3 100kg"));
    const QString card = QStringLiteral("after the miss");
    EXPECT_FALSE(page.plan().view().days[2].cards[0].caution.contains(card));
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
    edit.sessions.after = {session};
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Log"), edit));
    roster.waitForEstimate(roster.lifter);
    const CardView view = page.plan().view().days[2].cards[0];
    EXPECT_TRUE(view.caution.contains(card)) << view.caution.toStdString();
    EXPECT_EQ(view.lines[1].load, QStringLiteral("100 kg")) << "what is planned stays";
    EXPECT_TRUE(view.spoken.contains(card));
    const core::WeekSheet sheet = core::weekSheet(*roster.session.lifter(roster.lifter),
        roster.monday, page.plan().resolved(), roster.session.variations(), {});
    ASSERT_EQ(sheet.days[0].cards[0].lighter.size(), 1);
    EXPECT_TRUE(view.caution.contains(sheet.days[0].cards[0].lighter[0])) << "the same words";
}
