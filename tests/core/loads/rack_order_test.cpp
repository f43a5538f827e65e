#include "core/loads/rack_order.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>
#include <stdexcept>

using namespace core;
using testing::ElementsAre;

namespace {

using Loads = std::vector<std::vector<double>>;

const PlateTable &usualKg()
{
    static const PlateTable plates(usualGear(Unit::kilogram));
    return plates;
}

/// Loads a bar plate by plate, as hands do: off from the outside until what is left is right, then
/// on. Counts both sides.
int carried(std::vector<double> &side, const BarLoad &wanted)
{
    std::vector<double> goal;
    for (const PlatePairs &kind : wanted.plates)
        for (int pair = 0; pair < kind.pairs; ++pair)
            goal.push_back(kind.plateKg);
    int moves = 0;
    const auto isRight = [&] {
        return side.size() <= goal.size() && std::equal(side.begin(), side.end(), goal.begin());
    };
    for (; !isRight(); ++moves)
        side.pop_back();
    for (; side.size() < goal.size(); ++moves)
        side.push_back(goal[side.size()]);
    return 2 * moves;
}

/// Plates and repeats of an order.
std::pair<int, int> walked(const std::vector<size_t> &order, const Loads &loads, double onBarKg)
{
    std::vector<size_t> done(loads.size());
    std::vector<double> side;
    static_cast<void>(carried(side, usualKg().round(onBarKg)));
    std::pair<int, int> cost;
    for (size_t at = 0; at < order.size(); ++at) {
        cost.first += carried(side, usualKg().round(loads[order[at]][done[order[at]]++]));
        cost.second += at > 0 && order[at] == order[at - 1];
    }
    return cost;
}

/// The best of all orders, one by one.
std::pair<int, int> cheapest(const Loads &loads, double onBarKg)
{
    std::vector<size_t> order;
    for (size_t lifter = 0; lifter < loads.size(); ++lifter)
        order.insert(order.end(), loads[lifter].size(), lifter);
    std::pair<int, int> best = walked(order, loads, onBarKg);
    while (std::ranges::next_permutation(order).found)
        best = std::min(best, walked(order, loads, onBarKg));
    return best;
}

} // namespace

TEST(RackOrder, APlateIsReachedWhenThoseOutsideAreOff)
{
    const auto moved = [](double from, double to) {
        return platesMoved(usualKg().round(from), usualKg().round(to));
    };
    EXPECT_EQ(moved(20, 20), 0);
    EXPECT_EQ(moved(20, 70), 2) << "25 on, both sides";
    EXPECT_EQ(moved(80, 90), 4) << "25 + 5 to 25 + 10: 5 off, 10 on";
    EXPECT_EQ(moved(80, 70), 2) << "5 off";
    EXPECT_EQ(moved(80, 60), 6) << "25 + 5 off, 20 on";
    EXPECT_EQ(moved(60, 80), moved(80, 60)) << "there and back";
}

TEST(RackOrder, StrongAndLightOnesGroupTheirEqualLoads)
{
    // By hand: taking turns between 100 (25 + 15) and 60 (20) strips the bar each time, 6 plates,
    // and the first load costs 4. In one block each it is stripped once.
    const Loads loads{{100, 100, 100}, {60, 60, 60}};
    const RackOrder turns = takingTurns(loads, 20, usualKg());
    EXPECT_THAT(turns.lifters, ElementsAre(0, 1, 0, 1, 0, 1));
    EXPECT_EQ(turns.plates, 4 + 5 * 6);
    EXPECT_EQ(turns.inARow, 0);
    const RackOrder best = fewestPlates(loads, 20, usualKg());
    EXPECT_THAT(best.lifters, ElementsAre(1, 1, 1, 0, 0, 0)) << "2 for the 60, then 6";
    EXPECT_EQ(best.plates, 8);
    EXPECT_EQ(best.inARow, 4);
}

TEST(RackOrder, WhatIsOnTheBarGoesFirst)
{
    EXPECT_EQ(fewestPlates({{100}, {60}}, 100, usualKg()).lifters.front(), 0u);
    EXPECT_EQ(fewestPlates({{100}, {60}}, 60, usualKg()).lifters.front(), 1u);
}

TEST(RackOrder, EqualLoadsTakeTurnsSoThatEachRests)
{
    const RackOrder best = fewestPlates({{80, 80, 80}, {80, 80, 80}, {80, 80, 80}}, 80, usualKg());
    EXPECT_THAT(best.lifters, ElementsAre(0, 1, 2, 0, 1, 2, 0, 1, 2));
    EXPECT_EQ(best.plates, 0);
    EXPECT_EQ(best.inARow, 0);
}

TEST(RackOrder, WithoutSetsOrLiftersThereIsNothing)
{
    EXPECT_EQ(fewestPlates({}, 20, usualKg()), RackOrder());
    EXPECT_EQ(fewestPlates({{}, {}}, 20, usualKg()), RackOrder());
    EXPECT_EQ(takingTurns({{}, {}}, 20, usualKg()), RackOrder());
    EXPECT_THAT(fewestPlates({{}, {60, 80}}, 20, usualKg()).lifters, ElementsAre(1, 1));
    EXPECT_THROW(static_cast<void>(fewestPlates(Loads(kMostOnRack + 1), 20, usualKg())),
        std::invalid_argument);
}

TEST(RackOrder, OfLongSessionsTheNextSetsAreOrdered)
{
    const Loads loads(kMostOnRack, std::vector<double>(2 * kMostAhead, 80.0));
    EXPECT_EQ(fewestPlates(loads, 20, usualKg()).lifters.size(), kMostOnRack * kMostAhead);
    EXPECT_EQ(takingTurns(loads, 20, usualKg()).lifters.size(), kMostOnRack * kMostAhead);
}

RC_GTEST_PROP(RackOrder, NoOrderOfAllMovesFewerPlates, ())
{
    // At most eight sets: 2520 orders of four lifters with two each.
    const auto lifters = *rc::gen::inRange<size_t>(1, kMostOnRack + 1);
    const auto most = lifters < 3 ? 4 : lifters == 3 ? 3 : 2;
    Loads loads(lifters);
    for (std::vector<double> &own : loads)
        own = *rc::gen::container<std::vector<double>>(*rc::gen::inRange<size_t>(0, most + 1),
            rc::gen::map(rc::gen::inRange(8, 60), [](int step) { return 2.5 * step; }));
    const double onBarKg = 2.5 * *rc::gen::inRange(8, 60);
    const RackOrder best = fewestPlates(loads, onBarKg, usualKg());

    for (size_t lifter = 0; lifter < lifters; ++lifter)
        RC_ASSERT(size_t(std::ranges::count(best.lifters, lifter)) == loads[lifter].size());
    RC_ASSERT(walked(best.lifters, loads, onBarKg) == std::pair(best.plates, best.inARow));
    RC_ASSERT(std::pair(best.plates, best.inARow) == cheapest(loads, onBarKg));
    const RackOrder turns = takingTurns(loads, onBarKg, usualKg());
    RC_ASSERT(walked(turns.lifters, loads, onBarKg) == std::pair(turns.plates, turns.inARow));
    RC_ASSERT(best.plates <= turns.plates);
}
