#include "tests/ui/board/shown_week_board.h"

using WeekBoardDragTest = WeekBoardPageTest;

TEST_F(WeekBoardDragTest, AVariationDroppedLandsInTheGapUnderThePointer)
{
    drop(grid, onDay(3, 200), mimeOf(roster.variation("comp")));
    drop(grid, onDay(3, 1), mimeOf(roster.variation("feet_up")));
    EXPECT_THAT(cards(), ElementsAre(HasSubstr("feet_up 3:0"), HasSubstr("comp 3:1")));
    EXPECT_TRUE(focusedCard());
}

TEST_F(WeekBoardDragTest, CardsAreDraggedBetweenDaysWithinADayAndCopied)
{
    drop(grid, onDay(0, 0), mimeOf(roster.variation("comp")));
    drop(grid, onDay(0, 500), mimeOf(roster.variation("feet_up")));
    drop(grid, onDay(0, 500), mimeOf(card(0, 0)->card().id));
    EXPECT_THAT(cards(), ElementsAre(HasSubstr("feet_up 0:0"), HasSubstr("comp 0:1")));
    drop(grid, onDay(5, 10), mimeOf(card(0, 0)->card().id));
    EXPECT_THAT(cards(), ElementsAre(HasSubstr("comp 0:0"), HasSubstr("feet_up 5:0")));
    drop(grid, onDay(6, 10), mimeOf(card(5, 0)->card().id), Qt::ControlModifier);
    EXPECT_THAT(cards(),
        ElementsAre(HasSubstr("comp 0:0"), HasSubstr("feet_up 5:0"), HasSubstr("feet_up 6:0")));
}

TEST_F(WeekBoardDragTest, DroppingACardWhereItIsChangesNothing)
{
    drop(grid, onDay(0, 0), mimeOf(roster.variation("comp")));
    const int steps = roster.session.steps().count();
    drop(grid, onDay(0, 500), mimeOf(card(0, 0)->card().id));
    EXPECT_EQ(roster.session.steps().count(), steps);
}

TEST_F(WeekBoardDragTest, ACardDroppedOnTheShelfComesOffTheWeek)
{
    drop(grid, onDay(1, 0), mimeOf(roster.variation("comp")));
    drop(shelf, {20, 200}, mimeOf(card(1, 0)->card().id));
    EXPECT_THAT(cards(), IsEmpty());
    EXPECT_EQ(roster.session.steps().undoText().left(6), QStringLiteral("Remove"));
}

TEST_F(WeekBoardDragTest, ForeignDragsAreRefused)
{
    QMimeData text;
    text.setText(QStringLiteral("4x3 @8"));
    QDragEnterEvent enter({10, 10}, Qt::CopyAction, &text, Qt::LeftButton, Qt::NoModifier);
    enter.ignore();
    QApplication::sendEvent(grid, &enter);
    EXPECT_FALSE(enter.isAccepted());
    EXPECT_EQ(draggedIn(&text).index(), 0u);
}

TEST_F(WeekBoardDragTest, ADragSaysWhatItWillWeigh)
{
    const auto mime = mimeOf(roster.variation("feet_up"));
    const QPoint at = onDay(2, 80);
    QDragEnterEvent enter(at, Qt::CopyAction, mime.get(), Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(grid, &enter);
    QDragMoveEvent move(at, Qt::CopyAction, mime.get(), Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(grid, &move);
    const QLabel *note = nullptr;
    for (const QLabel *label : grid->findChildren<QLabel *>())
        if (label->isVisible())
            note = label;
    ASSERT_TRUE(note);
    EXPECT_THAT(note->text().toStdString(), HasSubstr(" kg"));
    QDragLeaveEvent leave;
    QApplication::sendEvent(grid, &leave);
    EXPECT_FALSE(note->isVisible());
}
