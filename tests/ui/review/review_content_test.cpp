#include "ui/review/review_content.h"

#include "core/loads/lift_estimate.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace ui;

namespace {

constexpr double kMonday = 20000.0 + 4.0; ///< 2024-10-07; day 20000 is 2024-10-03, a Thursday

StrengthSeries weeksTo(std::initializer_list<double> sundays)
{
    StrengthSeries series;
    for (const double sunday : sundays)
        series.weeks.push_back({.day = sunday});
    return series;
}

core::WeekLoad workFrom(double monday)
{
    core::WeekLoad week;
    week.monday = core::fromEngineDay(int(monday));
    return week;
}

Season meetOn(double day)
{
    return {{}, {{day, u"Meet"_s}}};
}

} // namespace

TEST(SeasonOf, HoldsTheMeetAndWholeDaysOfTheBlocks)
{
    core::Lifter lifter;
    EXPECT_EQ(seasonOf(lifter, {}), Season{});
    lifter.meetDate = core::fromEngineDay(20100);
    core::Block block;
    block.name = u"Base"_s;
    block.start = core::fromEngineDay(int(kMonday));
    block.weeks = 4;
    const std::vector<core::Block> blocks{block};
    const Season season = seasonOf(lifter, blocks);
    ASSERT_EQ(season.meets.size(), 1U);
    EXPECT_EQ(season.meets[0].day, 20100.0);
    ASSERT_EQ(season.blocks.size(), 1U);
    EXPECT_EQ(season.blocks[0], (Season::Stretch{kMonday, kMonday + 28, u"Base"_s}))
        << "to the end of the last day";
}

TEST(BoundsOf, HoldTheWorkAndTheEstimateWithFreeDaysAround)
{
    const std::vector<core::WeekLoad> work{workFrom(kMonday), workFrom(kMonday + 7)};
    EXPECT_EQ(boundsOf({}, work, {}), (TimeSpan{kMonday - 4, kMonday + 14 + 4}));
    EXPECT_EQ(boundsOf(weeksTo({kMonday - 8, kMonday + 20}), work, {}),
        (TimeSpan{kMonday - 8 - 4, kMonday + 20 + 4}));
}

TEST(BoundsOf, TakeInAMeetAheadThatIsNotTooFarOff)
{
    const std::vector<core::WeekLoad> work{workFrom(kMonday)};
    const double end = kMonday + 7;
    EXPECT_EQ(boundsOf({}, work, meetOn(end + 119)).to, end + 119 + 4);
    EXPECT_EQ(boundsOf({}, work, meetOn(end + 120)).to, end + 4) << "it would squeeze the log";
    EXPECT_EQ(boundsOf({}, work, meetOn(kMonday - 30)), (TimeSpan{kMonday - 4, end + 4}))
        << "a meet gone by adds nothing";
}
