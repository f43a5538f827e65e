#include "tests/ui/log/log_page_desk.h"

using namespace core;
using namespace ui;
using testing::Optional;
using testing::SizeIs;
using namespace tests;

TEST_F(LogPageTest, ASetThatIsLoggedOnAnotherPageIsNotTheOneAtHand)
{
    plan("comp", QStringLiteral("3x5 90kg"));
    LogPage other{roster.session, roster.estimates, insights, roster.history, roster.selection};
    other.show();
    auto &elsewhere = *other.findChild<QLineEdit *>(QStringLiteral("entry"));
    QTest::keyClick(&elsewhere, Qt::Key_Return);
    ASSERT_THAT(logged(), SizeIs(1));
    EXPECT_TRUE(said("setAtHand").startsWith(QStringLiteral("Set 2 of 3"))) << "not the logged one";
    QTest::keyClick(&field(), Qt::Key_4);
    QTest::keyClick(&elsewhere, Qt::Key_Return);
    EXPECT_EQ(field().text(), QStringLiteral("4")) << "half typed, it stays";
    EXPECT_THAT(logged(), SizeIs(2));
}

TEST_F(LogPageTest, TwelveSetsAreLoggedByKeyboardAlone)
{
    plan("comp", QStringLiteral("1x1 105kg\n4x5 90kg"));
    plan("off_chest_pause", QStringLiteral("3x3 85kg"));
    plan("close_grip", QStringLiteral("4x8 70kg"));

    enter("8 t2");        // 1: as planned, rated, with its touch
    enter("");            // 2: as planned
    enter("8");           // 3
    enter("8.5");         // 4
    enter("x4 miss");     // 5: the fifth rep was missed
    enter("-5");          // 6: lighter
    enter("");            // 7
    enter("9 t3");        // 8
    enter("72.5x8");      // 9
    enter("");            // 10
    enter("");            // 11
    enter("x7 10; grip"); // 12
    RecordProperty("key_presses", keys);

    const std::vector<SetEntry> sets = logged();
    ASSERT_THAT(sets, SizeIs(12));
    EXPECT_EQ(sets[0].loadKg, 105.0);
    EXPECT_THAT(sets[0].rpe, Optional(8.0));
    EXPECT_THAT(sets[0].touch, Optional(2));
    EXPECT_EQ(sets[1].repsDone, 5);
    EXPECT_EQ(sets[1].rpe, std::nullopt) << "a rating that nobody gave is no evidence";
    EXPECT_THAT(sets[3].rpe, Optional(8.5));
    EXPECT_TRUE(sets[4].failed);
    EXPECT_EQ(sets[4].repsDone, 4);
    EXPECT_EQ(sets[5].loadKg, 75.0)
        << "85 has come down to 80 after the miss, and 5 less was typed";
    EXPECT_EQ(sets[5].variation, roster.variation("off_chest_pause"));
    EXPECT_EQ(sets[8].loadKg, 72.5);
    EXPECT_EQ(sets[11].note, QStringLiteral("grip"));
    EXPECT_THAT(sets[11].repsPlanned, Optional(8));
    EXPECT_EQ(said("progress"), QStringLiteral("All 12 planned sets logged"));
    // A practised typist makes 4 to 6 key presses a second (40 to 70 words a minute); at one a
    // second, slower than any, it is still under a minute.
    EXPECT_LT(keys, 60);
}

TEST_F(LogPageTest, EachSetIsInTheFileAtOnceAndOneUndoStep)
{
    plan("comp", QStringLiteral("2x5 90kg"));
    enter("");
    EXPECT_THAT(logged(), SizeIs(1));
    enter("");
    EXPECT_THAT(logged(), SizeIs(2));
    roster.session.undo();
    EXPECT_THAT(logged(), SizeIs(1));
    roster.session.undo();
    EXPECT_THAT(logged(), SizeIs(0));
    EXPECT_THAT(roster.session.sessions(roster.lifter), SizeIs(24)) << "the session goes too";
}

