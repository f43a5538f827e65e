#include "core/loads/lift_estimate.h"

#include <gmock/gmock.h>

using namespace core;

namespace {

Variation variation(qint64 id, Lift lift, bool competition, double ratio)
{
    Variation v;
    v.id = {id};
    v.lift = lift;
    v.competition = competition;
    v.ratio = ratio;
    return v;
}

LoggedSession session(qint64 lifter, QDate day, std::vector<SetEntry> sets)
{
    LoggedSession s;
    s.lifter = {lifter};
    s.day = day;
    s.sets = std::move(sets);
    return s;
}

SetEntry single(qint64 variationId, double loadKg)
{
    SetEntry set;
    set.variation = {variationId};
    set.loadKg = loadKg;
    set.repsDone = 1;
    set.rpe = 10.0;
    return set;
}

const std::vector<Variation> kCatalogue = {variation(1, Lift::bench, false, 0.95),
    variation(2, Lift::bench, true, 1.0), variation(3, Lift::squat, true, 1.0)};

std::vector<Lifter> lifters(std::initializer_list<qint64> ids)
{
    std::vector<Lifter> all;
    for (const qint64 id : ids) {
        Lifter lifter;
        lifter.id = {id};
        all.push_back(lifter);
    }
    return all;
}

} // namespace

TEST(LiftEstimate, AssistanceWorkSaysNothingOfTheMax)
{
    std::vector<Variation> catalogue = kCatalogue;
    catalogue.push_back(variation(4, Lift::bench, false, 0.7));
    catalogue.back().assistance = true;
    const LiftLogs logs = liftLogs(lifters({7}), catalogue,
        {session(7, QDate(2026, 3, 2), {single(4, 80), single(2, 100)})}, Lift::bench);
    EXPECT_THAT(logs.rows, testing::ElementsAre(VariationId{2}, VariationId{1}));
    ASSERT_EQ(logs.logs[0].sessions.size(), 1u);
    EXPECT_EQ(logs.logs[0].sessions[0].sets.size(), 1u);
}

TEST(LiftEstimate, TheCompetitionLiftIsTheEnginesFirstRow)
{
    const auto all = estimateAll(lifters({7}), kCatalogue, {}, QDate(2026, 3, 2));
    const LiftEstimate &bench = all.at({LifterId{7}, Lift::bench});
    EXPECT_THAT(bench.rows, testing::ElementsAre(VariationId{2}, VariationId{1}));
    EXPECT_EQ(bench.rowOf({1}), 1);
    EXPECT_EQ(bench.rowOf({3}), -1);
    EXPECT_EQ(bench.priors.front().spread, 0.0);
}

TEST(LiftEstimate, EachLiftReadsItsOwnSetsOnly)
{
    const QDate day(2026, 3, 2);
    const auto all = estimateAll(lifters({7, 8}), kCatalogue,
        {session(7, day, {single(2, 100.0), single(3, 150.0)}), session(8, day, {single(3, 90.0)})},
        day);

    const LiftEstimate &bench = all.at({LifterId{7}, Lift::bench});
    ASSERT_EQ(bench.readings.size(), 1u);
    EXPECT_THAT(bench.readings.front().sets, testing::ElementsAre(single(2, 100.0)));
    const LiftEstimate &squat = all.at({LifterId{7}, Lift::squat});
    ASSERT_TRUE(squat.estimate.maxOn(engineDay(day)).has_value());
    EXPECT_GT(squat.estimate.maxOn(engineDay(day))->kg, bench.estimate.maxOn(engineDay(day))->kg);
}

TEST(LiftEstimate, ALifterWithoutSetsHasNoEstimateButIsThere)
{
    const auto all = estimateAll(lifters({7}), kCatalogue, {}, QDate(2026, 3, 2));
    EXPECT_EQ(all.at({LifterId{7}, Lift::bench}).estimate.standing, strength::Standing::noData);
    EXPECT_EQ(all.count({LifterId{7}, Lift::deadlift}), 0u); // no competition deadlift here
}

