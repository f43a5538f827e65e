#include "ui/review/work_series.h"

#include "core/domain/week.h"
#include "core/loads/lift_estimate.h"

#include <gmock/gmock.h>

using namespace ui;
using testing::ElementsAre;

namespace {

const QDate kFirstWeek(2026, 3, 2);

core::WeekLoad week(int after, double tonnageKg)
{
    return {kFirstWeek.addDays(core::kWeekDays * after), 1, 1, tonnageKg};
}

} // namespace

TEST(Bars, StandOnZeroInWholePixelsInTheLiftersUnit)
{
    // Ten pixels a week, twenty a tonne; 4535.9237 kg are 10,000 lb.
    const std::vector<core::WeekLoad> weeks{
        week(0, 4535.9237), week(1, 0.0), week(2, 2000.0), week(900, 2000.0)};
    const double from = core::engineDay(kFirstWeek);
    const PlotMap map{QRectF(50, 0, 100, 100), {from, from + 70}, {0, 5, 1}};
    EXPECT_THAT(barsOf(weeks, core::Unit::kilogram, map),
        ElementsAre(QRectF(51, 9, 8, 91), QRectF(71, 60, 8, 40)));
    const PlotMap pounds{QRectF(50, 0, 100, 100), {from, from + 70}, {0, 20, 5}};
    EXPECT_EQ(barsOf(weeks, core::Unit::pound, pounds).front(), QRectF(51, 50, 8, 50));
}

TEST(Bars, NarrowOnesTouchAndNoneIsLost)
{
    std::vector<core::WeekLoad> weeks;
    for (int w = 0; w < 200; ++w)
        weeks.push_back(week(w, 1000.0));
    const double from = core::engineDay(kFirstWeek);
    const PlotMap map{QRectF(0, 0, 100, 100), {from, from + 1400}, {0, 5, 1}};
    const std::vector<QRectF> bars = barsOf(weeks, core::Unit::kilogram, map);
    EXPECT_EQ(bars.size(), 200U);
    for (const QRectF &bar : bars)
        EXPECT_EQ(bar.width(), 1.0);
}
