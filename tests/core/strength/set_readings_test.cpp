#include "core/strength/set_readings.h"

#include "tests/core/strength/training_samples.h"

#include <cmath>
#include <gtest/gtest.h>

// What each kind of set says, with how much doubt: "What a set says" in core/strength/model.h. The
// sources of the numbers stand in set_readings.cpp.

using namespace samples;
using namespace strength;

namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

double square(double x)
{
    return x * x;
}

/// A lifter with a max of 100 kg and all constants at their priors.
struct Reader
{
    RosterPriors priors = publishedPriors(kVariations);
    OwnSlots slots{{-1, -1, -1}, {-1, -1, -1}, -1, -1};
    Eigen::VectorXd state = StateBelief(ChainVector(std::log(100.0), 0.0, 0.0, 0.0),
        ChainVector::Ones(), publishedPriors(kVariations))
                                .mean();
    RatingWays ways;
    bool vague = false;

    [[nodiscard]] SetModel model() const { return {state, slots, priors}; }
    [[nodiscard]] SetReadings read(const TrainingSet &set) const
    {
        return readingsOf(model(), set, 0.0, ways, vague);
    }
    /// The reading of that kind; fails where there is none.
    [[nodiscard]] Reading read(const TrainingSet &set, Reading::Kind kind) const
    {
        const SetReadings readings = read(set);
        for (const Reading &reading : readings.all())
            if (reading.kind == kind)
                return reading;
        ADD_FAILURE() << "no such reading";
        return {};
    }
    [[nodiscard]] bool says(const TrainingSet &set, Reading::Kind kind) const
    {
        const SetReadings readings = read(set);
        for (const Reading &reading : readings.all())
            if (reading.kind == kind)
                return true;
        return false;
    }
    /// Load at which so many reps are possible.
    [[nodiscard]] double loadFor(double reps) const
    {
        double low = 1.0, high = 120.0;
        for (int half = 0; half < 100; ++half) {
            const double middle = 0.5 * (low + high);
            const bool isLight = model().possibleReps(unrated(middle, 1), 0.0).value > reps;
            (isLight ? low : high) = middle;
        }
        return low;
    }
};

void expectNoise(const Reading &reading, double sd)
{
    // Besides the noise of its own every reading has that between sets, 0.8 % of the max.
    EXPECT_NEAR(reading.noise, sd * sd + square(reading.expectation.byCap * 0.008), 1e-9);
}

using Kind = Reading::Kind;

} // namespace

TEST(SetReadings, ARatingIsAPointWhoseDoubtGrowsWithTheReserve)
{
    const Reader reader;
    const TrainingSet set = rated(reader.loadFor(8.0), 5, 7);
    const Reading said = reader.read(set, Kind::rated);
    EXPECT_EQ(said.low, 3.0);
    EXPECT_EQ(said.high, 3.0);
    expectNoise(said, 0.55 + 0.13 * 3.0);
    EXPECT_EQ(said.gross.chance, 0.02);
    EXPECT_EQ(said.gross.density, 1.0 / 20.0);
    EXPECT_NEAR(reader.read(set).reserve, 3.0, 1e-9);
    expectNoise(reader.read(rated(reader.loadFor(30.0), 5, 7), Kind::rated), 0.55 + 0.13 * 8.0);
    expectNoise(reader.read(rated(reader.loadFor(3.0), 5, 7), Kind::rated), 0.55);
    Reader strict = reader;
    strict.ways.scale = 0.25;
    expectNoise(strict.read(set, Kind::rated), 0.5 * (0.55 + 0.13 * 3.0));
}

TEST(SetReadings, WhereTheMaxIsHardlyKnownTheReserveThatWasSaidWeighs)
{
    Reader reader;
    const TrainingSet far = rated(reader.loadFor(20.5), 5, 7);
    EXPECT_EQ(reader.read(far, Kind::rated).gross.chance, 0.02);
    const TrainingSet farther = rated(reader.loadFor(25.0), 5, 7);
    EXPECT_EQ(reader.read(farther, Kind::rated).gross.chance, 1.0) << "not of this load";
    reader.vague = true;
    EXPECT_EQ(reader.read(farther, Kind::rated).gross.chance, 0.02);
    expectNoise(reader.read(farther, Kind::rated), 0.55 + 0.13 * 3.0);
}

TEST(SetReadings, ARatingIsOfAnotherLoadFromTwelveRepsOn)
{
    // Compared on the lifter's own scale: 1 + 0.88 (reserve - 1) is what is said of a reserve.
    const Reader reader;
    const auto chance = [&reader](double saidTooMuch) {
        const double reserve = 1.0 + (3.0 + saidTooMuch - 1.0) / reader.state[compression];
        return reader.read(rated(reader.loadFor(5.0 + reserve), 5, 7), Kind::rated).gross.chance;
    };
    EXPECT_EQ(chance(11.99), 0.02);
    EXPECT_EQ(chance(12.01), 1.0);
}

