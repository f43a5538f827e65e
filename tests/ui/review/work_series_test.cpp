#include "ui/review/work_series.h"

#include "core/plan/lift_estimate.h"

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

TEST(BarOutline, StandsOnZeroWithinItsWeekInTheLiftersUnit)
{
    const std::vector<WeekWork> weeks{{700.0, 4535.9237, 50, 10, 0}};
    const QList<QPointF> kg = barOutline(weeks, core::Unit::kilogram, 0.5);
    ASSERT_EQ(kg.size(), 4);
    EXPECT_EQ(kg.front().y(), 0.0);
    EXPECT_EQ(kg.back().y(), 0.0);
    EXPECT_DOUBLE_EQ(kg.front().x(), 700.5);
    EXPECT_DOUBLE_EQ(kg.back().x(), 706.5);
    EXPECT_NEAR(kg[1].y(), 4.5359237, 1e-12);
    // 4535.9237 kg are 10,000 lb.
    EXPECT_NEAR(barOutline(weeks, core::Unit::pound, 0.0)[1].y(), 10.0, 1e-12);
}
