#include "ui/charts/chart_stops.h"

#include <gmock/gmock.h>

using namespace ui;
using testing::Optional;

namespace {

/// Three weeks on the line, and a mark between the first two.
const std::vector<Stop> kStops{
    {7.0, 100.0}, {14.0, 101.0}, {21.0, 102.0}, {10.0, 95.0, Side::left, false}};
const std::vector<QPointF> kPixels{{70, 50}, {140, 49}, {210, 48}, {100, 90}};

} // namespace

TEST(StopNear, ReadsAMarkRightUnderTheMouseBeforeTheLine)
{
    EXPECT_THAT(stopNear(kStops, kPixels, {103, 85}), Optional(3U));
    EXPECT_THAT(stopNear(kStops, kPixels, {103, 75}), Optional(0U)) << "out of its reach";
    EXPECT_THAT(stopNear(kStops, kPixels, {107, 5}), Optional(1U)) << "whatever the height";
}

TEST(StopNear, FindsNothingWhereThereIsNothing)
{
    EXPECT_EQ(stopNear({}, {}, {10, 10}), std::nullopt);
    EXPECT_EQ(stopNear({kStops[3]}, {kPixels[3]}, {10, 10}), std::nullopt)
        << "a mark is read from near by only";
}

TEST(StopBeside, WalksTheLineInTimeAndStopsAtItsEnds)
{
    EXPECT_THAT(stopBeside(kStops, 0, 1), Optional(1U)) << "not the mark between";
    EXPECT_THAT(stopBeside(kStops, 2, -1), Optional(1U));
    EXPECT_THAT(stopBeside(kStops, 3, 1), Optional(1U)) << "from a mark back to the line";
    EXPECT_EQ(stopBeside(kStops, 2, 1), std::nullopt);
    EXPECT_EQ(stopBeside(kStops, 0, -1), std::nullopt);
}

TEST(StopBeside, BeginsAtTheEndItComesFrom)
{
    EXPECT_THAT(stopBeside(kStops, std::nullopt, 1), Optional(0U));
    EXPECT_THAT(stopBeside(kStops, std::nullopt, -1), Optional(2U));
    EXPECT_EQ(stopBeside({}, std::nullopt, 1), std::nullopt);
}
