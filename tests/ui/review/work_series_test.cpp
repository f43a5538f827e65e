#include "ui/review/work_series.h"

#include "core/loads/lift_estimate.h"

#include <gmock/gmock.h>

using namespace ui;
using testing::ElementsAre;

namespace {

constexpr core::VariationId kBench{1};
constexpr core::VariationId kSquat{2};

std::vector<core::Variation> catalogue()
{
    core::Variation bench, squat;
    bench.id = kBench;
    squat.id = kSquat;
    squat.lift = core::Lift::squat;
    return {bench, squat};
}

core::LoggedSession session(QDate day, std::vector<core::SetEntry> sets)
{
    core::LoggedSession logged;
    logged.day = day;
    logged.sets = std::move(sets);
    return logged;
}

core::SetEntry set(core::VariationId variation, double loadKg, int reps, bool failed = false)
{
    core::SetEntry entry;
    entry.variation = variation;
    entry.loadKg = loadKg;
    entry.repsDone = reps;
    entry.failed = failed;
    return entry;
}

} // namespace

TEST(WeeklyWork, AddsUpEachLiftByWeekAndFillsWeeksOffWithZero)
{
    const std::vector<core::LoggedSession> log{
        session({2026, 3, 2}, {set(kBench, 100, 5), set(kBench, 110, 3), set(kSquat, 180, 5)}),
        session({2026, 3, 8}, {set(kBench, 120, 1, true)}), // Sunday of the same week
        session({2026, 3, 16}, {set(kBench, 100, 2)}),
    };
    const double monday = core::engineDay({2026, 3, 2});
    EXPECT_THAT(weeklyWork(log, catalogue(), core::Lift::bench),
        ElementsAre(WeekWork{monday, 950.0, 9, 3, 1}, WeekWork{monday + 7, 0.0, 0, 0, 0},
            WeekWork{monday + 14, 200.0, 2, 1, 0}));
    EXPECT_THAT(weeklyWork(log, catalogue(), core::Lift::squat),
        ElementsAre(WeekWork{monday, 900.0, 5, 1, 0}));
    EXPECT_TRUE(weeklyWork(log, catalogue(), core::Lift::deadlift).empty());
}

TEST(WeeklyWork, CountsNoMissedRep)
{
    const std::vector<core::LoggedSession> log{session({2026, 3, 2}, {set(kBench, 150, 0, true)})};
    const auto weeks = weeklyWork(log, catalogue(), core::Lift::bench);
    ASSERT_EQ(weeks.size(), 1U);
    EXPECT_EQ(weeks[0].tonnageKg, 0.0);
    EXPECT_EQ(weeks[0].lifts, 0);
    EXPECT_EQ(weeks[0].missed, 1);
}

TEST(Bars, StandOnZeroInWholePixelsInTheLiftersUnit)
{
    // Ten pixels a week, twenty a tonne; 4535.9237 kg are 10,000 lb.
    const std::vector<WeekWork> weeks{{700, 4535.9237, 50, 10, 0}, {707, 0, 0, 0, 0},
        {714, 2000, 20, 5, 0}, {7000, 2000, 20, 5, 0}};
    const PlotMap map{QRectF(50, 0, 100, 100), {700, 770}, {0, 5, 1}};
    EXPECT_THAT(barsOf(weeks, core::Unit::kilogram, map),
        ElementsAre(QRectF(51, 9, 8, 91), QRectF(71, 60, 8, 40)));
    const PlotMap pounds{QRectF(50, 0, 100, 100), {700, 770}, {0, 20, 5}};
    EXPECT_EQ(barsOf(weeks, core::Unit::pound, pounds).front(), QRectF(51, 50, 8, 50));
}

TEST(Bars, NarrowOnesTouchAndNoneIsLost)
{
    std::vector<WeekWork> weeks;
    for (int w = 0; w < 200; ++w)
        weeks.push_back({w * 7.0, 1000, 10, 2, 0});
    const PlotMap map{QRectF(0, 0, 100, 100), {0, 1400}, {0, 5, 1}};
    const std::vector<QRectF> bars = barsOf(weeks, core::Unit::kilogram, map);
    EXPECT_EQ(bars.size(), 200U);
    for (const QRectF &bar : bars)
        EXPECT_EQ(bar.width(), 1.0);
}
