#include "tests/ui/board/board_roster.h"

#include <QSignalSpy>
#include <QTest>
#include <gmock/gmock.h>

using namespace core;

namespace {

constexpr int kPatienceMs = 20'000;

class EstimatesTest : public testing::Test
{
protected:
    EstimatesTest()
        : other(roster.addLifter(QStringLiteral("Bo"), TouchStyle::sinking))
    {
        QSignalSpy fitted(&roster.estimates, &ui::Estimates::rosterFitted);
        roster.logBench(other); // the first log of a lifter: fitted alone, then with the roster
        EXPECT_TRUE(fitted.wait(kPatienceMs));
        roster.waitForEstimate(other);
        EXPECT_TRUE(QTest::qWaitFor([this] { return !roster.estimates.isBusy(); }, kPatienceMs));
    }

    void log(QDate day, double loadKg, int reps, std::optional<double> rpe = {})
    {
        SetEntry set;
        set.variation = roster.variation("comp");
        set.loadKg = loadKg;
        set.repsDone = reps;
        set.rpe = rpe;
        LoggedSession session;
        session.id = roster.session.newId<LoggedSession>();
        session.lifter = roster.lifter;
        session.day = day;
        session.sets = {set};
        Edit edit;
        edit.sessions.after = {session};
        ASSERT_TRUE(roster.session.perform(QStringLiteral("Log"), edit));
    }
    void logSingle() { log(roster.monday, 125.0, 1, 8.0); }

    [[nodiscard]] double maxOf(LifterId lifter) const
    {
        return roster.estimates.of(lifter, Lift::bench)->estimate.weeks.back().filtered.kg;
    }

    BoardRoster roster;
    LifterId other;
};

} // namespace

TEST_F(EstimatesTest, ALifterWhoseLogChangesIsFittedAloneAtOnceAndTheRosterWhenAllIsQuiet)
{
    QSignalSpy changed(&roster.estimates, &ui::Estimates::changed);
    QSignalSpy fitted(&roster.estimates, &ui::Estimates::rosterFitted);
    const double before = maxOf(roster.lifter);
    const LiftEstimate *untouched = roster.estimates.of(other, Lift::bench);
    logSingle();
    ASSERT_TRUE(changed.wait(kPatienceMs));
    EXPECT_GT(maxOf(roster.lifter), before);
    EXPECT_EQ(roster.estimates.of(other, Lift::bench), untouched);
    EXPECT_TRUE(fitted.isEmpty());

    const double alone = maxOf(roster.lifter);
    ASSERT_TRUE(fitted.wait(kPatienceMs));
    EXPECT_NE(roster.estimates.of(other, Lift::bench), untouched);
    EXPECT_NEAR(maxOf(roster.lifter) / alone, 1.0, 0.005) << "the roster has learnt little from it";
}

TEST_F(EstimatesTest, UndoTakesTheEstimateBack)
{
    QSignalSpy changed(&roster.estimates, &ui::Estimates::changed);
    const double before = maxOf(roster.lifter);
    logSingle();
    ASSERT_TRUE(changed.wait(kPatienceMs));
    roster.session.undo();
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return std::abs(maxOf(roster.lifter) / before - 1.0) < 1e-9; }, kPatienceMs));
}

TEST_F(EstimatesTest, SetsInQuickSuccessionAreAllSeen)
{
    const size_t before = roster.estimates.of(roster.lifter, Lift::bench)->readings.size();
    for (int day = 0; day < 5; ++day)
        log(roster.monday.addDays(day), 100.0, 3);
    roster.waitForEstimate(roster.lifter);
    EXPECT_EQ(roster.estimates.of(roster.lifter, Lift::bench)->readings.size(), before + 5);
}

TEST_F(EstimatesTest, AnotherDayCarriesAllEstimatesOnToIt)
{
    const auto estimate = [this](LifterId lifter) {
        return roster.estimates.of(lifter, Lift::bench)->estimate;
    };
    const QDate before = roster.clock.today.date();
    EXPECT_EQ(estimate(roster.lifter).asOf, engineDay(before));
    EXPECT_EQ(estimate(roster.lifter).standing, strength::Standing::enough);
    QSignalSpy fitted(&roster.estimates, &ui::Estimates::rosterFitted);
    const QDate later = before.addDays(60);
    roster.clock.set(later);
    ASSERT_TRUE(fitted.wait(kPatienceMs));
    for (const LifterId lifter : {roster.lifter, other}) {
        EXPECT_EQ(estimate(lifter).asOf, engineDay(later));
        EXPECT_EQ(estimate(lifter).standing, strength::Standing::stale);
    }
}

TEST_F(EstimatesTest, ALifterWhoTrainsTodayMakesNobodyElseOutOfDate)
{
    const QDate later = roster.clock.today.date().addDays(60);
    QSignalSpy fitted(&roster.estimates, &ui::Estimates::rosterFitted);
    roster.clock.set(later);
    ASSERT_TRUE(fitted.wait(kPatienceMs));
    const strength::Band stale =
        *roster.estimates.of(other, Lift::bench)->estimate.maxOn(engineDay(later));
    log(later, 100.0, 3, 8.0);
    ASSERT_TRUE(fitted.wait(kPatienceMs));
    EXPECT_NE(roster.estimates.of(roster.lifter, Lift::bench)->estimate.standing,
        strength::Standing::stale);
    const strength::Band same =
        *roster.estimates.of(other, Lift::bench)->estimate.maxOn(engineDay(later));
    EXPECT_NEAR(same.kg / stale.kg, 1.0, 0.005);
}
