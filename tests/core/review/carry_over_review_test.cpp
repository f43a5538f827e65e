#include "core/review/carry_over_review.h"

#include "core/loads/implied_max.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace core;

namespace {

const VariationId kComp{1}, kPause{2};

SetEntry set(VariationId variation, double loadKg, int reps, std::optional<double> rpe)
{
    SetEntry entry;
    entry.variation = variation;
    entry.loadKg = loadKg;
    entry.repsDone = reps;
    entry.rpe = rpe;
    return entry;
}

/// Max 100 kg in two known weeks from Monday 2 March 2026; the pause bench at 0.9.
LiftEstimate lift()
{
    LiftEstimate lift;
    lift.rows = {kComp, kPause};
    lift.priors = {{1.0, 0.0, 1.0}, {0.9, 0.03, 1.0}};
    const int sunday = engineDay(QDate(2026, 3, 8));
    lift.estimate.weeks = {{sunday, {100, 95, 105}, {100, 95, 105}, 4},
        {sunday + 7, {100, 95, 105}, {100, 95, 105}, 4}};
    lift.estimate.curve = {0.03, 1.0};
    lift.estimate.variations.resize(2);
    lift.estimate.variations[0].ratio = {1.0, 1.0, 1.0};
    lift.estimate.variations[1].ratio = {0.9, 0.85, 0.95};
    LoggedSession first, second;
    first.day = QDate(2026, 3, 3);
    first.sets = {set(kComp, 80, 3, 8.0), set(kComp, 60, 5, 5.0), set(kPause, 70, 2, 8.0)};
    second.day = QDate(2026, 3, 11);
    second.sets = {set(kPause, 70, 4, 8.0), set(kPause, 40, 4, {})};
    lift.readings = {first, second};
    return lift;
}

strength::CarryOver effect(double value, double low, double high)
{
    strength::CarryOver one;
    one.enough = true;
    one.weeks = 20;
    one.factor = {value, low, high};
    return one;
}

} // namespace

TEST(CarryOverReview, AWeekIsReadFromItsRatedCompetitionSets)
{
    const LiftEstimate estimate = lift();
    const strength::CarryLog log = carryLog(estimate);
    ASSERT_EQ(log.size(), 2u);
    ASSERT_TRUE(log[0].lnMax);
    EXPECT_NEAR(
        *log[0].lnMax, std::log(impliedMaxKg(estimate, set(kComp, 80, 3, 8.0), 0, 0)), 1e-12);
    EXPECT_EQ(log[0].sessions, 1);
    EXPECT_FALSE(log[1].lnMax) << "no competition set, no reading";
    EXPECT_EQ(log[0].hardLifts[0], 3.0) << "60 of 100 kg is no hard set";
    EXPECT_EQ(log[0].hardLifts[1], 2.0);
    EXPECT_EQ(log[1].hardLifts[1], 4.0);
    EXPECT_TRUE(carryLog({}).empty());
}

TEST(CarryOverReview, LittleDataIsSaidInWords)
{
    const LiftEstimate one = lift();
    const strength::CarryLog logs[] = {carryLog(one), carryLog(one)};
    EXPECT_TRUE(whatCarriedOver(logs, one.rows).empty())
        << "eight weeks with a reading are the least for a lifter to count";
    EXPECT_TRUE(whatCarriedOver({}, {}).empty());
    EXPECT_EQ(effectWords({}).toStdString(), "not enough to say");
}

TEST(CarryOverReview, AnIntervalAroundNoChangeClaimsNothing)
{
    EXPECT_EQ(effectWords(effect(1.004, 1.001, 1.007)).toStdString(), "+0.4 % (+0.1 to +0.7)");
    EXPECT_TRUE(meaningWords(effect(1.004, 1.001, 1.007)).contains(QStringLiteral("rose more")));
    EXPECT_TRUE(meaningWords(effect(1.004, 0.999, 1.007)).contains(QStringLiteral("Not enough")));
    EXPECT_TRUE(meaningWords(effect(0.99, 0.985, 0.995)).contains(QStringLiteral("rose less")));
    EXPECT_TRUE(carryOverCaution().contains(QStringLiteral("no proof of cause")));
}

TEST(CarryOverReview, OnlyWhatIsRatedSixAndHarderAndNeitherMissedNorLedIsAReading)
{
    const auto isReading = [](auto change) {
        LiftEstimate one = lift();
        one.readings[0].sets = {set(kComp, 80, 3, 6.0)};
        change(one.readings[0].sets[0]);
        return carryLog(one)[0].lnMax.has_value();
    };
    EXPECT_TRUE(isReading([](SetEntry &) {}));
    EXPECT_FALSE(isReading([](SetEntry &s) { s.rpe = 5.5; }));
    EXPECT_FALSE(isReading([](SetEntry &s) { s.failed = true; }));
    EXPECT_FALSE(isReading([](SetEntry &s) { s.lead = LeadReps{kPause, 1}; }));
    EXPECT_FALSE(isReading([](SetEntry &s) { s.variation = kPause; }));
}

TEST(CarryOverReview, AWeekIsTheMeanOfItsSessions)
{
    LiftEstimate one = lift();
    LoggedSession third = one.readings[0];
    third.day = QDate(2026, 3, 5);
    third.sets = {set(kComp, 85, 3, 8.0)};
    LoggedSession fourth = third;
    fourth.day = QDate(2026, 3, 7);
    fourth.sets = {set(kComp, 90, 1, 9.0)};
    one.readings.insert(one.readings.begin() + 1, {third, fourth});
    const strength::CarryLog log = carryLog(one);
    EXPECT_EQ(log[0].sessions, 3);
    const auto of = [&one](
                        const SetEntry &entry) { return std::log(impliedMaxKg(one, entry, 0, 0)); };
    EXPECT_NEAR(*log[0].lnMax,
        (of(set(kComp, 80, 3, 8.0)) + of(set(kComp, 85, 3, 8.0)) + of(set(kComp, 90, 1, 9.0)))
            / 3.0,
        1e-12);
}
