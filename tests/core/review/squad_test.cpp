#include "core/review/squad.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <map>

using namespace core;

namespace {

const QDate kToday(2026, 3, 18); // a Wednesday

struct Squad : testing::Test
{
    Squad()
    {
        for (int i = 1; i <= 3; ++i) {
            Lifter lifter;
            lifter.id = {i};
            lifter.name = QStringLiteral("Lifter %1").arg(i);
            lifters.push_back(lifter);
            // This week and two more, so that nobody lacks a plan.
            for (int week = 0; week < 3; ++week)
                plan(lifter.id, QDate(2026, 3, 20).addDays(7 * week));
            benches[lifter.id] = bench(100.0, 100.0);
        }
    }

    static LiftEstimate bench(double fromKg, double toKg)
    {
        LiftEstimate lift;
        lift.estimate.standing = strength::Standing::enough;
        for (int week = 0; week < 20; ++week) {
            const double kg = fromKg + (toKg - fromKg) * std::max(week - 15, 0) / 4.0;
            strength::WeekEstimate estimate;
            estimate.sunday = engineDay(QDate(2026, 3, 15)) - 7 * (19 - week);
            estimate.smoothed = estimate.filtered = {kg, kg - 3, kg + 3};
            lift.estimate.weeks.push_back(estimate);
        }
        LoggedSession session;
        session.day = kToday.addDays(-2);
        SetEntry set;
        set.loadKg = 90;
        set.repsDone = 3;
        session.sets = {set};
        lift.readings = {session};
        return lift;
    }
    void plan(LifterId lifter, QDate day)
    {
        Card card;
        card.lifter = lifter;
        card.day = day;
        cards.push_back(card);
    }
    CheckIn &checkIn(LifterId lifter, int daysAgo)
    {
        CheckIn one;
        one.lifter = lifter;
        one.day = kToday.addDays(-daysAgo);
        checkIns.push_back(one);
        return checkIns.back();
    }
    [[nodiscard]] std::vector<SquadRow> rows() const
    {
        return squadRows({kToday, lifters, {}, cards, checkIns,
            [this](LifterId id, Lift lift) -> const LiftEstimate * {
                const auto it = benches.find(id);
                return lift == Lift::bench && it != benches.end() ? &it->second : nullptr;
            }});
    }
    [[nodiscard]] SquadRow row(int id) const
    {
        for (const SquadRow &row : rows())
            if (row.lifter == LifterId{id})
                return row;
        return {};
    }

    std::vector<Lifter> lifters;
    std::vector<Card> cards;
    std::vector<CheckIn> checkIns;
    std::map<LifterId, LiftEstimate> benches;
};

} // namespace

TEST_F(Squad, ACalmRosterIsInOrderOfNamesWithNothingToSay)
{
    const auto all = rows();
    ASSERT_EQ(all.size(), 3u);
    EXPECT_EQ(all[0].name.toStdString(), "Lifter 1");
    EXPECT_EQ(all[0].attention, 0.0);
    EXPECT_EQ(all[0].why().toStdString(), "Nothing stands out.");
    EXPECT_EQ(all[0].trendKg.size(), 12u);
    EXPECT_EQ(all[0].trendWords.toStdString(), "level");
    EXPECT_EQ(all[0].plannedWeeks, 3);
    EXPECT_EQ(all[0].lastSession, kToday.addDays(-2));
}

TEST_F(Squad, PainComesBeforeEverythingElse)
{
    for (int day = 1; day <= 10; ++day)
        plan({2}, kToday.addDays(-day - 3));
    checkIn({3}, 1).pain = PainFlag{BodyArea::shoulders, {}};
    const auto all = rows();
    EXPECT_EQ(all[0].lifter, LifterId{3});
    EXPECT_THAT(all[0].why().toStdString(), testing::HasSubstr("refer"));
    EXPECT_TRUE(all[0].leadsToPlan());
    EXPECT_EQ(all[1].lifter, LifterId{2});
    EXPECT_EQ(all[1].missed, 10);
}

TEST_F(Squad, PainAndReadinessAreOfTheLastCheckInOnlyAndGrowOld)
{
    checkIn({1}, 20).pain = PainFlag{BodyArea::back, {}};
    EXPECT_EQ(row(1).pain, std::nullopt);
    checkIn({2}, 5).pain = PainFlag{BodyArea::back, {}};
    CheckIn &well = checkIn({2}, 1);
    well.sleep = 2;
    EXPECT_EQ(row(2).pain, std::nullopt) << "the later check-in says nothing of pain";
    EXPECT_EQ(row(2).readiness, 2.0);
    EXPECT_EQ(row(2).terms.front().about, AttentionTerm::About::readiness);
}

TEST_F(Squad, ADayCountsAsMissedOnlyWhenItIsOverAndNothingWasDone)
{
    plan({1}, kToday);
    plan({1}, kToday.addDays(-2)); // trained
    EXPECT_EQ(row(1).missed, 0);
    plan({1}, kToday.addDays(-1));
    EXPECT_EQ(row(1).missed, 1);
    plan({1}, kToday.addDays(-kSquadLookBackDays - 1));
    EXPECT_EQ(row(1).missed, 1);
}

TEST_F(Squad, AFallingMaxIsSaidWithItsNumber)
{
    benches[{2}] = bench(100.0, 96.0);
    const SquadRow falling = row(2);
    EXPECT_NEAR(*falling.fourWeekChange, -0.04, 1e-12);
    EXPECT_EQ(falling.trendWords.toStdString(), "down 4.0 %");
    EXPECT_EQ(rows().front().lifter, LifterId{2});
    EXPECT_FALSE(falling.leadsToPlan());
}

TEST_F(Squad, MeetPlanAndSurpriseEachHaveTheirWords)
{
    lifters[0].meetDate = kToday.addDays(9);
    EXPECT_EQ(row(1).daysToMeet, 9);
    lifters[0].meetDate = kToday.addDays(-1);
    EXPECT_EQ(row(1).daysToMeet, std::nullopt);

    std::erase_if(cards, [](const Card &card) { return card.lifter == LifterId{2}; });
    EXPECT_EQ(row(2).plannedWeeks, 0);
    EXPECT_EQ(row(2).terms.front().about, AttentionTerm::About::unplanned);

    benches[{3}].estimate.pulls = {{0, 0, -3.0, -1.0}};
    ASSERT_TRUE(row(3).surprise);
    EXPECT_THAT(row(3).surprise->words.toStdString(), testing::HasSubstr("worse than forecast"));
    EXPECT_THAT(row(3).why().toStdString(), testing::HasSubstr("90 kg"));
}

TEST_F(Squad, ArchivedLiftersAreLeftOutAndEstimatesMayBeMissing)
{
    lifters[0].archived = true;
    benches.clear();
    EXPECT_EQ(rows().size(), 2u);
    EXPECT_EQ(row(2).max, std::nullopt);
    EXPECT_EQ(row(2).trendWords.toStdString(), "no sets yet");
}