TEST(LiftEstimate, EngineDaysCountFromTheEpoch)
{
    EXPECT_EQ(engineDay(QDate(1970, 1, 1)), 0);
    EXPECT_EQ(engineDay(QDate(2026, 3, 2)), 20514); // POSIX: date -d 2026-03-02 +%s / 86400
    EXPECT_EQ(fromEngineDay(20514), QDate(2026, 3, 2));
}

TEST(LiftEstimate, ALeadRepSetIsReadByPart)
{
    SetEntry set = single(2, 80.0);
    set.repsDone = 3;
    set.lead = {{1}, 1};
    SetEntry endedInLead = set;
    endedInLead.repsDone = 0;
    endedInLead.failed = true;
    SetEntry otherLift = set;
    otherLift.lead = {{3}, 1};
    const LiftLogs logs = liftLogs(lifters({7}), kCatalogue,
        {session(7, QDate(2026, 3, 2), {set, endedInLead, otherLift})}, Lift::bench);
    const std::vector<strength::TrainingSet> &sets = logs.logs[0].sessions[0].sets;
    EXPECT_EQ(sets[0].variation, 0);
    EXPECT_EQ(sets[0].leadVariation, 1);
    EXPECT_EQ(sets[0].leadReps, 1);
    EXPECT_EQ(sets[1].variation, 1) << "the missed rep was one of the lead variation";
    EXPECT_EQ(sets[1].leadReps, 0);
    EXPECT_EQ(sets[2].leadReps, 0);
    EXPECT_NO_THROW((void)strength::estimateRoster(logs.logs, logs.priors, 0));
}

TEST(LiftEstimate, SomeLiftersByWhatWasLearntOfAllAreAsInTheFitOfAll)
{
    std::vector<LoggedSession> sessions;
    for (int week = 0; week < 12; ++week)
        for (const qint64 id : {7, 8})
            sessions.push_back(session(id, QDate(2026, 3, 2).addDays(7 * week),
                {single(2, 100.0 + week), single(1, 92.5 + week)}));
    const QDate today = lastDayOf(sessions);
    const RosterFit all = fitRoster(lifters({7, 8}), kCatalogue, sessions, today);
    std::vector<LoggedSession> own;
    for (const LoggedSession &session : sessions)
        if (session.lifter == LifterId{8})
            own.push_back(session);
    const LiftEstimates some = fitSome(lifters({8}), kCatalogue, own, all.learnt, today);
    ASSERT_EQ(some.size(), 2u) << "bench and squat";
    const LiftEstimate &alone = some.at({LifterId{8}, Lift::bench});
    const LiftEstimate &among = all.estimates.at({LifterId{8}, Lift::bench});
    EXPECT_EQ(alone.readings, among.readings);
    EXPECT_EQ(alone.rows, among.rows);
    EXPECT_DOUBLE_EQ(
        alone.estimate.weeks.back().filtered.kg, among.estimate.weeks.back().filtered.kg);
    EXPECT_DOUBLE_EQ(
        alone.estimate.variations[1].ratio.value, among.estimate.variations[1].ratio.value);
}

