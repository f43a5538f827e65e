#include "core/loads/plates.h"

#include <QLocale>
#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

using namespace core;

namespace {

using Plates = std::vector<PlatePairs>;

constexpr double lb(double pounds)
{
    return pounds * kKgPerPound;
}

} // namespace

// Loads below are worked out by hand: bar + collars + 2 x (plates of one side).

TEST(Plates, LoadsAUsualKgSet)
{
    const PlateTable plates(usualGear(Unit::kilogram));
    const BarLoad load = plates.round(101.0);
    // 20 + 2 x (25 + 15) = 100; the next one is 102.5 with 1.25 a side more.
    EXPECT_DOUBLE_EQ(load.loadKg, 100.0);
    EXPECT_EQ(load.plates, (Plates{{25, 1}, {15, 1}}));
    EXPECT_DOUBLE_EQ(plates.round(101.5).loadKg, 102.5);
    EXPECT_DOUBLE_EQ(plates.round(101.5, Rounding::down).loadKg, 100.0);
    EXPECT_DOUBLE_EQ(plates.smallestJumpKg().value(), 2.5);
}

TEST(Plates, LoadsAUsualPoundSet)
{
    const PlateTable plates(usualGear(Unit::pound));
    // 45 + 2 x (45 + 45) = 225 lb
    const BarLoad load = plates.round(lb(226));
    EXPECT_NEAR(load.loadKg, lb(225), 1e-6);
    ASSERT_EQ(load.plates.size(), 1u);
    EXPECT_EQ(load.plates[0].pairs, 2);
    EXPECT_NEAR(load.plates[0].plateKg, lb(45), 1e-9);
    EXPECT_NEAR(plates.smallestJumpKg().value(), lb(5), 1e-6);
    // A load that went to lb and back is met, not rounded down past.
    EXPECT_NEAR(plates.round(lb(225) - 1e-10, Rounding::down).loadKg, lb(225), 1e-6);
}

TEST(Plates, FindsWhatTheHeaviestPlateFirstWouldMiss)
{
    // One pair each of 20, 15 and 10: 25 a side is 15 + 10. Taking 20 first leaves 5 a side, for
    // which there is no plate, and ends at 20 + 2 x 20 = 60.
    const PlateTable plates({20.0, 0.0, {{20, 1}, {15, 1}, {10, 1}}});
    const BarLoad load = plates.round(70.0);
    EXPECT_DOUBLE_EQ(load.loadKg, 70.0);
    EXPECT_EQ(load.plates, (Plates{{15, 1}, {10, 1}}));

    // 7.5, 5, 5 a side for 10: greedy takes 7.5 and is stuck at 15; 5 + 5 is exact.
    EXPECT_EQ(PlateTable({20.0, 0.0, {{7.5, 1}, {5, 2}}}).round(40.0).plates, (Plates{{5, 2}}));
}

TEST(Plates, CountsCollarsAndLimitedPairs)
{
    // 20 + 5 collars + 2 x 25 = 75; there is no second pair of 25.
    const PlateTable plates({20.0, 5.0, {{25, 1}, {10, 1}}});
    EXPECT_DOUBLE_EQ(plates.lightestKg(), 25.0);
    EXPECT_DOUBLE_EQ(plates.heaviestKg(), 95.0);
    EXPECT_DOUBLE_EQ(plates.round(75.0).loadKg, 75.0);
    EXPECT_DOUBLE_EQ(plates.round(500.0).loadKg, 95.0);
    EXPECT_DOUBLE_EQ(plates.round(1.0).loadKg, 25.0);
    EXPECT_TRUE(plates.round(1.0).plates.empty());
}

TEST(Plates, TakesTheFewestPlates)
{
    // 20 a side is 20, not 10 + 10 nor 15 + 5.
    const PlateTable plates({20.0, 0.0, {{5, 2}, {10, 2}, {15, 1}, {20, 1}}});
    EXPECT_EQ(plates.round(60.0).plates, (Plates{{20, 1}}));
    // 35 a side is 25 + 10 rather than 20 + 15: two plates either way.
    EXPECT_EQ(PlateTable(usualGear(Unit::kilogram)).round(90.0).plates, (Plates{{25, 1}, {10, 1}}));
}

TEST(Plates, AddsUpPairsOfTheSameKind)
{
    const PlateTable plates({20.0, 0.0, {{10, 1}, {10, 1}}});
    EXPECT_EQ(plates.round(60.0).plates, (Plates{{10, 2}}));
}

TEST(Plates, MixesKgAndPoundPlates)
{
    // 20 kg bar, 10 kg and 10 lb a side: 20 + 2 x (10 + 4.5359237) = 49.0718474.
    const PlateTable plates({20.0, 0.0, {{10, 1}, {lb(10), 1}}});
    EXPECT_NEAR(plates.round(48.0).loadKg, 49.0718474, 1e-7);
}

TEST(Plates, NamesTheNeighbours)
{
    const PlateTable plates({20.0, 0.0, {{10, 1}, {2.5, 1}}}); // 20, 25, 40, 45
    EXPECT_DOUBLE_EQ(plates.above(25.0).value(), 40.0);
    EXPECT_DOUBLE_EQ(plates.above(26.0).value(), 40.0);
    EXPECT_DOUBLE_EQ(plates.below(40.0).value(), 25.0);
    EXPECT_FALSE(plates.above(45.0));
    EXPECT_FALSE(plates.below(20.0));
    EXPECT_DOUBLE_EQ(plates.smallestJumpKg().value(), 5.0);
}

TEST(Plates, ABareBarIsAllThereIs)
{
    const PlateTable plates({20.0, 0.0, {}});
    EXPECT_DOUBLE_EQ(plates.round(100.0).loadKg, 20.0);
    EXPECT_FALSE(plates.smallestJumpKg());
}