TEST(SetReadings, TheEndsOfTheScaleAreIntervals)
{
    Reader reader;
    const double load = reader.loadFor(8.0);
    const Reading ten = reader.read(rated(load, 5, 10), Kind::rated);
    EXPECT_EQ(ten.low, -kInfinity);
    EXPECT_EQ(ten.high, 0.25) << "half a step";
    EXPECT_EQ(ten.gross.chance, 0.02);
    EXPECT_EQ(ten.gross.density, 0.5);
    EXPECT_EQ(reader.read(rated(load, 5, 9.5), Kind::rated).high, 0.5) << "a point";
    const Reading lowest = reader.read(rated(load, 5, 6.5), Kind::rated);
    EXPECT_EQ(lowest.low, 3.25) << "nothing lower was said so far";
    EXPECT_EQ(lowest.high, kInfinity);
    EXPECT_EQ(lowest.gross.density, 0.5);
    reader.ways.lowest = 4.0;
    EXPECT_EQ(reader.read(rated(load, 5, 6.5), Kind::rated).high, 3.5) << "a point by now";
    EXPECT_EQ(reader.read(rated(load, 5, 5.5), Kind::rated).high, kInfinity) << "light, no number";
    reader.ways.halfStep = 0.5;
    EXPECT_EQ(reader.read(rated(load, 5, 10), Kind::rated).high, 0.5) << "whole numbers only";
    EXPECT_EQ(reader.read(rated(load, 5, 5), Kind::rated).low, 4.5);
}

TEST(SetReadings, AMissLiesBetweenItsRepsAndTheNext)
{
    const Reader reader;
    const Reading second = reader.read(missed(95, 2), Kind::missed);
    EXPECT_EQ(second.low, 2.0);
    EXPECT_EQ(second.high, 3.0);
    expectNoise(second, 0.25);
    EXPECT_EQ(second.gross.chance, 0.02);
    EXPECT_EQ(second.gross.density, 0.5);
    const Reading first = reader.read(missed(105, 0), Kind::missed);
    EXPECT_EQ(first.low, -kInfinity);
    EXPECT_EQ(first.high, 1.0);
    EXPECT_EQ(reader.read(missed(95, 2)).size, 1);
}

TEST(SetReadings, AFinishedSetSaysSoOnlyNearFailure)
{
    Reader reader;
    const auto finished = [&reader](double reserve) {
        return reader.says(rated(reader.loadFor(5.0 + reserve), 5, 7), Kind::finished);
    };
    EXPECT_TRUE(finished(2.99));
    EXPECT_FALSE(finished(3.01));
    const Reading near = reader.read(rated(reader.loadFor(6.0), 5, 9), Kind::finished);
    EXPECT_EQ(near.low, 5.0);
    EXPECT_EQ(near.high, kInfinity);
    expectNoise(near, 0.25);
    reader.vague = true;
    EXPECT_TRUE(finished(9.0));
}

TEST(SetReadings, ASetRackedBeforeItsPlanWasProbablyAtItsEnd)
{
    const Reader reader;
    for (const double possible : {4.0, 12.0}) {
        TrainingSet set = unrated(reader.loadFor(possible), 3);
        set.repsPlanned = 5;
        const Reading cut = reader.read(set, Kind::finished);
        EXPECT_EQ(cut.low, 3.0) << possible;
        EXPECT_EQ(cut.high, 4.0) << possible;
        EXPECT_EQ(cut.gross.chance, 0.2);
        EXPECT_EQ(cut.gross.density, 0.5);
        set.repsPlanned = 3;
        EXPECT_EQ(reader.says(set, Kind::finished), possible < 6.0) << "done as planned";
    }
}

TEST(SetReadings, AnUnratedSetHardlySpeaksAndAWarmUpNotAtAll)
{
    const Reader reader;
    EXPECT_TRUE(reader.says(unrated(reader.loadFor(10.99), 5), Kind::unrated));
    EXPECT_EQ(reader.read(unrated(reader.loadFor(11.01), 5)).size, 0) << "six left and more";
    const Reading usual = reader.read(unrated(reader.loadFor(9.0), 5), Kind::unrated);
    EXPECT_EQ(usual.low, 0.0);
    EXPECT_EQ(usual.high, 0.0);
    EXPECT_NEAR(usual.expectation.value, 4.0 - reader.priors.unratedReserve.mean, 1e-9);
    expectNoise(usual, 12.0);
    EXPECT_EQ(usual.gross.chance, 0.02);
    EXPECT_EQ(usual.gross.density, 1.0 / 20.0);
}

TEST(SetReadings, ASpeedIsReadToThreeAndAHalfCentimetresASecond)
{
    const Reader reader;
    TrainingSet set = rated(80, 5, 8);
    set.velocity = 0.42;
    const Reading speed = reader.read(set, Kind::speed);
    EXPECT_EQ(speed.low, 0.42);
    EXPECT_EQ(speed.high, 0.42);
    expectNoise(speed, 0.035);
    EXPECT_EQ(speed.gross.chance, 0.03);
    EXPECT_EQ(speed.gross.density, 1.0);
    EXPECT_FALSE(reader.says(rated(80, 5, 8), Kind::speed));
}

TEST(SetReadings, ALiftersWaysAreTheUsualOnesAtFirst)
{
    const RatingWays ways;
    EXPECT_EQ(ways.scale, 1.0);
    EXPECT_EQ(ways.lowest, 6.5);
    EXPECT_EQ(ways.halfStep, 0.25) << "ratings come in halves";
}