TEST_F(LogPageTest, EnterOnceTooOftenLogsNothing)
{
    plan("comp", QStringLiteral("1x1 105kg\n1x5 90kg"));
    press(Qt::Key_Down); // the first is left out
    enter("");
    enter("");
    enter("");
    EXPECT_THAT(logged(), SizeIs(1));
}

TEST_F(LogPageTest, WhereNothingIsLeftToDoWhatIsTypedAddsASet)
{
    plan("comp", QStringLiteral("1x5 90kg"));
    enter("x3 miss 10 t4; low");
    enter("80x4");
    ASSERT_THAT(logged(), SizeIs(2)) << "the last set is not written over";
    EXPECT_EQ(logged()[0].loadKg, 90.0);
    EXPECT_EQ(logged()[1].loadKg, 80.0);
    EXPECT_EQ(logged()[1].repsPlanned, std::nullopt);
    press(Qt::Key_Up);
    enter("9");
    EXPECT_THAT(logged()[1].rpe, Optional(9.0)) << "but a set gone back to is";
    press(Qt::Key_Up);
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    enter("70x6");
    EXPECT_THAT(logged(), SizeIs(3)) << "below the last one is room again";
    roster.session.undo();
    EXPECT_THAT(logged(), SizeIs(2));
}

TEST_F(LogPageTest, ASetAfterAMissIsNoMiss)
{
    plan("comp", QStringLiteral("1x5 90kg"));
    enter("x3 miss 10 t4; low");
    press(Qt::Key_Insert);
    enter("");
    ASSERT_THAT(logged(), SizeIs(2));
    EXPECT_FALSE(logged()[1].failed);
    EXPECT_EQ(logged()[1].repsDone, 5);
    EXPECT_EQ(logged()[1].touch, std::nullopt);
}

TEST_F(LogPageTest, AVariationThatWasOnlyLookedAtIsNotLogged)
{
    plan("comp", QStringLiteral("2x5 90kg"));
    const auto look = [this](const char *name) {
        press(Qt::Key_N, Qt::AltModifier);
        type(name);
        press(Qt::Key_Return);
    };
    look("feet");
    press(Qt::Key_Down);
    EXPECT_THAT(logged(), SizeIs(0));
    press(Qt::Key_Up);
    look("feet");
    press(Qt::Key_Escape);
    enter("");
    ASSERT_THAT(logged(), SizeIs(1));
    EXPECT_EQ(logged()[0].variation, roster.variation("comp"));
}

TEST_F(LogPageTest, WhatIsHalfTypedFollowsItsSetWhenTheLogMoves)
{
    plan("comp", QStringLiteral("3x5 90kg"));
    enter("7");
    type("x4 9"); // of the second set
    roster.session.undo();
    EXPECT_TRUE(said("setAtHand").startsWith(QStringLiteral("Set 2 of 3")));
    press(Qt::Key_Return);
    ASSERT_THAT(logged(), SizeIs(1));
    EXPECT_EQ(logged()[0].repsDone, 4);
}

TEST_F(LogPageTest, AHalfTypedSetThatCameFromElsewhereMeanwhileIsNotWrittenOver)
{
    plan("comp", QStringLiteral("1x5 90kg"));
    type("x4 9");
    SetEntry set;
    set.variation = roster.variation("comp");
    set.loadKg = 90.0;
    set.repsPlanned = 5;
    set.repsDone = 5;
    LoggedSession session;
    session.id = roster.session.newId<LoggedSession>();
    session.lifter = roster.lifter;
    session.day = today;
    session.sets = {set};
    Edit edit;
    edit.sessions.after = {session};
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Accept a sheet"), edit));
    EXPECT_EQ(field().text(), QStringLiteral("x4 9"));
    press(Qt::Key_Return);
    ASSERT_THAT(logged(), SizeIs(2));
    EXPECT_EQ(logged()[0], set);
    EXPECT_EQ(logged()[1].repsDone, 4);
}