TEST(LiftEstimate, OneLifterWithASetOfTodayMakesNobodyElseOlder)
{
    // A log that ended 21 months ago is out of date, whoever has trained since; one that goes on is
    // not.
    const QDate today(2026, 11, 28);
    std::vector<SetEntry> sets{single(2, 93.0), single(2, 87.0), single(2, 80.0)};
    sets[0].rpe = sets[1].rpe = 8.0;
    sets[2].rpe = 7.0;
    sets[1].repsDone = 3;
    sets[2].repsDone = 5;
    std::vector<LoggedSession> sessions;
    for (int week = 0; week < 20; ++week)
        for (const int day : {0, 3}) {
            const int ago = 7 * week + day;
            sessions.push_back(session(7, today.addMonths(-21).addDays(-ago), sets));
            sessions.push_back(session(8, today.addDays(-2 - ago), sets));
        }
    const auto before = estimateAll(lifters({7, 8, 9}), kCatalogue, sessions, today);
    sessions.push_back(session(9, today, {single(2, 60.0)}));
    const auto after = estimateAll(lifters({7, 8, 9}), kCatalogue, sessions, today);
    for (const auto *all : {&before, &after}) {
        const auto standing = [all](qint64 id) {
            return all->at({LifterId{id}, Lift::bench}).estimate.standing;
        };
        EXPECT_EQ(standing(7), strength::Standing::stale);
        EXPECT_EQ(standing(8), strength::Standing::enough);
    }
    const strength::LifterEstimate &old = before.at({LifterId{7}, Lift::bench}).estimate;
    const strength::Band now = *old.maxOn(engineDay(today));
    const strength::Band then = old.weeks.back().filtered;
    EXPECT_LT(now.kg, 0.95 * then.kg) << "a layoff shows";
    EXPECT_GT(now.high90 / now.low90, 1.2) << "and is doubtful";
    EXPECT_LT(then.high90 / then.low90, 1.1);
}

TEST(LiftEstimate, LifterVariationsAndSetsAreHandedOverWhole)
{
    std::vector<Lifter> all = lifters({7, 8, 9});
    all[0].sex = Sex::female;
    all[0].bodyweightKg = 63.5;
    all[1].sex = Sex::male;
    std::vector<Variation> catalogue = kCatalogue;
    catalogue[0].ratioSpread = 0.07;
    catalogue[0].repCost = 1.3;
    SetEntry set = single(2, 80.0);
    set.repsPlanned = 4;
    set.repsDone = 2;
    set.rpe = 7.5;
    set.velocityMs = 0.31;
    set.failed = true;
    const LiftLogs logs =
        liftLogs(all, catalogue, {session(7, QDate(2026, 3, 2), {set})}, Lift::bench);
    using EngineSex = strength::LifterLog::Sex;
    EXPECT_EQ(logs.logs[0].sex, EngineSex::female);
    EXPECT_EQ(logs.logs[0].bodyweightKg, 63.5);
    EXPECT_EQ(logs.logs[1].sex, EngineSex::male);
    EXPECT_EQ(logs.logs[1].bodyweightKg, std::nullopt);
    EXPECT_EQ(logs.logs[2].sex, EngineSex::unstated);
    EXPECT_EQ(logs.priors[1].ratio, 0.95);
    EXPECT_EQ(logs.priors[1].spread, 0.07);
    EXPECT_EQ(logs.priors[1].repCost, 1.3);
    const strength::TrainingSet &read = logs.logs[0].sessions[0].sets[0];
    EXPECT_EQ(read.loadKg, 80.0);
    EXPECT_EQ(read.reps, 2);
    EXPECT_EQ(read.repsPlanned, 4);
    EXPECT_EQ(read.rpe, 7.5);
    EXPECT_EQ(read.velocity, 0.31);
    EXPECT_TRUE(read.missed);
}

TEST(LiftEstimate, ASetThatEndedAtItsLastLeadRepIsOneOfTheLeadVariation)
{
    SetEntry set = single(2, 80.0);
    set.lead = {{1}, 2};
    set.repsDone = 2;
    SetEntry missedNext = set;
    missedNext.failed = true;
    const LiftLogs logs = liftLogs(
        lifters({7}), kCatalogue, {session(7, QDate(2026, 3, 2), {set, missedNext})}, Lift::bench);
    const std::vector<strength::TrainingSet> &sets = logs.logs[0].sessions[0].sets;
    EXPECT_EQ(sets[0].variation, 1);
    EXPECT_EQ(sets[0].leadReps, 0);
    EXPECT_EQ(sets[1].variation, 0) << "the third rep was tried, and it was a competition rep";
    EXPECT_EQ(sets[1].leadReps, 2);
}
