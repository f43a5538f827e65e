#include "core/advice/plan_checks.h"

#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>

// From when on, and up to when, each check speaks. Thresholds are common practice, no source.

using namespace core;
using namespace tests;

namespace {

struct BoundsDesk
{
    Lifter lifter;
    std::vector<LoggedSession> sessions;
    std::vector<Card> cards;
    std::vector<CheckIn> checkIns;
    LiftEstimate bench = plainEstimate(kMonday);

    BoundsDesk()
    {
        lifter.id = {1};
        lifter.birthYear = 1995;
        lifter.gear = usualGear(Unit::kilogram);
        lifter.gear.plates.push_back({0.5, 2});
    }

    void plan(int day, const char *code, const QString &setLine)
    {
        cards.push_back(
            cardOf(qint64(cards.size()) + 1, kMonday.addDays(day), 0, idOf(code), setLine));
    }
    void did(int day, const char *code, int sets, double kg, int reps)
    {
        sessions.push_back(sessionOf(kMonday.addDays(day),
            std::vector<SetEntry>(size_t(sets), setOf(idOf(code), kg, reps, 8.0))));
    }
    CheckIn &feels(int day)
    {
        checkIns.emplace_back().day = kMonday.addDays(day);
        checkIns.back().lifter = lifter.id;
        return checkIns.back();
    }

    /// What the check finds by the rule; empty when nothing.
    [[nodiscard]] std::optional<Finding> find(CheckRule rule) const
    {
        const auto estimateOf = [this](
                                    Lift lift) { return lift == Lift::bench ? &bench : nullptr; };
        const auto resolved =
            resolveCards(cards, {lifter, builtInCatalogue(), estimateOf, checkIns, {}, {}});
        for (const Finding &finding :
            core::checkPlan({lifter, builtInCatalogue(), sessions, resolved, estimateOf, checkIns}))
            if (finding.key.rule == rule)
                return finding;
        return std::nullopt;
    }
};

/// The last weeks as lifts a week, the newest last.
BoundsDesk afterWeeks(const std::vector<int> &lifts)
{
    BoundsDesk desk;
    int week = -int(lifts.size());
    for (const int count : lifts) {
        if (count > 0)
            desk.did(7 * week + 2, "comp", count, 80, 1);
        ++week;
    }
    return desk;
}

} // namespace

TEST(PlanChecksBounds, PainCountsUntilItIsAnswered)
{
    BoundsDesk desk;
    desk.feels(0).pain = PainFlag{BodyArea::chest, {}};
    desk.plan(14, "comp", u"3x3 @6"_qs);
    EXPECT_TRUE(desk.find(CheckRule::pain));
    desk.cards[0].day = kMonday.addDays(150);
    EXPECT_TRUE(desk.find(CheckRule::pain));
    desk.feels(149).isPainFree = true;
    EXPECT_FALSE(desk.find(CheckRule::pain));
    desk.checkIns.back().day = kMonday.addDays(151);
    EXPECT_TRUE(desk.find(CheckRule::pain)) << "answered later";
    desk.cards[0].day = kMonday.addDays(-1);
    EXPECT_FALSE(desk.find(CheckRule::pain)) << "a day before it was said";
    desk.cards[0].day = kMonday;
    EXPECT_TRUE(desk.find(CheckRule::pain)) << "the day itself";
    BoundsDesk elsewhere;
    elsewhere.feels(0).pain = PainFlag{{}, u"wrist"_qs};
    elsewhere.plan(0, "feet_up", u"3x3 @6"_qs);
    EXPECT_TRUE(elsewhere.find(CheckRule::pain)) << "not known to be spared";
}

TEST(PlanChecksBounds, AStopIsNotHiddenByALaterPainThatNobodyPlaced)
{
    BoundsDesk desk;
    desk.feels(-10).pain = PainFlag{BodyArea::elbows, {}};
    desk.feels(0).pain = PainFlag{{}, {}};
    desk.plan(0, "comp", u"3x3 @6"_qs);
    ASSERT_TRUE(desk.find(CheckRule::pain));
    EXPECT_EQ(desk.find(CheckRule::pain)->severity, Severity::stop);
}

