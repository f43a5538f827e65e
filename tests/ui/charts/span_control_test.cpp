#include "ui/charts/span_control.h"

#include "ui/charts/time_window.h"

#include <gtest/gtest.h>

using namespace ui;

namespace {

/// The middle 100 of 400 days, four pixels a day.
class SpanControlTest : public testing::Test
{
protected:
    SpanControlTest()
    {
        window.setBounds({0, 400});
        window.show({150, 250});
        control.setPlot({50, 0, 400, 200});
    }
    void expectSpan(double from, double to) const
    {
        EXPECT_NEAR(window.span().from, from, 1e-9);
        EXPECT_NEAR(window.span().to, to, 1e-9);
    }

    TimeWindow window;
    SpanControl control{window};
};

} // namespace

TEST_F(SpanControlTest, TheWheelZoomsAndTheDayUnderTheMouseStays)
{
    control.turnWheel({0, 120}, false, 50); // a notch away from the hand, at the left edge
    expectSpan(150, 230);
    control.turnWheel({0, -120}, false, 50);
    expectSpan(150, 250);
}

TEST_F(SpanControlTest, TheWheelTurnedSidewaysMovesByATenthOfTheSpan)
{
    control.turnWheel({120, 0}, false, 250);
    expectSpan(140, 240);
    control.turnWheel({0, -120}, true, 250); // with Shift
    expectSpan(150, 250);
    control.turnWheel({0, -240}, true, 250);
    expectSpan(170, 270);
}

TEST_F(SpanControlTest, KeysZoomAtTheMiddleMoveAndGoToTheEnds)
{
    EXPECT_TRUE(control.pressKey(Qt::Key_Plus));
    expectSpan(160, 240);
    EXPECT_TRUE(control.pressKey(Qt::Key_Minus));
    expectSpan(150, 250);
    EXPECT_TRUE(control.pressKey(Qt::Key_Equal));
    expectSpan(160, 240);
    EXPECT_TRUE(control.pressKey(Qt::Key_Left));
    expectSpan(152, 232);
    EXPECT_TRUE(control.pressKey(Qt::Key_Right));
    expectSpan(160, 240);
    EXPECT_TRUE(control.pressKey(Qt::Key_End));
    expectSpan(320, 400);
    EXPECT_TRUE(control.pressKey(Qt::Key_Home));
    expectSpan(0, 400);
    EXPECT_FALSE(control.pressKey(Qt::Key_A));
    EXPECT_FALSE(control.pressKey(Qt::Key_Escape));
}

TEST_F(SpanControlTest, DraggingTakesTheDaysAlong)
{
    EXPECT_FALSE(control.drag({100, 100})) << "nothing is held";
    control.press({100, 100}, false);
    EXPECT_TRUE(control.drag({140, 100}));
    expectSpan(140, 240);
    EXPECT_TRUE(control.drag({120, 150}));
    expectSpan(145, 245);
    EXPECT_FALSE(control.picked());
    control.release();
    expectSpan(145, 245);
    EXPECT_FALSE(control.drag({200, 100}));
}

TEST_F(SpanControlTest, PickingShowsTheStretchBetweenPressAndRelease)
{
    control.press({150, 100}, true);
    EXPECT_FALSE(control.picked()) << "the mouse has not moved";
    EXPECT_TRUE(control.drag({350, 120}));
    EXPECT_EQ(control.picked(), QRect(150, 0, 200, 200));
    expectSpan(150, 250);
    control.release();
    expectSpan(175, 225);
    EXPECT_FALSE(control.picked());
}

TEST_F(SpanControlTest, PickingGoesEitherWayAndStaysInThePlot)
{
    control.press({250, 100}, true);
    control.drag({20, 100});
    EXPECT_EQ(control.picked(), QRect(50, 0, 200, 200));
    control.release();
    expectSpan(150, 200);
}

TEST_F(SpanControlTest, AShakyClickPicksNothing)
{
    control.press({150, 100}, true);
    control.drag({155, 100});
    control.release();
    expectSpan(150, 250);
    control.press({150, 100}, true);
    control.release();
    expectSpan(150, 250);
}
