#include "core/domain/block.h"
#include "core/domain/block_template.h"
#include "core/domain/card.h"
#include "core/domain/check_in.h"
#include "core/domain/given_day.h"
#include "core/domain/lifter.h"
#include "core/domain/session.h"
#include "core/domain/training_history.h"
#include "core/domain/variation.h"
#include "core/domain/waiver.h"

#include <gmock/gmock.h>

// What a row says before a coach has said anything: the dialogs begin with it.

using namespace core;

TEST(BlankRows, AVariationIsTakenForTheLiftItselfUntilSomethingElseIsSaid)
{
    Variation v;
    EXPECT_EQ(problems(v).size(), 2) << "code and name are all it lacks";
    EXPECT_FALSE(v.competition);
    EXPECT_FALSE(v.retired);
    EXPECT_EQ(v.ratio, 1.0);
    EXPECT_EQ(v.repCost, 1.0);
    EXPECT_EQ(v.repsLow, 1);
    EXPECT_EQ(v.repsHigh, 10);
    EXPECT_EQ(v.ratioSpread, 0.05) << "common practice, no source";
    EXPECT_EQ(v.tempo, (Tempo{0, 0, 0})) << "none prescribed";
}

TEST(BlankRows, ASetIsNotDoneUntilItIsLogged)
{
    const SetEntry set;
    EXPECT_EQ(set.loadKg, 0.0);
    EXPECT_EQ(set.repsDone, 0);
    EXPECT_FALSE(set.failed);
    EXPECT_EQ(LeadReps{}.reps, 1);
    EXPECT_EQ(LoggedSession{}.number, 1) << "the first of its day";
    EXPECT_FALSE(SessionId{}.isValid());
}

TEST(BlankRows, ALifterHasAnEmptyBarOfTwentyKilogramsAndIsOnTheList)
{
    const Lifter lifter;
    EXPECT_FALSE(lifter.archived);
    EXPECT_EQ(lifter.gear.barKg, 20.0);
    EXPECT_EQ(lifter.gear.collarsKg, 0.0);
    EXPECT_EQ(PlatePairs{}.pairs, 0);
}

TEST(BlankRows, ABlockHasFourWeeksAndATemplateIsItsFirstVersion)
{
    EXPECT_EQ(Block{}.weeks, 4); // common practice, no source
    EXPECT_EQ(BlockTemplate{}.weeks, 4);
    EXPECT_EQ(BlockTemplate{}.version, 1);
    EXPECT_EQ(TemplateCard{}.dayOffset, 0);
    EXPECT_EQ(TemplateCard{}.position, 0);
    EXPECT_EQ(Card{}.position, 0) << "on top of its day";
    EXPECT_EQ(Waiver{}.measure, 1.0);
    EXPECT_EQ(FindingKey{}.rule, CheckRule::repsOutOfRange);
    EXPECT_EQ(FindingKey{}.lift, Lift::bench);
}

TEST(BlankRows, AWeekWithoutTrainingHoldsNothing)
{
    const WeekLoad week;
    EXPECT_EQ(week.sets, 0);
    EXPECT_EQ(week.lifts, 0);
    EXPECT_EQ(week.tonnageKg, 0.0);
    EXPECT_EQ(week.missed, 0);
}

TEST(BlankRows, WhatIsGivenIsTheFirstOfItsDayAndSaysNoNumberThatNobodyKnows)
{
    EXPECT_EQ(GivenDay{}.number, 1);
    EXPECT_EQ(GivenDay{}.by, GivenBy::handOut);
    EXPECT_EQ(Figure{}, (Figure{0.0, 0.0, 0.0}));
    EXPECT_EQ(GivenLine{}.hardSetsAfter, 0.0);
}

TEST(BlankRows, ACheckInWithoutAnAnswerIsNeitherPainNorFreedomFromIt)
{
    EXPECT_FALSE(CheckIn{}.isPainFree);
    EXPECT_FALSE(CheckIn{}.pain);
}