TEST(PlanChecksBounds, ThreeDaysAfterItWasSaidAnAreaIsStillSore)
{
    BoundsDesk desk;
    desk.feels(0).soreness[BodyArea::chest] = 2;
    desk.plan(2, "comp", u"3x3 @6"_qs);
    desk.plan(3, "comp", u"3x3 @6"_qs);
    EXPECT_EQ(desk.find(CheckRule::noRestForSoreArea)->key.card, CardId{2});
    desk.cards[0].day = kMonday.addDays(3);
    desk.cards[1].day = kMonday.addDays(4);
    EXPECT_FALSE(desk.find(CheckRule::noRestForSoreArea));
    desk.cards[0].day = kMonday.addDays(1);
    desk.cards[1].day = kMonday.addDays(3);
    EXPECT_FALSE(desk.find(CheckRule::noRestForSoreArea)) << "a day lies between";
    desk.cards = {desk.cards[1]};
    desk.did(2, "close_grip", 3, 70, 5);
    EXPECT_TRUE(desk.find(CheckRule::noRestForSoreArea)) << "the day before is done, not planned";
    desk.sessions.clear();
    desk.did(2, "squat", 3, 140, 5);
    EXPECT_FALSE(desk.find(CheckRule::noRestForSoreArea)) << "squats do not work the chest";
}

TEST(PlanChecksBounds, MinorsMayNotTryA95PercentMaxNorAnRpeAbove9)
{
    const auto isStopped = [](const QString &line) {
        BoundsDesk desk;
        desk.lifter.birthYear = 2010;
        desk.plan(0, "comp", line);
        return desk.find(CheckRule::maximalAttempt).has_value();
    };
    EXPECT_TRUE(isStopped(u"1x1 95kg"_qs));
    EXPECT_FALSE(isStopped(u"1x1 94kg"_qs));
    EXPECT_TRUE(isStopped(u"1x2 @9.5"_qs));
    EXPECT_TRUE(isStopped(u"1x1 @8-9.5"_qs));
    EXPECT_TRUE(isStopped(u"1x5 @9.5"_qs));
    EXPECT_FALSE(isStopped(u"1x5 @8"_qs));
    EXPECT_FALSE(isStopped(u"1xAMRAP max 5 60%"_qs));
    EXPECT_TRUE(isStopped(u"1xAMRAP max 30 60%"_qs)) << "a cap beyond reach is none";
}

TEST(PlanChecksBounds, FarAboveIsFivePercentOverTheHeaviestOfEightWeeks)
{
    BoundsDesk desk;
    desk.did(-56, "comp", 1, 90, 1);
    desk.plan(0, "comp", u"1x1 94.5kg"_qs);
    EXPECT_EQ(desk.find(CheckRule::aboveLately)->severity, Severity::hint);
    EXPECT_NEAR(desk.find(CheckRule::aboveLately)->measure, 1.05, 1e-9);
    desk.cards[0].setLine = u"1x1 95kg"_qs;
    EXPECT_EQ(desk.find(CheckRule::aboveLately)->severity, Severity::warning);
    desk.cards[0].day = kMonday.addDays(1);
    EXPECT_FALSE(desk.find(CheckRule::aboveLately)) << "nine weeks ago says nothing";
    desk.did(0, "comp", 1, 95, 1);
    EXPECT_FALSE(desk.find(CheckRule::aboveLately));
    desk.sessions.back().sets[0].loadKg = 85;
    EXPECT_NEAR(desk.find(CheckRule::aboveLately)->measure, 95.0 / 85.0, 1e-9) << "of yesterday";
    desk.sessions.back().sets[0].repsDone = 0;
    EXPECT_FALSE(desk.find(CheckRule::aboveLately)) << "nothing done is no measure";
}

TEST(PlanChecksBounds, ALikelyMissIsOneThatFailsMoreOftenThanNot)
{
    BoundsDesk desk;
    desk.plan(0, "comp", u"1x1 99kg"_qs);
    EXPECT_FALSE(desk.find(CheckRule::likelyMiss));
    desk.cards[0].setLine = u"1x1 101kg"_qs;
    const auto found = desk.find(CheckRule::likelyMiss);
    ASSERT_TRUE(found);
    EXPECT_GT(found->measure, 0.5);
    desk.cards[0].setLine = u"1x1 101kg\n1x1 60kg"_qs;
    EXPECT_EQ(desk.find(CheckRule::likelyMiss)->measure, found->measure) << "the worst counts";
}