TEST(Plates, EquallyNearTakesTheLighter)
{
    EXPECT_DOUBLE_EQ(PlateTable({20.0, 0.0, {{5, 1}}}).round(25.0).loadKg, 20.0);
}

TEST(Plates, RefusesUnsoundGear)
{
    EXPECT_THROW(PlateTable({0.0, 0.0, {}}), std::invalid_argument);
    EXPECT_THROW(PlateTable({20.0, 0.0, {{5, 0}}}), std::invalid_argument);
}

TEST(PlatesWords, CountPlatesOfOneKind)
{
    QLocale::setDefault(QLocale::c());
    EXPECT_EQ(platesWords({{25, 2}, {2.5, 1}, {1.25, 1}}, Unit::kilogram), u"2 x 25 + 2.5 + 1.25");
    EXPECT_EQ(platesWords({{45 * kKgPerPound, 1}}, Unit::pound), u"45");
    EXPECT_EQ(platesWords({}, Unit::kilogram), u"empty bar");
}

RC_GTEST_PROP(PlatesProperty, NoSubsetOfThePairsComesNearer, ())
{
    Gear gear{20.0, 0.0, {}};
    const auto kinds = *rc::gen::inRange(0, 6);
    for (int k = 0; k < kinds; ++k)
        gear.plates.push_back({*rc::gen::inRange(1, 100) / 4.0, *rc::gen::inRange(1, 4)});
    const double target = *rc::gen::inRange(0, 4000) / 10.0;

    // Every way to load the bar, one by one.
    std::vector<double> loads{gear.barKg};
    for (const PlatePairs &p : gear.plates) {
        const std::vector<double> before = loads;
        for (int pair = 1; pair <= p.pairs; ++pair)
            for (const double load : before)
                loads.push_back(load + 2 * pair * p.plateKg);
    }
    double nearest = loads.front();
    double lower = loads.front();
    for (const double load : loads) {
        if (std::abs(load - target) < std::abs(nearest - target))
            nearest = load;
        if (load <= target + 1e-9 && load > lower)
            lower = load;
    }

    const PlateTable plates(gear);
    const BarLoad found = plates.round(target);
    RC_ASSERT(std::abs(std::abs(found.loadKg - target) - std::abs(nearest - target)) < 1e-6);
    RC_ASSERT(std::abs(plates.round(target, Rounding::down).loadKg - lower) < 1e-6);

    double sum = gear.barKg;
    for (const PlatePairs &p : found.plates)
        sum += 2 * p.pairs * p.plateKg;
    RC_ASSERT(std::abs(sum - found.loadKg) < 1e-6);
}

TEST(Plates, AUsualSetLoadsEveryStepUpToAllItsPlates)
{
    // Common practice, no source: a 20 kg bar goes up in 2.5 kg, a 45 lb bar in 5 lb.
    const PlateTable kg(usualGear(Unit::kilogram));
    for (double load = 20.0; load <= 427.5; load += 2.5)
        EXPECT_DOUBLE_EQ(kg.round(load).loadKg, load);
    EXPECT_DOUBLE_EQ(kg.heaviestKg(), 427.5);
    const PlateTable pounds(usualGear(Unit::pound));
    for (double load = 45.0; load <= 760.0; load += 5.0)
        EXPECT_NEAR(pounds.round(lb(load)).loadKg, lb(load), 1e-6) << load;
    EXPECT_NEAR(pounds.heaviestKg(), lb(760), 1e-6);
}

TEST(Plates, NoSideIsLoadedBeyondHalfATonne)
{
    EXPECT_DOUBLE_EQ(PlateTable({20.0, 0.0, {{100, 6}}}).heaviestKg(), 20.0 + 2 * 500.0);
    EXPECT_DOUBLE_EQ(PlateTable({20.0, 0.0, {{100, 4}, {50, 3}}}).heaviestKg(), 20.0 + 2 * 500.0);
}

TEST(Plates, LoadsWithinAGramAreOne)
{
    const PlateTable plates({20.0, 0.0, {{10, 1}, {9.9996, 1}, {9.998, 1}}});
    // 20, then 20 + 2 x 9.998, then 20 + 2 x 10, which stands for 9.9996 too, then the sums of two.
    EXPECT_NEAR(plates.above(20.0).value(), 39.996, 1e-9);
    EXPECT_NEAR(plates.above(39.996).value(), 40.0, 1e-9);
    EXPECT_GT(plates.above(40.0).value(), 59.0);
    const PlateTable plain({20.0, 0.0, {{10, 1}, {2.5, 1}}}); // 20, 25, 40, 45
    EXPECT_DOUBLE_EQ(plain.above(39.9995).value(), 45.0);
    EXPECT_DOUBLE_EQ(plain.above(39.9985).value(), 40.0);
    EXPECT_DOUBLE_EQ(plain.below(40.0005).value(), 25.0);
    EXPECT_DOUBLE_EQ(plain.below(40.0015).value(), 40.0);
    EXPECT_DOUBLE_EQ(plain.round(39.9995, Rounding::down).loadKg, 40.0);
    EXPECT_DOUBLE_EQ(plain.round(39.9985, Rounding::down).loadKg, 25.0);
}

TEST(Plates, OfAsManyPlatesTheHeaviestComeFirst)
{
    // 30 a side: 20 + 10 and 15 + 15 have two plates each.
    EXPECT_EQ(PlateTable({20.0, 0.0, {{20, 1}, {15, 2}, {10, 1}}}).round(80.0).plates,
        (Plates{{20, 1}, {10, 1}}));
}
