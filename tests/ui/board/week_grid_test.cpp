#include "ui/board/week_grid.h"

#include "tests/ui/board/board_roster.h"
#include "ui/board/card_widget.h"

#include <QApplication>
#include <QTest>
#include <gmock/gmock.h>

using namespace ui;
using testing::ElementsAre;

TEST(WeekGrid, ARightPressOnACardLeavesTheCardAtHandAndOneBesideTheCardsMeansTheDay)
{
    BoardRoster roster;
    WeekPlan plan(
        roster.session, roster.estimates, roster.insights, roster.history, roster.selection);
    WeekGrid grid(plan);
    grid.resize(1096, 640);
    grid.show();
    QApplication::setActiveWindow(&grid);
    const core::CardId card = plan.add(roster.variation("comp"), {1, 0});
    grid.focusCard(card);
    grid.choose({card});
    auto *pressed = qobject_cast<CardWidget *>(QApplication::focusWidget());
    ASSERT_TRUE(pressed);
    QTest::mousePress(pressed, Qt::RightButton);
    EXPECT_EQ(grid.choice().card(), card);
    EXPECT_THAT(grid.choice().chosen(), ElementsAre(card));

    const QPoint below(boardColumns(grid.width(), 1)[1].center().x(), grid.height() - 2);
    QTest::mousePress(&grid, Qt::RightButton, {}, below);
    EXPECT_EQ(grid.choice().place(), (BoardPlace{1, 1}));
}