TEST_F(LogPageTest, AnExtraSetOfWhatHurtsIsHeldBackToo)
{
    plan("comp", QStringLiteral("1x5 90kg"));
    enter("7");
    CheckIn hurt;
    hurt.pain = PainFlag{BodyArea::shoulders, {}};
    say(hurt);
    press(Qt::Key_Insert);
    enter("");
    EXPECT_THAT(logged(), SizeIs(1));
    enter("40x5");
    EXPECT_THAT(logged(), SizeIs(2));
}

TEST_F(LogPageTest, AMistakeIsRefusedAtTheFieldAndStaysToBeMended)
{
    plan("comp", QStringLiteral("1x5 90kg"));
    enter("x3 mss");
    EXPECT_TRUE(said("refusal").contains(QStringLiteral("\"mss\" says nothing here")));
    EXPECT_EQ(field().text(), QStringLiteral("x3 mss"));
    EXPECT_EQ(field().cursorPosition(), 3);
    EXPECT_THAT(logged(), SizeIs(0));
    press(Qt::Key_Escape);
    enter("miss");
    EXPECT_TRUE(said("refusal").contains(QStringLiteral("How many reps went up")));
    press(Qt::Key_Escape);
    enter("x0 miss");
    EXPECT_EQ(said("refusal"), QString());
    EXPECT_THAT(logged(), SizeIs(1));
}

TEST_F(LogPageTest, ExtraSetsSwapsChangesAndDeletions)
{
    plan("comp", QStringLiteral("2x5 90kg"));
    enter("8");
    press(Qt::Key_Up);
    press(Qt::Key_Insert);
    enter("92.5x3");
    ASSERT_THAT(logged(), SizeIs(2));
    EXPECT_EQ(logged()[1].repsPlanned, std::nullopt);
    EXPECT_TRUE(cell(1, 4).contains(QStringLiteral("extra set")));
    EXPECT_EQ(cell(2, 3), QString()) << "the second planned set is still to do";

    press(Qt::Key_N, Qt::AltModifier);
    type("feet");
    press(Qt::Key_Return);
    EXPECT_TRUE(field().hasFocus());
    enter("");
    ASSERT_THAT(logged(), SizeIs(3));
    EXPECT_EQ(logged()[2].variation, roster.variation("feet_up"));
    EXPECT_TRUE(cell(2, 4).contains(QStringLiteral("in place of")));

    press(Qt::Key_Up);
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    enter("x4"); // of the first set
    EXPECT_EQ(logged()[0].repsDone, 4);
    EXPECT_THAT(logged()[0].rpe, Optional(8.0)) << "what was not written stays";
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    press(Qt::Key_Delete);
    EXPECT_THAT(logged(), SizeIs(2));
}

TEST_F(LogPageTest, WhatIsHalfTypedStaysWithItsLifter)
{
    plan("comp", QStringLiteral("3x5 90kg"));
    const LifterId other = roster.addLifter(QStringLiteral("Bo"), TouchStyle::sinking);
    enter("");
    type("x4 9");
    roster.selection.setLifter(other);
    EXPECT_EQ(field().text(), QString());
    roster.selection.setLifter(roster.lifter);
    EXPECT_EQ(field().text(), QStringLiteral("x4 9"));
    EXPECT_TRUE(said("setAtHand").startsWith(QStringLiteral("Set 2 of 3")));
    EXPECT_THAT(logged(), SizeIs(1));
}

TEST_F(LogPageTest, AnotherLifterOpensOnTodayAndADayThatIsNotIsSaid)
{
    const LifterId other = roster.addLifter(QStringLiteral("Bo"), TouchStyle::sinking);
    EXPECT_EQ(said("notToday"), QString());
    press(Qt::Key_PageUp, Qt::ControlModifier);
    EXPECT_EQ(said("notToday"), QStringLiteral("Not today: yesterday"));
    window.showDay(today.addDays(-7));
    EXPECT_EQ(said("notToday"), QStringLiteral("Not today: 7 days ago"));
    roster.selection.setLifter(other);
    EXPECT_EQ(said("notToday"), QString());
    enter("100x5");
    const std::vector<LoggedSession> sessions = roster.session.sessions(other);
    ASSERT_THAT(sessions, SizeIs(1));
    EXPECT_EQ(sessions[0].day, today);
    roster.selection.setLifter(roster.lifter);
    EXPECT_EQ(said("notToday"), QString()) << "that day was looked up and left";
}

