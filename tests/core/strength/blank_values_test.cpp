#include "core/strength/carry_over.h"
#include "core/strength/estimator.h"
#include "core/strength/prescription.h"
#include "core/strength/score.h"
#include "core/strength/touch_hold.h"

#include <gtest/gtest.h>

// Values are filled in part by part, and a part that nobody has filled in stays: it must not pass
// for a finding. What is not known is 0, none or the neutral factor 1.

using namespace strength;

TEST(BlankValues, AnEstimateOfNobodyClaimsNothing)
{
    const LifterEstimate blank;
    EXPECT_EQ(blank.standing, Standing::noData);
    EXPECT_EQ(blank.setFatigue, 0.0);
    EXPECT_EQ(blank.formSd, 0.0);
    EXPECT_EQ(blank.driftPerWeek, 0.0);
    EXPECT_EQ(blank.rating.ratings, 0);
    EXPECT_EQ(blank.rating.bias.value, 0.0);
    EXPECT_EQ(blank.rating.noise, 1.0) << "a rep either way, as published";
    EXPECT_EQ(blank.curve.share(10.0), 1.0) << "no curve yet";
    const VariationEstimate variation;
    EXPECT_EQ(variation.sets, 0);
    EXPECT_EQ(variation.withMax, 0.0);
    EXPECT_EQ(variation.repCost, 1.0) << "as a competition rep";
    EXPECT_EQ(variation.max.kg, 0.0);
    EXPECT_EQ(WeekEstimate{}.sets, 0);
    EXPECT_EQ(WeekEstimate{}.sunday, 0);
    EXPECT_EQ(DayForm{}.day, 0);
    const SetPull pull;
    EXPECT_EQ(pull.session, 0);
    EXPECT_EQ(pull.set, 0);
    EXPECT_EQ(pull.surprise, 0.0);
    EXPECT_EQ(pull.pullKg, 0.0);
}

TEST(BlankValues, ASetSaysNothingThatWasNotWritten)
{
    const TrainingSet set;
    EXPECT_EQ(set.variation, 0) << "the competition lift";
    EXPECT_EQ(set.loadKg, 0.0);
    EXPECT_EQ(set.reps, 0);
    EXPECT_FALSE(set.missed);
    EXPECT_EQ(set.leadReps, 0);
    EXPECT_LT(set.leadVariation, 0) << "no row";
    EXPECT_EQ(TrainingSession{}.day, 0);
    const PlannedSet planned;
    EXPECT_EQ(planned.variation, 0);
    EXPECT_EQ(planned.reps, 1);
    EXPECT_EQ(planned.rir, 0.0);
    EXPECT_EQ(planned.hardSetsBefore, 0.0);
}

TEST(BlankValues, AScoreOfNothingHasCountedNothing)
{
    const Score blank;
    EXPECT_EQ(blank.rated, 0);
    EXPECT_EQ(blank.sets, 0);
    EXPECT_EQ(blank.missed, 0);
    EXPECT_EQ(blank.rirError, 0.0);
    EXPECT_EQ(blank.rirBias, 0.0);
    EXPECT_EQ(blank.usualError, 0.0);
    EXPECT_EQ(blank.brier, 0.0);
    EXPECT_EQ(blank.baseBrier, 0.0);
    const ReliabilityRow row;
    EXPECT_EQ(row.sets, 0);
    EXPECT_EQ(row.from + row.to + row.meanChance + row.observed, 0.0);
    const SetForecast forecast;
    EXPECT_EQ(forecast.lifter, 0);
    EXPECT_EQ(forecast.day, 0);
    EXPECT_EQ(forecast.rir, 0.0);
    EXPECT_EQ(forecast.usualRir, 0.0);
    EXPECT_EQ(forecast.missChance, 0.0);
    EXPECT_FALSE(forecast.missed);
    const CarryOver carried;
    EXPECT_FALSE(carried.enough);
    EXPECT_EQ(carried.variation, 0);
    EXPECT_EQ(CarryWeek{}.sessions, 0);
    EXPECT_FALSE(carried.isClear());
    EXPECT_EQ(carried.factor.value, 1.0);
    EXPECT_EQ(carried.weeks + carried.lifters, 0);
    EXPECT_EQ(carried.usualLifts, 0.0);
    const TouchHold hold;
    EXPECT_EQ(hold.standing, TouchStanding::none);
    EXPECT_EQ(hold.sets, 0);
    EXPECT_EQ(hold.share.value + hold.share.low90 + hold.share.high90, 0.0);
    EXPECT_EQ(TouchRoster{}.clustering, 1.0) << "each set for itself";
    EXPECT_EQ(TouchRoster{}.driftPerWeek, 0.0);
    EXPECT_EQ(hold.lowestShare, 0.0);
    EXPECT_EQ(hold.highestShare, 0.0);
}
