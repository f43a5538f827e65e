#include "tests/ui/board/shown_week_board.h"

TEST_F(WeekBoardPageTest, ACardIsAddedAndFilledByKeyboardAlone)
{
    press(Qt::Key_Right);
    press(Qt::Key_Right);
    add("off chest");
    ASSERT_TRUE(focusedCard()) << "the new card has the focus";
    EXPECT_THAT(cards(), ElementsAre("off_chest_pause 2:0 3x3 @8"));

    setSets("4x2 @8.5");
    EXPECT_THAT(cards(), ElementsAre("off_chest_pause 2:0 4x2 @8.5"));
    EXPECT_TRUE(focusedCard());
    EXPECT_THAT(focusedCard()->card().lines[0].load.toStdString(), HasSubstr(" kg"));
    EXPECT_THAT(focusedCard()->card().lines[0].effort.toStdString(), HasSubstr("RPE"));
}

TEST_F(WeekBoardPageTest, ThePaperHasTheLoadsThatTheBoardShows)
{
    add("competition bench");
    setSets("4x3 @8");
    ASSERT_TRUE(focusedCard());
    const core::WeekSheet sheet = core::weekSheet(*roster.session.lifter(roster.lifter),
        roster.monday, page.plan().resolved(), roster.session.variations(), {});
    ASSERT_EQ(sheet.days.size(), 1u);
    EXPECT_EQ(sheet.days[0].cards[0].sets[0].load + QStringLiteral(" kg"),
        focusedCard()->card().lines[0].load);
}

TEST_F(WeekBoardPageTest, TypingOnAnEmptySlotFindsAVariation)
{
    type("f");
    EXPECT_TRUE(qobject_cast<QLineEdit *>(QApplication::focusWidget()));
    type("eet up");
    press(Qt::Key_Return);
    EXPECT_THAT(cards(), ElementsAre(HasSubstr("feet_up 0:0")));
}

TEST_F(WeekBoardPageTest, EscapeInTheSearchGoesBackToThePlaceOnTheBoard)
{
    press(Qt::Key_Right);
    press(Qt::Key_Insert);
    type("tempo");
    press(Qt::Key_Escape);
    EXPECT_EQ(grid->choice().place(), (BoardPlace{1, 0}));
    EXPECT_TRUE(grid->isAncestorOf(QApplication::focusWidget()));
    EXPECT_THAT(cards(), IsEmpty());
}

TEST_F(WeekBoardPageTest, EveryStepIsUndoneAndRedone)
{
    add("close");
    setSets("3x5 75%");
    press(Qt::Key_D, Qt::ControlModifier);
    press(Qt::Key_Right, Qt::AltModifier);
    press(Qt::Key_Delete);
    const auto last = cards();
    EXPECT_THAT(last, ElementsAre("close_grip 0:0 3x5 75%"));

    const QUndoStack &steps = roster.session.steps();
    ASSERT_EQ(steps.count(), 5);
    EXPECT_THAT(steps.undoText().toStdString(), HasSubstr("Remove"));
    while (steps.canUndo())
        ASSERT_TRUE(roster.session.undo());
    EXPECT_THAT(cards(), IsEmpty());
    EXPECT_THAT(grid->findChildren<CardWidget *>().size(), testing::Ge(0));
    while (steps.canRedo())
        ASSERT_TRUE(roster.session.redo());
    EXPECT_EQ(cards(), last);
}

TEST_F(WeekBoardPageTest, ArrowsWalkAndAltArrowsMoveTheCard)
{
    add("close");
    setSets("1x1");
    press(Qt::Key_Down);
    add("feet up");
    setSets("2x2");
    EXPECT_THAT(cards(), ElementsAre("close_grip 0:0 1x1", "feet_up 0:1 2x2"));
    press(Qt::Key_Up, Qt::AltModifier);
    EXPECT_THAT(cards(), ElementsAre("feet_up 0:0 2x2", "close_grip 0:1 1x1"));
    press(Qt::Key_Right, Qt::AltModifier);
    press(Qt::Key_Right, Qt::AltModifier);
    EXPECT_THAT(cards(), ElementsAre("close_grip 0:0 1x1", "feet_up 2:0 2x2"));
    ASSERT_TRUE(focusedCard());
    EXPECT_EQ(grid->choice().place(), (BoardPlace{2, 0}));
}