TEST_F(LogPageTest, ALifterOfWhomSomethingIsHalfTypedOpensOnItsDay)
{
    const LifterId other = roster.addLifter(QStringLiteral("Bo"), TouchStyle::sinking);
    window.showDay(today.addDays(-3));
    type("100x");
    roster.selection.setLifter(other);
    EXPECT_EQ(said("notToday"), QString());
    roster.selection.setLifter(roster.lifter);
    EXPECT_EQ(field().text(), QStringLiteral("100x"));
    EXPECT_EQ(said("notToday"), QStringLiteral("Not today: 3 days ago"));
}

TEST_F(LogPageTest, ADayWithoutAPlanTakesSetsToo)
{
    enter("100x5 8");
    ASSERT_THAT(logged(), SizeIs(1));
    EXPECT_EQ(logged()[0].variation, roster.variation("comp"));
    press(Qt::Key_Insert);
    press(Qt::Key_Return); // once more
    ASSERT_THAT(logged(), SizeIs(2));
    EXPECT_EQ(logged()[1].loadKg, 100.0);
    EXPECT_EQ(logged()[1].rpe, std::nullopt);
}

TEST_F(LogPageTest, NothingIsLoggedOnADayToCome)
{
    press(Qt::Key_PageDown, Qt::ControlModifier);
    enter("100x5");
    EXPECT_TRUE(said("refusal").contains(QStringLiteral("not come yet")));
    press(Qt::Key_Escape);
    press(Qt::Key_Home, Qt::ControlModifier);
    enter("100x5");
    EXPECT_THAT(logged(), SizeIs(1));
}

TEST_F(LogPageTest, LoadsOfTheDayStayWhileItsSetsMoveTheEstimate)
{
    plan("comp", QStringLiteral("4x5 @8"));
    const QString asked = cell(3, 2);
    ASSERT_TRUE(asked.contains(QStringLiteral("kg")));
    enter("10");
    enter("9.5");
    roster.waitForEstimate(roster.lifter);
    enter("10");
    EXPECT_EQ(cell(3, 2), asked);
    roster.selection.setLifter(roster.addLifter(QStringLiteral("Bo"), TouchStyle::soft));
    roster.selection.setLifter(roster.lifter);
    EXPECT_EQ(cell(3, 2), asked) << "after a look at another lifter too";
}

TEST_F(LogPageTest, ThePoundIsTheUnitOfALifterWhoCountsInIt)
{
    const Lifter before = *roster.session.lifter(roster.lifter);
    Edit edit;
    edit.lifters = {{before}, {before}};
    edit.lifters.after[0].unit = Unit::pound;
    edit.lifters.after[0].gear = usualGear(Unit::pound);
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Pounds"), edit));
    enter("225x5");
    ASSERT_THAT(logged(), SizeIs(1));
    EXPECT_NEAR(logged()[0].loadKg, 225 * kKgPerPound, 1e-9);
    EXPECT_EQ(cell(0, 3), QStringLiteral("5 x 225 lb"));
}

TEST_F(LogPageTest, ALeadRepSetKeepsItsParts)
{
    plan("off_chest_pause", QStringLiteral("2x1+2 80kg"));
    enter("");
    enter("x1+1 9");
    ASSERT_THAT(logged(), SizeIs(2));
    EXPECT_EQ(logged()[0].variation, roster.variation("comp"));
    EXPECT_THAT(logged()[0].lead, Optional(LeadReps{roster.variation("off_chest_pause"), 1}));
    EXPECT_EQ(logged()[0].repsDone, 3);
    EXPECT_EQ(logged()[1].repsDone, 2);
}
