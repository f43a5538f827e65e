#include "ui/charts/season_overlay.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;
using namespace ui;
using testing::ElementsAre;

namespace {

/// Ten pixels a day, from day 100 to day 120.
const PlotMap kPlot{{50, 10, 200, 80}, {100, 120}, {}};

} // namespace

TEST(BlockBands, FillTheHeightAndAreCutOffAtTheSides)
{
    const Season season{
        {{90, 97, u"gone"_s}, {95, 105, u"base"_s}, {110, 140, u"peak"_s}, {130, 140, u"later"_s}},
        {}};
    EXPECT_THAT(
        blockBands(season, kPlot), ElementsAre(QRectF(50, 10, 50, 80), QRectF(150, 10, 100, 80)));
}

TEST(SeasonLines, MarkWhereBlocksBeginAndMeetsWithinTheSpan)
{
    const Season season{
        {{95, 105, u"base"_s}, {110, 140, u"peak"_s}}, {{120, u"meet"_s}, {121, u"next"_s}}};
    const std::vector<DayLine> lines = seasonLines(season, kPlot);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].label, u"peak");
    EXPECT_DOUBLE_EQ(lines[0].x, 150.0);
    EXPECT_EQ(lines[1].label, u"meet") << "the last day of the span belongs to it";
    EXPECT_DOUBLE_EQ(lines[1].x, 250.0);
}