TEST_F(WeekBoardPageTest, MovesOfACardByKeyThatFollowEachOtherAreOneStep)
{
    add("close");
    const int steps = roster.session.steps().count();
    const auto before = cards();
    for (int day = 0; day < 3; ++day)
        press(Qt::Key_Right, Qt::AltModifier);
    EXPECT_THAT(cards(), ElementsAre(HasSubstr("close_grip 3:0")));
    EXPECT_EQ(roster.session.steps().count(), steps + 1);
    ASSERT_TRUE(roster.session.undo());
    EXPECT_EQ(cards(), before);
}

TEST_F(WeekBoardPageTest, SetsHalfTypedAreTakenWhenTheLifterChangesAndUnsoundOnesHoldTheLifter)
{
    const core::LifterId bea = roster.addLifter(QStringLiteral("Bea"), core::TouchStyle::sinking);
    add("close");
    type("4x3 @8");
    ASSERT_TRUE(editor());
    roster.selection.setLifter(bea);
    EXPECT_THAT(cards(), ElementsAre("close_grip 0:0 4x3 @8"));

    roster.selection.setLifter(roster.lifter);
    card(0, 0);
    type("4x3 @");
    page.findChild<QTabWidget *>()->setFocus(); // as a click elsewhere does
    roster.selection.setWeekOf(roster.monday.addDays(7));
    roster.selection.setLifter(bea);
    EXPECT_EQ(roster.selection.monday(), roster.monday);
    EXPECT_EQ(roster.selection.lifter(), roster.lifter);
    ASSERT_TRUE(editor());
    EXPECT_EQ(editor()->toPlainText(), QStringLiteral("4x3 @"));
    EXPECT_TRUE(editor()->hasFocus());
    EXPECT_THAT(editor()->accessibleDescription().toStdString(), HasSubstr("Column"));
    EXPECT_THAT(cards(), ElementsAre("close_grip 0:0 4x3 @8"));

    type("9");
    roster.selection.setLifter(bea);
    EXPECT_EQ(roster.selection.lifter(), bea);
    EXPECT_THAT(cards(), ElementsAre("close_grip 0:0 4x3 @9"));
}

TEST_F(WeekBoardPageTest, AnUnsoundCardThatIsOnlyLookedAtHoldsNobody)
{
    const core::LifterId bea = roster.addLifter(QStringLiteral("Bea"), core::TouchStyle::sinking);
    core::Card old;
    old.id = roster.session.newId<core::Card>();
    old.lifter = roster.lifter;
    old.day = roster.monday;
    old.variation = roster.variation("comp");
    old.setLine = QStringLiteral("4y3");
    core::Edit edit;
    edit.cards.after = {old};
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Read"), edit));
    card(0, 0);
    press(Qt::Key_F2);
    ASSERT_TRUE(editor());
    roster.selection.setLifter(bea);
    EXPECT_EQ(roster.selection.lifter(), bea);
    EXPECT_THAT(cards(), ElementsAre("comp 0:0 4y3"));
}

TEST_F(WeekBoardPageTest, ATextThatIsRefusedStaysWithTheReasonBesideIt)
{
    add("close");
    type("4y3");
    press(Qt::Key_Return);
    ASSERT_TRUE(editor());
    EXPECT_EQ(editor()->textCursor().position(), 1) << "the cursor stands at the column";
    bool isSaid = false;
    for (const QLabel *label : page.findChildren<QLabel *>())
        isSaid =
            isSaid || (label->isVisible() && label->text().startsWith(QStringLiteral("Column 2")));
    EXPECT_TRUE(isSaid);
    EXPECT_THAT(cards(), ElementsAre("close_grip 0:0 3x5 @8"));

    press(Qt::Key_Escape);
    EXPECT_FALSE(editor());
    EXPECT_THAT(cards(), ElementsAre("close_grip 0:0 3x5 @8"));
    EXPECT_TRUE(focusedCard());
}

