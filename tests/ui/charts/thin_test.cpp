#include "ui/charts/thin.h"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>

using namespace ui;
using testing::ElementsAre;

TEST(ThinLine, KeepsShortLinesWithOneNeighbourOnEachSide)
{
    const QList<QPointF> points{{0, 1}, {10, 2}, {20, 3}, {30, 4}, {40, 5}};
    EXPECT_EQ(
        thinLine(points, {15.0, 35.0}, 100), (QList<QPointF>{{10, 2}, {20, 3}, {30, 4}, {40, 5}}));
    EXPECT_EQ(thinLine(points, {0.0, 40.0}, 100), points);
    EXPECT_TRUE(thinLine({}, {0.0, 1.0}, 10).isEmpty());
}

TEST(ThinLine, KeepsTheOutlineOfALongLine)
{
    QList<QPointF> points;
    for (int i = 0; i < 10000; ++i)
        points.append({double(i), std::sin(i * 0.37) * 50.0 + i * 0.001});
    points[4321].setY(300.0); // a spike may not vanish
    const QList<QPointF> thin = thinLine(points, {0.0, 10000.0}, 500);
    EXPECT_LE(thin.size(), 1000);
    const auto byValue = [](const QPointF &a, const QPointF &b) { return a.y() < b.y(); };
    EXPECT_EQ(*std::max_element(thin.begin(), thin.end(), byValue), points[4321]);
    EXPECT_EQ(*std::min_element(thin.begin(), thin.end(), byValue),
        *std::min_element(points.begin(), points.end(), byValue));
    EXPECT_TRUE(std::is_sorted(thin.begin(), thin.end(),
        [](const QPointF &a, const QPointF &b) { return a.x() < b.x(); }));
}

TEST(ThinMarks, DrawsOnePerCellAndNoneOutside)
{
    // Two in the first cell, one beside it, one left of the plot, one below it.
    const std::vector<QPointF> pixels{{1, 1}, {2, 2}, {4, 1}, {-1, 1}, {1, 51}};
    EXPECT_THAT(thinMarks(pixels, 100, 50, 3), ElementsAre(1, 2));
}

TEST(ThinMarks, CostFollowsThePixelsNotTheLog)
{
    std::vector<QPointF> pixels;
    for (int i = 0; i < 50000; ++i)
        pixels.push_back({std::fmod(i * 7.31, 30.0), std::fmod(i * 3.17, 30.0)});
    EXPECT_LE(thinMarks(pixels, 30, 30, 3).size(), 11U * 11U);
}

TEST(Nearest, TakesTheNearestWithinReachOrNone)
{
    const std::vector<QPointF> points{{0, 0}, {10, 0}, {20, 0}};
    EXPECT_EQ(nearestPoint(points, {12, 1}, 10), 1);
    EXPECT_EQ(nearestPoint(points, {50, 0}, 10), std::nullopt);
    EXPECT_EQ(nearestInTime(points, 17), 2);
    EXPECT_EQ(nearestInTime({}, 17), std::nullopt);
}
