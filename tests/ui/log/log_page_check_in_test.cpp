#include "tests/ui/log/log_page_desk.h"

using namespace core;
using namespace ui;
using testing::Optional;
using testing::SizeIs;
using namespace tests;

// What is said and asked on the page: the check-in, pain, a load far above the max.

TEST_F(LogPageTest, TheCheckInIsAnsweredWithDigitsAndSavedAsItIsSaid)
{
    auto *sleep = window.findChild<QWidget *>(QStringLiteral("sleep"));
    sleep->setFocus();
    press(Qt::Key_2);
    press(Qt::Key_Tab);
    press(Qt::Key_3);
    ASSERT_THAT(roster.session.checkIns(roster.lifter), SizeIs(1));
    const CheckIn said = roster.session.checkIns(roster.lifter)[0];
    EXPECT_THAT(said.sleep, Optional(2));
    EXPECT_THAT(said.stress, Optional(3));
    EXPECT_EQ(said.day, today);
    press(Qt::Key_Backspace);
    sleep->setFocus();
    press(Qt::Key_Delete);
    EXPECT_THAT(roster.session.checkIns(roster.lifter), SizeIs(0)) << "no answer is left";
}

TEST_F(LogPageTest, PainSuggestsNothingForWhatHurtsAndIsNeverPassedOver)
{
    plan("comp", QStringLiteral("2x5 90kg"));
    auto *pain = window.findChild<QComboBox *>(QStringLiteral("pain"));
    pain->setFocus();
    press(Qt::Key_Y);
    ASSERT_THAT(roster.session.checkIns(roster.lifter), SizeIs(1)) << "before it is told where";
    EXPECT_TRUE(roster.session.checkIns(roster.lifter)[0].pain);
    EXPECT_TRUE(cell(0, 4).contains(QStringLiteral("held back")));
    press(Qt::Key_S); // shoulders
    ASSERT_THAT(roster.session.checkIns(roster.lifter), SizeIs(1));
    EXPECT_EQ(roster.session.checkIns(roster.lifter)[0].pain->words, QString());
    EXPECT_THAT(
        roster.session.checkIns(roster.lifter)[0].pain->area, Optional(BodyArea::shoulders));
    EXPECT_TRUE(said("stop").contains(QStringLiteral("refer")));
    EXPECT_TRUE(cell(0, 4).contains(QStringLiteral("held back")));

    window.setFocus();
    enter("");
    EXPECT_THAT(logged(), SizeIs(0)) << "Enter takes nothing that is held back";
    EXPECT_NE(said("refusal"), QString());
    enter("60x5"); // what was done all the same can be told
    EXPECT_THAT(logged(), SizeIs(1));
}

TEST_F(LogPageTest, APainThatNobodyPlacedIsKeptWhenTheLifterChangesAndHoldsAllBack)
{
    plan("comp", QStringLiteral("2x5 90kg"));
    auto *pain = window.findChild<QComboBox *>(QStringLiteral("pain"));
    pain->setFocus();
    press(Qt::Key_Y);
    roster.selection.setLifter(roster.addLifter(QStringLiteral("Bo"), TouchStyle::soft));
    ASSERT_THAT(roster.session.checkIns(roster.lifter), SizeIs(1));
    EXPECT_TRUE(roster.session.checkIns(roster.lifter)[0].pain.has_value());
    EXPECT_EQ(pain->currentText(), QStringLiteral("not asked")) << "of the other lifter";
    roster.selection.setLifter(roster.lifter);
    EXPECT_TRUE(cell(0, 4).contains(QStringLiteral("held back")));
    EXPECT_TRUE(said("preview").contains(QStringLiteral("Ask where it hurts")));
    window.setFocus();
    enter("");
    EXPECT_THAT(logged(), SizeIs(0));
}

TEST_F(LogPageTest, PainIsAnsweredWithYesWithNoOrNotAtAll)
{
    CheckIn hurt;
    hurt.pain = PainFlag{BodyArea::shoulders, {}};
    say(hurt);
    auto *pain = window.findChild<QComboBox *>(QStringLiteral("pain"));
    EXPECT_EQ(pain->currentText(), QStringLiteral("yes"));
    pain->setFocus();
    press(Qt::Key_Up);
    const auto stored = [this] { return roster.session.checkIns(roster.lifter); };
    ASSERT_EQ(pain->currentText(), QStringLiteral("no"));
    ASSERT_THAT(stored(), SizeIs(1));
    EXPECT_TRUE(stored()[0].isPainFree);
    EXPECT_FALSE(stored()[0].pain);
    roster.session.undo();
    EXPECT_NE(pain->currentText(), QStringLiteral("no")) << "the form follows";
}

TEST_F(LogPageTest, ASoreBackIsOfferedTheSwapThatSparesIt)
{
    plan("comp", QStringLiteral("2x5 90kg"));
    CheckIn sore;
    sore.soreness[BodyArea::back] = 1;
    say(sore);
    QPushButton *swap = nullptr;
    for (QPushButton *button : window.findChildren<QPushButton *>())
        if (button->text().contains(QStringLiteral("instead")))
            swap = button;
    ASSERT_TRUE(swap);
    swap->click();
    const Card card = roster.session.cards(roster.lifter, today, today)[0];
    EXPECT_NE(card.variation, roster.variation("comp"));
    EXPECT_EQ(card.setLine, QStringLiteral("2x5 90kg"));
}

TEST_F(LogPageTest, ALoadFarAboveTheMaxIsAskedAboutBeforeItIsSaved)
{
    plan("comp", QStringLiteral("2x3 100kg"));
    enter("225x3");
    EXPECT_THAT(logged(), SizeIs(0));
    EXPECT_EQ(field().text(), QStringLiteral("225x3")) << "nothing typed is lost";
    const auto *question = window.findChild<KeepQuestion *>();
    ASSERT_TRUE(question->isVisible());
    press(Qt::Key_Down);
    EXPECT_THAT(logged(), SizeIs(0)) << "going on is no answer";
    EXPECT_EQ(field().text(), QStringLiteral("225x3"));
    press(Qt::Key_Backspace);
    EXPECT_FALSE(question->isVisible()) << "typing changes it";
    type("3");
    press(Qt::Key_Return);
    ASSERT_TRUE(question->isVisible());
    press(Qt::Key_Return);
    ASSERT_THAT(logged(), SizeIs(1));
    EXPECT_EQ(logged()[0].loadKg, 225.0);
    EXPECT_FALSE(question->isVisible());
    enter("102.5");
    EXPECT_THAT(logged(), SizeIs(2)) << "an ordinary load is not asked about";
}