TEST_F(WeekBoardPageTest, LeavingTheFieldKeepsSoundText)
{
    add("close");
    type("6x2 @7");
    shelf->search({}, {});
    EXPECT_THAT(cards(), ElementsAre("close_grip 0:0 6x2 @7"));
    EXPECT_FALSE(grid->isAncestorOf(QApplication::focusWidget())) << "and the focus where it went";
}

TEST_F(WeekBoardPageTest, SeveralRowsAndANote)
{
    add("close");
    type("1x1 @8");
    press(Qt::Key_Return, Qt::ShiftModifier);
    type("3x3 @7");
    press(Qt::Key_Return);
    EXPECT_THAT(cards(), ElementsAre("close_grip 0:0 1x1 @8\n3x3 @7"));
    press(Qt::Key_F2, Qt::ShiftModifier);
    type("elbows in");
    press(Qt::Key_Return);
    EXPECT_EQ(focusedCard()->card().note, QStringLiteral("elbows in"));
}

TEST_F(WeekBoardPageTest, ANewCardBeginsWithWhatWasLastUsed)
{
    add("close");
    setSets("5x4 @7.5");
    roster.selection.setWeekOf(roster.monday.addDays(7));
    grid->focusPlace({2, 0});
    add("close");
    EXPECT_THAT(cards(), ElementsAre("close_grip 0:0 5x4 @7.5", "close_grip 9:0 5x4 @7.5"));
}

TEST_F(WeekBoardPageTest, FollowsTheSelectionAndSaysWhenNobodyIsChosen)
{
    add("close");
    const auto other = roster.addLifter(QStringLiteral("Bo"), core::TouchStyle::sinking);
    roster.selection.setLifter(other);
    EXPECT_EQ(grid->choice().place(), (BoardPlace{0, 0}));
    grid->focusPlace({0, 0});
    EXPECT_FALSE(focusedCard());

    roster.selection.setLifter({});
    bool isSaid = false;
    for (const QLabel *label : page.findChildren<QLabel *>())
        isSaid = isSaid
            || (label->isVisible() && label->text().contains(QStringLiteral("Choose a lifter")));
    EXPECT_TRUE(isSaid);
    roster.selection.setLifter(roster.lifter);
    EXPECT_TRUE(card(0, 0));
}

TEST_F(WeekBoardPageTest, SaysSoWhenTheEstimateIsTooThin)
{
    const auto other = roster.addLifter(QStringLiteral("Bo"), core::TouchStyle::sinking);
    roster.waitForEstimate(other);
    roster.selection.setLifter(other);
    grid->focusPlace({});
    add("comp");
    ASSERT_TRUE(focusedCard());
    EXPECT_TRUE(focusedCard()->card().lines[0].load.isEmpty());
    EXPECT_THAT(focusedCard()->card().caution.toStdString(), HasSubstr("no load"));
}

