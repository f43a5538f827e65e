#include "ui/charts/plot_map.h"
#include "ui/charts/value_scale.h"

#include <gmock/gmock.h>

using namespace ui;

TEST(ValueScale, TakesTheFinestRoundStepThatFits)
{
    EXPECT_EQ(scaleFor(131.0, 148.0, 5), (ValueScale{130.0, 150.0, 5.0}));
    EXPECT_EQ(scaleFor(0.0, 7.3, 4), (ValueScale{0.0, 8.0, 2.0}));
    EXPECT_EQ(scaleFor(0.0, 100.0, 4), (ValueScale{0.0, 100.0, 25.0}));
}

TEST(ValueScale, GivesASingleValueRoom)
{
    const ValueScale scale = scaleFor(120.0, 120.0, 5);
    EXPECT_LT(scale.from, 120.0);
    EXPECT_GT(scale.to, 120.0);
    EXPECT_GT(scaleFor(0.0, 0.0, 5).to, 0.0);
}

TEST(ValueScale, HoldsTheValuesInAtMostTheStepsAskedFor)
{
    for (double low = 0.013; low < 400.0; low *= 1.7)
        for (double span = 0.02; span < 900.0; span *= 1.9)
            for (const int most : {2, 5, 10}) {
                const ValueScale scale = scaleFor(low, low + span, most);
                EXPECT_LE(scale.from, low + 1e-9);
                EXPECT_GE(scale.to, low + span - 1e-9);
                EXPECT_LE(scale.ticks(), most + 1);
            }
}

TEST(ValueScale, KnowsThePlacesThatTellTicksApart)
{
    EXPECT_EQ((ValueScale{0.0, 10.0, 5.0}).decimals(), 0);
    EXPECT_EQ((ValueScale{0.0, 10.0, 2.5}).decimals(), 1);
    EXPECT_EQ((ValueScale{0.0, 1.0, 0.25}).decimals(), 2);
}

TEST(PlotMap, PutsDaysAndValuesIntoThePlot)
{
    const PlotMap map{QRectF(50, 10, 200, 100), {1000.0, 1100.0}, {100.0, 150.0, 10.0}};
    EXPECT_EQ(map.at(1000.0, 100.0), QPointF(50, 110));
    EXPECT_EQ(map.at(1100.0, 150.0), QPointF(250, 10));
    EXPECT_DOUBLE_EQ(map.dayAt(map.xOf(1037.0)), 1037.0);
}

TEST(PlaceBeside, StaysWithinTheBoundsAndOffTheAnchor)
{
    const QRectF bounds(0, 0, 400, 300);
    const QSizeF box(120, 60);
    for (const QPointF anchor :
        {QPointF(5, 5), QPointF(395, 5), QPointF(5, 295), QPointF(395, 295), QPointF(200, 150)}) {
        const QRectF placed = placeBeside(anchor, box, bounds);
        EXPECT_TRUE(bounds.contains(placed));
        EXPECT_FALSE(placed.contains(anchor));
    }
}
