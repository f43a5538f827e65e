#include "core/strength/carry_over.h"

#include "tests/core/strength/reference_values.h"

#include <cmath>
#include <gtest/gtest.h>
#include <stdexcept>

using namespace strength;

namespace {

/// Two years of weeks without noise: variation 1 is used in every other block of four weeks, ten
/// hard lifts a week, and each such week is followed by `gain` over three weeks; variation 2 is
/// never used and variation 3 in one week.
CarryLog cleanLog(double gain, int shift)
{
    CarryLog log;
    for (int t = 0; t < 104; ++t) {
        CarryWeek week;
        week.hardLifts = Eigen::VectorXd::Zero(4);
        const bool used = (t + shift) / 4 % 2 == 0;
        week.hardLifts[0] = used ? 10.0 : 20.0;
        week.hardLifts[1] = used ? 10.0 : 0.0;
        week.hardLifts[3] = t == 50 ? 5.0 : 0.0;
        double level = std::log(100.0) + 0.0005 * t;
        for (int before = 0; before < t; ++before)
            level +=
                gain * log[size_t(before)].hardLifts[1] / 10.0 * std::min((t - before) / 3.0, 1.0);
        week.lnMax = level + 0.003 * std::sin(2.4 * t + shift);
        week.sessions = 2;
        log.push_back(week);
    }
    return log;
}

} // namespace

TEST(CarryOver, FindsWhatTheWorkLeft)
{
    const CarryLog logs[] = {cleanLog(0.002, 0), cleanLog(0.002, 2), cleanLog(0.002, 5)};
    const auto result = carryOver(logs, 4);
    ASSERT_EQ(result.size(), 3u);
    EXPECT_EQ(result[0].variation, 1);
    EXPECT_TRUE(result[0].isClear());
    EXPECT_NEAR(result[0].factor.value, std::exp(0.002), 4e-4);
    EXPECT_DOUBLE_EQ(result[0].usualLifts, 10.0);
    EXPECT_EQ(result[0].lifters, 3);
}

TEST(CarryOver, SaysNothingOfWhatWasHardlyUsed)
{
    const CarryLog logs[] = {cleanLog(0.002, 0), cleanLog(0.002, 2)};
    const auto result = carryOver(logs, 4);
    EXPECT_FALSE(result[1].enough);
    EXPECT_EQ(result[1].weeks, 0);
    EXPECT_FALSE(result[2].enough);
    EXPECT_EQ(result[2].weeks, 2);
    EXPECT_FALSE(result[2].isClear());
    EXPECT_FALSE(carryOver(std::span(logs).first(1), 4)[0].enough) << "one lifter is no roster";
    EXPECT_EQ(carryOver({}, 4).size(), 3u);
}

TEST(CarryOver, ALogWithoutReadingsIsLeftOut)
{
    CarryLog silent = cleanLog(0.002, 0);
    for (CarryWeek &week : silent)
        week.lnMax.reset();
    const CarryLog with[] = {cleanLog(0.002, 0), cleanLog(0.002, 2), silent};
    const auto result = carryOver(with, 4);
    EXPECT_EQ(result[0].lifters, 2);
}

TEST(CarryOver, WeeksOfAnotherWidthAreTheCallersBug)
{
    const CarryLog logs[] = {cleanLog(0.0, 0)};
    EXPECT_THROW((void)carryOver(logs, 5), std::invalid_argument);
}

TEST(CarryOver, SaysOfAFixedLogWhatItAlwaysSaid)
{
    samples::Values found;
    // Five lifters, so that the scatter between them widens the intervals too.
    std::vector<CarryLog> logs;
    for (int lifter = 0; lifter < 5; ++lifter) {
        logs.push_back(cleanLog(0.001 + 0.0007 * lifter, 2 * lifter));
        for (size_t t = 0; t < logs.back().size(); t += 9)
            logs.back()[t].lnMax.reset();
        for (size_t t = 40; t < 60; ++t)
            logs.back()[t].hardLifts[3] = 3.0 + double(t % 4);
    }
    for (const CarryOver &one : carryOver(logs, 4)) {
        found.emplace_back("usual lifts", one.usualLifts);
        found.emplace_back("factor", one.factor.value);
        found.emplace_back("low", one.factor.low90);
        found.emplace_back("high", one.factor.high90);
    }
    samples::expectReference(
        {{"usual lifts", 10}, {"factor", 1.0023489}, {"low", 1.0017244}, {"high", 1.0029738},
            {"usual lifts", 0}, {"factor", 1}, {"low", 1}, {"high", 1}, {"usual lifts", 4.5},
            {"factor", 1.00002809}, {"low", 0.998549883}, {"high", 1.00150849}},
        found);
}

namespace {

/// The clean log with variation 3 used in so many of its first weeks.
CarryLog usedFor(int weeks, int shift)
{
    CarryLog log = cleanLog(0.002, shift);
    for (int t = 0; t < int(log.size()); ++t)
        log[size_t(t)].hardLifts[3] = t < weeks ? 5.0 : 0.0;
    return log;
}

} // namespace

TEST(CarryOver, ADozenWeeksByTwoLiftersAreTheLeast)
{
    const auto found = [](std::vector<CarryLog> logs) { return carryOver(logs, 4)[2]; };
    EXPECT_TRUE(found({usedFor(6, 0), usedFor(6, 2)}).enough);
    EXPECT_FALSE(found({usedFor(6, 0), usedFor(5, 2)}).enough);
    EXPECT_FALSE(found({usedFor(40, 0), usedFor(0, 2)}).enough) << "one lifter's alone";
    const CarryOver few = found({usedFor(6, 0), usedFor(5, 2)});
    EXPECT_EQ(few.weeks, 11);
    EXPECT_EQ(few.lifters, 2);
    EXPECT_EQ(few.factor.value, 1.0);
}

TEST(CarryOver, EightReadingsAreTheLeastForALifterToCount)
{
    const auto lifters = [](size_t readings) {
        CarryLog few = cleanLog(0.002, 2);
        for (size_t t = readings; t < few.size(); ++t)
            few[t].lnMax.reset();
        const std::vector<CarryLog> logs{cleanLog(0.002, 0), few};
        return carryOver(logs, 4)[0].lifters;
    };
    EXPECT_EQ(lifters(8), 2);
    EXPECT_EQ(lifters(7), 1);
}

TEST(CarryOver, IsClearWhereTheWholeIntervalLiesOnOneSideOfNoChange)
{
    const auto isClear = [](bool enough, double low, double high) {
        CarryOver one;
        one.enough = enough;
        one.factor = {0.5 * (low + high), low, high};
        return one.isClear();
    };
    EXPECT_TRUE(isClear(true, 1.001, 1.01));
    EXPECT_TRUE(isClear(true, 0.98, 0.999));
    EXPECT_FALSE(isClear(true, 0.999, 1.01));
    EXPECT_FALSE(isClear(true, 1.0, 1.01));
    EXPECT_FALSE(isClear(true, 0.98, 1.0));
    EXPECT_FALSE(isClear(false, 1.001, 1.01));
}