TEST_F(WeekBoardPageTest, WeeksAreTurnedByKey)
{
    press(Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_EQ(roster.selection.monday(), roster.monday.addDays(7));
    press(Qt::Key_PageUp, Qt::ControlModifier);
    EXPECT_EQ(roster.selection.monday(), roster.monday);
}

TEST_F(WeekBoardPageTest, EverythingWithFocusHasANameForAScreenReader)
{
    add("close");
    for (const QWidget *child : page.findChildren<QWidget *>())
        if (child->isVisible() && child->focusPolicy() & Qt::TabFocus) {
            EXPECT_FALSE(child->accessibleName().isEmpty())
                << child->metaObject()->className() << ' ' << child->objectName().toStdString();
        }
}

TEST_F(WeekBoardPageTest, TabLeavesTheBoard)
{
    add("close");
    press(Qt::Key_Tab);
    EXPECT_FALSE(grid->isAncestorOf(QApplication::focusWidget()));
}

TEST_F(WeekBoardPageTest, FitsThreeSizesWithNothingBeyondTheEdges)
{
    for (const QSize size : {QSize(1046, 560), QSize(1096, 640), QSize(1600, 920)}) {
        page.resize(size);
        QCoreApplication::processEvents();
        EXPECT_LE(page.minimumSizeHint().width(), size.width());
        EXPECT_GE(cardWidth(grid->width()), 100);
        EXPECT_LE(grid->width(), grid->parentWidget()->width());
    }
}

TEST_F(WeekBoardPageTest, SeveralCardsAreCopiedToAnotherDayAsText)
{
    add("competition bench");
    setSets("1x1 @8");
    add("feet up");
    setSets("3x8 @7");
    press(Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(grid->choice().forAction().size(), 2u);
    press(Qt::Key_C, Qt::ControlModifier);
    EXPECT_THAT(QApplication::clipboard()->text().toStdString(), HasSubstr(": 3x8 @7"));
    grid->focusPlace({3, 0});
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_THAT(cards(),
        ElementsAre(
            "comp 0:0 1x1 @8", "feet_up 0:1 3x8 @7", "comp 3:0 1x1 @8", "feet_up 3:1 3x8 @7"));
    EXPECT_EQ(grid->choice().forAction().size(), 2u) << "what was pasted is chosen";
    EXPECT_EQ(roster.session.steps().undoText(), QStringLiteral("Paste 2 cards"));
    press(Qt::Key_X, Qt::ControlModifier);
    EXPECT_THAT(cards(), ElementsAre("comp 0:0 1x1 @8", "feet_up 0:1 3x8 @7"));
    press(Qt::Key_A, Qt::ControlModifier);
    press(Qt::Key_Delete);
    EXPECT_THAT(cards(), IsEmpty());
    roster.session.undo();
    EXPECT_EQ(cards().size(), 2u);
}

TEST_F(WeekBoardPageTest, TextThatIsNoCardIsRefusedInWords)
{
    QString said;
    QObject::connect(&page, &WeekBoardPage::said, [&said](const QString &words) { said = words; });
    QApplication::clipboard()->setText(QStringLiteral("Monday\nmoon press: 3x3\n"));
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_THAT(said.toStdString(), HasSubstr("Line 2"));
    EXPECT_THAT(cards(), IsEmpty());
}

TEST_F(WeekBoardPageTest, TabCompletesASetLine)
{
    add("competition bench");
    type("3x3 tem");
    press(Qt::Key_Tab);
    ASSERT_TRUE(editor());
    EXPECT_THAT(editor()->toPlainText().toStdString(), HasSubstr("3x3 tempo"));
    press(Qt::Key_Escape);
}

TEST_F(WeekBoardPageTest, AFindingIsWavedThroughAndTakenUpAgain)
{
    auto *checks = page.findChild<ChecksPanel *>();
    add("off chest");
    setSets("3x8 60%"); // far more reps than it is done for
    ASSERT_GE(checks->openCount(), 1);
    const int open = checks->openCount();
    const core::Edit waived = core::waive(checks->findings().front(), QStringLiteral("technique"),
        {}, [this] { return roster.session.newId<core::Waiver>(); });
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Wave through"), waived));
    EXPECT_EQ(checks->openCount(), open - 1);
    auto *takeUp = checks->findChild<QPushButton *>(QStringLiteral("takeUp"));
    ASSERT_TRUE(takeUp);
    takeUp->click();
    EXPECT_EQ(checks->openCount(), open);
}

TEST_F(WeekBoardPageTest, AdviceIsPutOnTheBoard)
{
    auto *advice = page.findChild<AdvicePanel *>();
    page.findChild<QTabWidget *>()->setCurrentWidget(advice);
    auto *list = advice->findChild<QListWidget *>();
    ASSERT_GT(list->count(), 3);
    EXPECT_THAT(list->item(0)->text().toStdString(), HasSubstr("1. Off-chest pause bench"));
    list->setFocus();
    press(Qt::Key_Return);
    EXPECT_THAT(cards(), ElementsAre(HasSubstr("off_chest_pause 0:0 3x")));
}