TEST(PlanChecksBounds, AJumpIsMoreThanAFifthAboveTheFullestOfSixWeeks)
{
    BoundsDesk desk = afterWeeks({90, 20, 0, 10, 0, 15, 5}); // 90 was seven weeks ago
    desk.plan(0, "comp", u"12x2 50kg"_qs);
    EXPECT_FALSE(desk.find(CheckRule::weeklyLifts)) << "24 after 20";
    desk.cards[0].setLine = u"5x5 50kg"_qs;
    ASSERT_TRUE(desk.find(CheckRule::weeklyLifts)) << "25 after 20";
    EXPECT_NEAR(desk.find(CheckRule::weeklyLifts)->measure, 1.25, 1e-9);
    EXPECT_EQ(desk.find(CheckRule::weeklyLifts)->severity, Severity::hint);
    EXPECT_TRUE(desk.find(CheckRule::weeklyLifts)->remedy.contains(u"about 2 lifts"_qs));
    desk.cards[0].setLine = u"15x2 50kg"_qs;
    EXPECT_EQ(desk.find(CheckRule::weeklyLifts)->severity, Severity::hint) << "half as much again";
    desk.cards[0].setLine = u"8x4 50kg"_qs;
    EXPECT_EQ(desk.find(CheckRule::weeklyLifts)->severity, Severity::warning);

    BoundsDesk few = afterWeeks({0, 0, 20, 0, 0, 20});
    few.plan(0, "comp", u"9x5 50kg"_qs);
    EXPECT_FALSE(few.find(CheckRule::weeklyLifts)) << "two weeks are no habit";
    BoundsDesk enough = afterWeeks({20, 0, 20, 0, 0, 20});
    enough.plan(0, "comp", u"9x5 50kg"_qs);
    EXPECT_TRUE(enough.find(CheckRule::weeklyLifts));
}

TEST(PlanChecksBounds, NearMaximumIsNineTenthsOnMoreThanTwoDays)
{
    BoundsDesk desk;
    for (const int day : {0, 2, 4})
        desk.plan(day, "comp", u"1x1 90kg"_qs);
    EXPECT_EQ(desk.find(CheckRule::daysNearMaximum)->measure, 3.0);
    desk.cards[1].setLine = u"1x1 89kg"_qs;
    EXPECT_FALSE(desk.find(CheckRule::daysNearMaximum));
    desk.cards[1] = desk.cards[0]; // twice on one day is one day
    EXPECT_FALSE(desk.find(CheckRule::daysNearMaximum));
}

TEST(PlanChecksBounds, ThreeWeeksBeforeTheMeetTheCompetitionLiftIsMissed)
{
    BoundsDesk desk;
    desk.plan(0, "feet_up", u"3x3 @7"_qs);
    const auto isMissed = [&desk](int meet) {
        desk.lifter.meetDate = kMonday.addDays(meet);
        return desk.find(CheckRule::noCompetitionLift).has_value();
    };
    EXPECT_FALSE(isMissed(-1));
    EXPECT_TRUE(isMissed(0));
    EXPECT_TRUE(isMissed(21));
    EXPECT_FALSE(isMissed(22));
}

TEST(PlanChecksBounds, TheMeetsWeekAreItsSevenDaysAndTheFourWeeksBeforeCountAsTrained)
{
    const auto isFound = [](int day, std::optional<int> done) {
        BoundsDesk desk;
        desk.lifter.meetDate = kMonday.addDays(40);
        desk.plan(day, "incline", u"3x6 60kg"_qs);
        if (done)
            desk.did(*done, "incline", 3, 60, 6);
        return desk.find(CheckRule::untrainedOnMeetWeek).has_value();
    };
    EXPECT_FALSE(isFound(33, {})) << "a week before the meet";
    EXPECT_TRUE(isFound(34, {}));
    EXPECT_TRUE(isFound(40, {}));
    EXPECT_FALSE(isFound(41, {})) << "after the meet";
    EXPECT_FALSE(isFound(36, 40 - 6 - 28));
    EXPECT_TRUE(isFound(36, 40 - 6 - 29));
}

TEST(PlanChecksBounds, RepsAreCountedByTheVariationTheyAreDoneIn)
{
    const auto measure = [](const char *code, const QString &line) {
        BoundsDesk desk;
        desk.plan(0, code, line);
        const auto found = desk.find(CheckRule::repsOutOfRange);
        return found ? found->measure : 0.0;
    };
    EXPECT_EQ(measure("close_grip", u"3x12 50kg"_qs), 0.0); // 3 to 12
    EXPECT_EQ(measure("close_grip", u"3x13 50kg"_qs), 1.0);
    EXPECT_EQ(measure("close_grip", u"3x3 50kg"_qs), 0.0);
    EXPECT_EQ(measure("close_grip", u"3x1 50kg"_qs), 2.0);
    EXPECT_EQ(measure("off_chest_pause", u"3x2-5 50kg"_qs), 2.0) << "the most that may be done";
    EXPECT_EQ(measure("tempo_4_2_0", u"3x1+10 50kg"_qs), 0.0) << "ten competition reps follow";
    EXPECT_EQ(measure("tempo_4_2_0", u"3x1+12 50kg"_qs), 2.0);
    EXPECT_EQ(measure("tempo_4_2_0", u"3x4+1 50kg"_qs), 1.0) << "four lead reps, made for three";
    EXPECT_EQ(measure("off_chest_pause", u"2x4 50kg\n2x6 50kg"_qs), 3.0) << "the worst line";
}

