#include "core/review/carry_over_review.h"

#include "core/loads/implied_max.h"

#include "tests/core/plan/plan_rows.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace core;
using namespace tests;

namespace {

const VariationId kCompetition{1}, kPaused{2};

/// Max 100 kg in two known weeks from Monday 2 March 2026; the pause bench at 0.9.
LiftEstimate lift()
{
    LiftEstimate lift;
    lift.rows = {kCompetition, kPaused};
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
    first.sets = {setOf(kCompetition, 80, 3, 8.0), setOf(kCompetition, 60, 5, 5.0),
        setOf(kPaused, 70, 2, 8.0)};
    second.day = QDate(2026, 3, 11);
    second.sets = {setOf(kPaused, 70, 4, 8.0), setOf(kPaused, 40, 4, {})};
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
    EXPECT_NEAR(*log[0].lnMax,
        std::log(impliedMaxKg(estimate, setOf(kCompetition, 80, 3, 8.0), 0, 0)), 1e-12);
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
        one.readings[0].sets = {setOf(kCompetition, 80, 3, 6.0)};
        change(one.readings[0].sets[0]);
        return carryLog(one)[0].lnMax.has_value();
    };
    EXPECT_TRUE(isReading([](SetEntry &) {}));
    EXPECT_FALSE(isReading([](SetEntry &s) { s.rpe = 5.5; }));
    EXPECT_FALSE(isReading([](SetEntry &s) { s.failed = true; }));
    EXPECT_FALSE(isReading([](SetEntry &s) { s.lead = LeadReps{kPaused, 1}; }));
    EXPECT_FALSE(isReading([](SetEntry &s) { s.variation = kPaused; }));
}

TEST(CarryOverReview, AWeekIsTheMeanOfItsSessions)
{
    LiftEstimate one = lift();
    LoggedSession third = one.readings[0];
    third.day = QDate(2026, 3, 5);
    third.sets = {setOf(kCompetition, 85, 3, 8.0)};
    LoggedSession fourth = third;
    fourth.day = QDate(2026, 3, 7);
    fourth.sets = {setOf(kCompetition, 90, 1, 9.0)};
    one.readings.insert(one.readings.begin() + 1, {third, fourth});
    const strength::CarryLog log = carryLog(one);
    EXPECT_EQ(log[0].sessions, 3);
    const auto of = [&one](
                        const SetEntry &entry) { return std::log(impliedMaxKg(one, entry, 0, 0)); };
    EXPECT_NEAR(*log[0].lnMax,
        (of(setOf(kCompetition, 80, 3, 8.0)) + of(setOf(kCompetition, 85, 3, 8.0))
            + of(setOf(kCompetition, 90, 1, 9.0)))
            / 3.0,
        1e-12);
}

TEST(CarryOverReview, AWeekRunsFromMondayToSunday)
{
    LiftEstimate one = lift();
    one.readings[0].day = QDate(2026, 3, 2);
    one.readings[1] = one.readings[0];
    one.readings[1].day = QDate(2026, 3, 8);
    EXPECT_EQ(carryLog(one)[0].sessions, 2);
    one.readings[1].day = QDate(2026, 3, 9);
    EXPECT_EQ(carryLog(one)[0].sessions, 1);
    EXPECT_EQ(carryLog(one)[1].sessions, 1);
}

TEST(CarryOverReview, ASetIsHardFromSeventyPerCentOfItsVariationsMax)
{
    LiftEstimate one = lift();
    one.readings[0].sets = {setOf(kCompetition, 70.0, 3, {}), setOf(kCompetition, 69.9, 5, {}),
        setOf(kPaused, 0.7 * 90.0 + 0.01, 2, {}), setOf(kPaused, 62.9, 4, {})};
    EXPECT_EQ(carryLog(one)[0].hardLifts[0], 3.0);
    EXPECT_EQ(carryLog(one)[0].hardLifts[1], 2.0);
}

TEST(CarryOverReview, TheSetsBeforeAReadingCountAsItsFatigue)
{
    LiftEstimate one = lift();
    one.estimate.setFatigue = 0.01;
    one.readings[0].sets = {setOf(kPaused, 70, 2, 8.0), setOf(kCompetition, 60, 5, 5.0),
        setOf(kCompetition, 80, 3, 8.0)};
    EXPECT_NEAR(*carryLog(one)[0].lnMax,
        std::log(impliedMaxKg(one, setOf(kCompetition, 80, 3, 8.0), 0, 2)), 1e-12);
}

TEST(CarryOverReview, ALossIsWrittenWithAMinusAndNothingWithoutASign)
{
    EXPECT_EQ(
        effectWords(effect(0.99, 0.985, 1.0004)).toStdString(), "\u22121.0 % (\u22121.5 to 0.0)");
    EXPECT_EQ(effectWords(effect(1.0, 0.9996, 1.0006)).toStdString(), "0.0 % (0.0 to +0.1)");
}

TEST(CarryOverReview, TheGreatestGainComesFirstAndWhatIsNotKnownLast)
{
    // Two years in which variation 2 goes with a gain, 3 with a loss, 1 was used for a month, and
    // 4 never.
    std::vector<strength::CarryLog> logs;
    for (int lifter = 0; lifter < 3; ++lifter) {
        strength::CarryLog log;
        double level = std::log(100.0);
        for (int t = 0; t < 104; ++t) {
            strength::CarryWeek week;
            week.hardLifts = Eigen::VectorXd::Zero(5);
            const int kind = (t + 3 * lifter) / 4 % 3;
            week.hardLifts[0] = kind == 0 ? 20.0 : 10.0;
            week.hardLifts[2] = kind == 1 ? 10.0 : 0.0;
            week.hardLifts[3] = kind == 2 ? 10.0 : 0.0;
            week.hardLifts[1] = t < 3 ? 5.0 : 0.0;
            week.lnMax = level + 0.001 * std::sin(2.4 * t + lifter);
            week.sessions = 1;
            level += 0.0003 * (week.hardLifts[2] - week.hardLifts[3]);
            log.push_back(week);
        }
        logs.push_back(log);
    }
    const std::vector<CarryOverRow> rows = whatCarriedOver(logs, {{11}, {12}, {13}, {14}, {15}});
    ASSERT_EQ(rows.size(), 3u);
    EXPECT_EQ(rows[0].variation, VariationId{13});
    EXPECT_GT(rows[0].effect.factor.value, 1.0);
    EXPECT_EQ(rows[1].variation, VariationId{14});
    EXPECT_LT(rows[1].effect.factor.value, 1.0);
    EXPECT_EQ(rows[2].variation, VariationId{12});
    EXPECT_FALSE(rows[2].effect.enough);
}
