#include "core/strength/validation.h"

#include "tests/core/strength/training_samples.h"

#include <gmock/gmock.h>

#include <limits>
#include <stdexcept>

using namespace samples;
using namespace strength;

namespace {

/// Whether a log with a sound set, changed so, is taken.
template <class Change> bool isTaken(Change change)
{
    LifterLog log;
    log.sessions.push_back({0, {samples::rated(100, 3, 8)}});
    change(log.sessions.front(), log.sessions.front().sets.front());
    try {
        checkLog(log, kVariations.size(), 0);
    } catch (const std::invalid_argument &) {
        return false;
    }
    return true;
}

using Session = TrainingSession;
using Set = TrainingSet;

} // namespace

TEST(Validation, RatingsRunFromOneToTen)
{
    const auto at = [](double rpe) { return isTaken([=](Session &, Set &s) { s.rpe = rpe; }); };
    EXPECT_FALSE(at(0.99));
    EXPECT_TRUE(at(1.0));
    EXPECT_TRUE(at(10.0));
    EXPECT_FALSE(at(10.01));
    EXPECT_FALSE(at(std::numeric_limits<double>::quiet_NaN()));
}

TEST(Validation, OnlyAMissHasNoRep)
{
    EXPECT_TRUE(isTaken([](Session &, Set &s) { s.reps = 1; }));
    EXPECT_FALSE(isTaken([](Session &, Set &s) { s.reps = 0; }));
    EXPECT_TRUE(isTaken([](Session &, Set &s) {
        s.reps = 0;
        s.missed = true;
    }));
    EXPECT_FALSE(isTaken([](Session &, Set &s) {
        s.reps = -1;
        s.missed = true;
    }));
}

TEST(Validation, LoadsAndVelocitiesAreNumbersAboveZero)
{
    for (const double bad : {0.0, -1.0, std::numeric_limits<double>::infinity()}) {
        EXPECT_FALSE(isTaken([=](Session &, Set &s) { s.loadKg = bad; }));
        EXPECT_FALSE(isTaken([=](Session &, Set &s) { s.velocity = bad; }));
    }
    EXPECT_TRUE(isTaken([](Session &, Set &s) { s.loadKg = 1e-3; }));
    EXPECT_TRUE(isTaken([](Session &, Set &s) { s.velocity = 0.05; }));
}

TEST(Validation, VariationsAreRowsOfTheTable)
{
    const int last = int(kVariations.size()) - 1;
    EXPECT_TRUE(isTaken([=](Session &, Set &s) { s.variation = last; }));
    EXPECT_FALSE(isTaken([=](Session &, Set &s) { s.variation = last + 1; }));
    EXPECT_FALSE(isTaken([](Session &, Set &s) { s.variation = -1; }));
    const auto lead = [](int reps, int row) {
        return isTaken([=](Session &, Set &s) {
            s.leadReps = reps;
            s.leadVariation = row;
        });
    };
    EXPECT_TRUE(lead(0, -1));
    EXPECT_FALSE(lead(1, -1));
    EXPECT_TRUE(lead(1, last));
    EXPECT_FALSE(lead(1, last + 1));
    EXPECT_TRUE(lead(3, 0)) << "all three of them";
    EXPECT_FALSE(lead(4, 0));
    EXPECT_FALSE(lead(-1, 0));
}

TEST(Validation, DaysReachTwoHundredYearsEitherWay)
{
    const auto on = [](int day) { return isTaken([=](Session &s, Set &) { s.day = day; }); };
    EXPECT_EQ(kFarthestDay / 365, 200);
    EXPECT_TRUE(on(kFarthestDay));
    EXPECT_FALSE(on(kFarthestDay + 1));
    EXPECT_TRUE(on(-kFarthestDay));
    EXPECT_FALSE(on(-kFarthestDay - 1));
}

TEST(Validation, ATableHasARowAndRatiosAboveZero)
{
    EXPECT_NO_THROW(checkVariations(kVariations));
    EXPECT_THROW(checkVariations({}), std::invalid_argument);
    for (const VariationPrior &bad : {VariationPrior{0.0, 0.05, 1.0},
             VariationPrior{0.9, -0.01, 1.0}, VariationPrior{0.9, 0.05, 0.0},
             VariationPrior{0.9, std::numeric_limits<double>::infinity(), 1.0}})
        EXPECT_THROW(checkVariations({&bad, 1}), std::invalid_argument);
    const VariationPrior exact{1.0, 0.0, 1.0};
    EXPECT_NO_THROW(checkVariations({&exact, 1}));
}