TEST(PlanChecksBounds, AMaximalAttemptIsAnEffortAboveNine)
{
    // Without loads, so that only what is asked for counts.
    const auto isStopped = [](const QString &line) {
        BoundsDesk desk;
        desk.bench.estimate.standing = strength::Standing::priorOnly;
        desk.lifter.birthYear = 2010;
        desk.plan(0, "comp", line);
        return desk.find(CheckRule::maximalAttempt).has_value();
    };
    EXPECT_TRUE(isStopped(u"1x2 @9.5"_qs));
    EXPECT_FALSE(isStopped(u"1x2 @9"_qs));
    EXPECT_TRUE(isStopped(u"1x3 @9.5"_qs));
    EXPECT_TRUE(isStopped(u"1x1 @8-9.5"_qs));
    EXPECT_FALSE(isStopped(u"1x1 @8-9"_qs));
}

TEST(PlanChecksBounds, OneHeavyDayOfDeadliftsAWeekIsTheMost)
{
    BoundsDesk desk;
    desk.bench.rows = {idOf("deadlift")};
    desk.bench.priors = {{1.0, 0.0, 1.0}};
    desk.bench.estimate.variations.resize(1);
    desk.bench.estimate.variations[0].ratio = {1.0, 1.0, 1.0};
    const auto check = [&desk] {
        const auto estimateOf = [&desk](Lift) { return &desk.bench; };
        std::vector<double> measures;
        for (const Finding &finding : checkPlan({desk.lifter, builtInCatalogue(), desk.sessions,
                 resolveCards(desk.cards,
                     {desk.lifter, builtInCatalogue(), estimateOf, noCheckIns(), {}, {}}),
                 estimateOf, {}}))
            if (finding.key.rule == CheckRule::daysNearMaximum)
                measures.push_back(finding.measure);
        return measures;
    };
    desk.plan(0, "deadlift", u"1x1 95kg"_qs);
    EXPECT_TRUE(check().empty());
    desk.plan(3, "deadlift", u"1x1 95kg"_qs);
    EXPECT_EQ(check(), std::vector{2.0});
}

TEST(PlanChecksBounds, TonnageJumpsLikeLifts)
{
    BoundsDesk desk = afterWeeks({0, 0, 0, 20, 20, 20}); // 1600 kg a week
    desk.plan(0, "comp", u"19x1 100kg"_qs);
    EXPECT_FALSE(desk.find(CheckRule::weeklyTonnage));
    desk.cards[0].setLine = u"20x1 100kg"_qs;
    const auto found = desk.find(CheckRule::weeklyTonnage);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->measure, 1.25, 1e-9);
    EXPECT_TRUE(found->words.contains(u"tonnage of 2000 kg"_qs)) << found->words.toStdString();
    EXPECT_TRUE(found->words.contains(u"1600 kg to 1600 kg"_qs));
}

TEST(PlanChecksBounds, AFindingThatIsWavedThroughMayMoveByARoundingAndNoMore)
{
    BoundsDesk desk;
    desk.plan(0, "close_grip", u"3x13 50kg"_qs);
    const Finding finding = *desk.find(CheckRule::repsOutOfRange);
    const auto stands = [&](double measure) {
        const Waiver waiver{{1}, finding.key, measure, u"meant"_qs};
        const auto none = [](Lift) { return nullptr; };
        const auto resolved =
            resolveCards(desk.cards, {desk.lifter, builtInCatalogue(), none, noCheckIns(), {}, {}});
        for (const Finding &found : checkPlan({desk.lifter, builtInCatalogue(), desk.sessions,
                 resolved, none, {}, {&waiver, 1}}))
            if (found.key == finding.key)
                return found.wavedThrough.has_value();
        throw std::logic_error("found no more");
    };
    EXPECT_TRUE(stands(1.0));
    EXPECT_TRUE(stands(1.0 - 1e-10));
    EXPECT_FALSE(stands(1.0 - 1e-6));
}
