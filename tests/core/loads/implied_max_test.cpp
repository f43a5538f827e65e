#include "core/loads/implied_max.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace core;

namespace {

const QDate kSunday(2026, 3, 8);

/// Three per cent a rep from the first on; the second row at 0.9 of the competition max, each of
/// its reps worth two.
LiftEstimate lift()
{
    LiftEstimate lift;
    lift.rows = {{1}, {2}};
    lift.priors = {{1.0, 0.0, 1.0}, {0.9, 0.03, 2.0}};
    lift.estimate.curve = {0.03, 1.0};
    lift.estimate.setFatigue = 0.01;
    lift.estimate.variations.resize(2);
    lift.estimate.variations[0].ratio.value = 1.0;
    lift.estimate.variations[1].ratio.value = 0.9;
    strength::WeekEstimate week;
    week.sunday = engineDay(kSunday);
    week.filtered.kg = 100.0;
    week.smoothed.kg = 101.0;
    lift.estimate.weeks = {week};
    week.sunday += 7;
    week.filtered.kg = 110.0;
    week.smoothed.kg = 111.0;
    lift.estimate.weeks.push_back(week);
    return lift;
}

SetEntry done(int reps, std::optional<double> rpe)
{
    SetEntry set;
    set.loadKg = 90.0;
    set.repsDone = reps;
    set.rpe = rpe;
    return set;
}

} // namespace

TEST(ImpliedMax, IsTheLoadOverTheShareOfTheRepsThatWerePossible)
{
    const LiftEstimate hundred = lift();
    EXPECT_DOUBLE_EQ(impliedMaxKg(hundred, done(1, 10.0), 0, 0), 90.0);
    EXPECT_DOUBLE_EQ(impliedMaxKg(hundred, done(3, 8.0), 0, 0), 90.0 * std::exp(0.03 * 4));
    EXPECT_DOUBLE_EQ(impliedMaxKg(hundred, done(3, {}), 0, 0), 90.0 * std::exp(0.03 * 2))
        << "the least that it can be";
    EXPECT_DOUBLE_EQ(
        impliedMaxKg(hundred, done(3, 8.0), 1, 0), 90.0 / 0.9 * std::exp(0.03 * 2.0 * 4));
    EXPECT_DOUBLE_EQ(impliedMaxKg(hundred, done(1, 10.0), 0, 3), 90.0 * std::exp(0.03))
        << "three sets before";
}

TEST(ImpliedMax, AMissIsOneRepTooManyWhateverWasSaid)
{
    const LiftEstimate hundred = lift();
    SetEntry missed = done(2, 8.0);
    missed.failed = true;
    EXPECT_DOUBLE_EQ(impliedMaxKg(hundred, missed, 0, 0), 90.0 * std::exp(0.03 * 2));
    missed.repsDone = 0;
    EXPECT_DOUBLE_EQ(impliedMaxKg(hundred, missed, 0, 0), 90.0);
}

TEST(ImpliedMax, TheLiftersRatingHabitIsTakenOut)
{
    LiftEstimate habit = lift();
    habit.estimate.rating.bias.value = 1.0; // says one more in reserve than there is
    EXPECT_DOUBLE_EQ(impliedMaxKg(habit, done(3, 8.0), 0, 0), 90.0 * std::exp(0.03 * 3));
    EXPECT_DOUBLE_EQ(impliedMaxKg(habit, done(1, 10.0), 0, 0), 90.0)
        << "what was done was possible";
}

TEST(KnownMax, IsThatOfTheSundayBefore)
{
    const LiftEstimate hundred = lift();
    EXPECT_EQ(knownMaxKg(hundred, kSunday.addDays(1)), 100.0);
    EXPECT_EQ(knownMaxKg(hundred, kSunday.addDays(7)), 100.0) << "its own week is not over";
    EXPECT_EQ(knownMaxKg(hundred, kSunday.addDays(8)), 110.0);
    EXPECT_EQ(knownMaxKg(hundred, kSunday.addDays(90)), 110.0);
    EXPECT_EQ(knownMaxKg(hundred, kSunday), 101.0) << "in the first week what is known now";
    EXPECT_EQ(knownMaxKg({}, kSunday), std::nullopt);
}
