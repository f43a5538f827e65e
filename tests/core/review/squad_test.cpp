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

TEST_F(Squad, PainStandsUntilItIsAnsweredAndReadinessIsOfTheLastCheckIn)
{
    checkIn({1}, 20).pain = PainFlag{BodyArea::back, {}};
    EXPECT_TRUE(row(1).pain) << "nobody has said that it is gone";
    checkIn({2}, 5).pain = PainFlag{BodyArea::back, {}};
    CheckIn &well = checkIn({2}, 1);
    well.sleep = 2;
    EXPECT_TRUE(row(2).pain) << "the later check-in says nothing of pain";
    checkIns.back().isPainFree = true;
    EXPECT_EQ(row(2).pain, std::nullopt);
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

// From when on, and up to when, each reason is given: common practice, no source.

namespace {

double pointsOf(const SquadRow &row, AttentionTerm::About about)
{
    double points = 0.0;
    for (const AttentionTerm &term : row.terms)
        points += term.about == about ? term.points : 0.0;
    return points;
}

} // namespace

TEST_F(Squad, ReadinessIsRememberedForAWeek)
{
    CheckIn &said = checkIn({1}, 14);
    said.pain = PainFlag{BodyArea::back, {}};
    said.sleep = 1;
    EXPECT_EQ(row(1).readiness, std::nullopt);
    checkIns[0].day = kToday.addDays(-7);
    EXPECT_EQ(row(1).readiness, 1.0);
    checkIns[0].day = kToday.addDays(-8);
    EXPECT_EQ(row(1).readiness, std::nullopt);
    checkIns[0].day = kToday;
    EXPECT_EQ(row(1).readiness, 1.0);
    checkIns[0].day = kToday.addDays(1);
    EXPECT_EQ(row(1).readiness, std::nullopt) << "tomorrow is not known";
}

TEST_F(Squad, ReadinessIsLowBelowTwoAndAHalf)
{
    CheckIn &said = checkIn({1}, 0);
    said.sleep = 2;
    said.stress = 3;
    EXPECT_EQ(pointsOf(row(1), AttentionTerm::About::readiness), 0.0);
    checkIns[0].motivation = 2;
    EXPECT_GT(pointsOf(row(1), AttentionTerm::About::readiness), 0.0);
}

TEST_F(Squad, TheTrendIsUpOrDownFromOnePercentInFourWeeks)
{
    const auto words = [this](double kg) {
        benches[{1}] = bench(100.0, kg);
        return row(1).trendWords.toStdString();
    };
    EXPECT_EQ(words(101.1), "up 1.1 %");
    EXPECT_EQ(words(100.9), "level");
    EXPECT_EQ(words(99.1), "level");
    EXPECT_EQ(words(98.9), "down 1.1 %");
    EXPECT_EQ(pointsOf(row(1), AttentionTerm::About::falling), 0.0);
    EXPECT_EQ(words(98.6), "down 1.4 %");
    EXPECT_EQ(pointsOf(row(1), AttentionTerm::About::falling), 0.0) << "not yet worth a word";
    EXPECT_EQ(words(98.4), "down 1.6 %");
    const double little = pointsOf(row(1), AttentionTerm::About::falling);
    EXPECT_GT(little, 0.0);
    EXPECT_EQ(words(97.0), "down 3.0 %");
    EXPECT_GT(pointsOf(row(1), AttentionTerm::About::falling), little);
}

TEST_F(Squad, AFiveWeekLogHasATrendAndAShorterOneIsTooNew)
{
    auto &weeks = benches[{1}].estimate.weeks;
    weeks.erase(weeks.begin(), weeks.end() - 5);
    EXPECT_EQ(row(1).trendWords.toStdString(), "level");
    EXPECT_EQ(row(1).trendKg.size(), 5u);
    weeks.erase(weeks.begin());
    EXPECT_EQ(row(1).trendWords.toStdString(), "too new");
    EXPECT_EQ(row(1).fourWeekChange, std::nullopt);
    EXPECT_EQ(row(1).max->kg, 100.0);
}

TEST_F(Squad, TenDaysWithoutASessionAreAway)
{
    LoggedSession &last = benches[{1}].readings.front();
    last.day = kToday.addDays(-9);
    EXPECT_EQ(pointsOf(row(1), AttentionTerm::About::away), 0.0);
    last.day = kToday.addDays(-10);
    EXPECT_GT(pointsOf(row(1), AttentionTerm::About::away), 0.0);
    EXPECT_EQ(row(1).lastSession, last.day);
    last.day = kToday.addDays(1);
    EXPECT_EQ(row(1).lastSession, std::nullopt) << "of days to come nothing is done";
}

TEST_F(Squad, TheMeetIsNearForFourWeeksAndTheNearerTheMoreUrgent)
{
    const auto points = [this](int days) {
        lifters[0].meetDate = kToday.addDays(days);
        return pointsOf(row(1), AttentionTerm::About::meet);
    };
    EXPECT_EQ(points(29), 0.0);
    EXPECT_GT(points(28), 0.0);
    EXPECT_GT(points(27), points(28));
    EXPECT_GT(points(0), points(14));
}

TEST_F(Squad, ALackingPlanIsUrgentThisWeekAndWorthAWordNextWeek)
{
    const auto about = AttentionTerm::About::unplanned;
    EXPECT_EQ(pointsOf(row(1), about), 0.0);
    std::erase_if(cards, [](const Card &card) { return card.day > kToday.addDays(7); });
    EXPECT_EQ(row(1).plannedWeeks, 1);
    const double nextWeek = pointsOf(row(1), about);
    EXPECT_GT(nextWeek, 0.0);
    plan({1}, kToday.addDays(7 * 3)); // behind a gap
    EXPECT_EQ(row(1).plannedWeeks, 1);
    std::erase_if(cards, [](const Card &card) { return card.day <= kToday.addDays(7); });
    EXPECT_EQ(row(1).plannedFrom, QDate(2026, 4, 6));
    EXPECT_GT(pointsOf(row(1), about), nextWeek);
    cards.clear();
    EXPECT_EQ(row(1).plannedWeeks, 0);
    EXPECT_GT(pointsOf(row(1), about), nextWeek);
}

TEST_F(Squad, APlanFromNextMondayOnCountsFromThere)
{
    std::erase_if(cards, [](const Card &card) { return card.day < QDate(2026, 3, 23); });
    const SquadRow next = row(1);
    EXPECT_EQ(next.plannedWeeks, 2);
    EXPECT_EQ(next.plannedFrom, QDate(2026, 3, 23));
    EXPECT_FALSE(next.isThisWeekPlanned());
    EXPECT_EQ(next.why().toStdString(), "Nothing is planned before 23 Mar 2026.");
}

TEST_F(Squad, ALoadInPoundsReadsAsFarAsPlatesGo)
{
    lifters[0].unit = Unit::pound;
    benches[{1}].readings.front().sets.front().loadKg = 102.5;
    benches[{1}].estimate.pulls = {{0, 0, -3.0, -1.0}};
    EXPECT_THAT(row(1).surprise->done.toStdString(), testing::HasSubstr("3 x 226 lb"));
}

TEST_F(Squad, EveryMissedDayCountsUpToFour)
{
    const auto about = AttentionTerm::About::missed;
    double before = 0.0;
    for (int day = 3; day < 7; ++day) {
        plan({1}, kToday.addDays(-day));
        EXPECT_GT(pointsOf(row(1), about), before);
        before = pointsOf(row(1), about);
    }
    plan({1}, kToday.addDays(-kSquadLookBackDays));
    EXPECT_EQ(row(1).missed, 5);
    EXPECT_EQ(pointsOf(row(1), about), before);
}

TEST_F(Squad, ASetIsASurpriseFromTwoAndAHalfSdOn)
{
    const auto about = AttentionTerm::About::surprise;
    auto &pulls = benches[{1}].estimate.pulls;
    pulls = {{0, 0, 2.4, 1.0}};
    EXPECT_EQ(pointsOf(row(1), about), 0.0);
    EXPECT_TRUE(row(1).surprise->words.startsWith(QStringLiteral("better")));
    pulls = {{0, 0, 2.5, 1.0}};
    const double least = pointsOf(row(1), about);
    EXPECT_GT(least, 0.0);
    pulls = {{0, 0, -4.0, 1.0}};
    EXPECT_GT(pointsOf(row(1), about), least);
    pulls = {{0, 0, -4.0, 1.0}, {0, 0, 3.0, 1.0}};
    EXPECT_EQ(row(1).surprise->sd, -4.0) << "the furthest from its forecast";
    pulls = {{0, 0, 3.0, 1.0}, {0, 0, -4.0, 1.0}};
    EXPECT_EQ(row(1).surprise->sd, -4.0);
    benches[{1}].readings.front().day = kToday.addDays(-28);
    EXPECT_TRUE(row(1).surprise);
    benches[{1}].readings.front().day = kToday.addDays(-29);
    EXPECT_FALSE(row(1).surprise) << "long ago";
}

TEST_F(Squad, ReasonsComeMostUrgentFirstAndAddUp)
{
    benches[{1}] = bench(100.0, 96.0);
    benches[{1}].estimate.standing = strength::Standing::conflicting;
    checkIn({1}, 1).pain = PainFlag{BodyArea::back, {}};
    const SquadRow all = row(1);
    ASSERT_EQ(all.terms.size(), 3u);
    EXPECT_EQ(all.terms[0].about, AttentionTerm::About::pain);
    EXPECT_EQ(all.terms[1].about, AttentionTerm::About::falling);
    EXPECT_EQ(all.terms[2].about, AttentionTerm::About::conflict);
    EXPECT_DOUBLE_EQ(
        all.attention, all.terms[0].points + all.terms[1].points + all.terms[2].points);
}

TEST_F(Squad, WhereNothingStandsOutThereIsNothingToPlan)
{
    EXPECT_FALSE(row(1).leadsToPlan());
    lifters[0].meetDate = kToday.addDays(9);
    EXPECT_TRUE(row(1).leadsToPlan());
}

TEST_F(Squad, AFallCountsUpToFourPercent)
{
    const auto points = [this](double kg) {
        benches[{1}] = bench(100.0, kg);
        return pointsOf(row(1), AttentionTerm::About::falling);
    };
    EXPECT_GT(points(96.2), points(96.4));
    EXPECT_EQ(points(95.9), points(90.0));
}

TEST_F(Squad, TheUrgencyOfEachReasonInPoints)
{
    // Points are made up, but the order of a squad is made of them: one reason against several.
    using About = AttentionTerm::About;
    CheckIn &said = checkIn({1}, 0);
    said.pain = PainFlag{BodyArea::back, {}};
    said.sleep = 2;
    EXPECT_DOUBLE_EQ(pointsOf(row(1), About::pain), 100.0);
    EXPECT_DOUBLE_EQ(pointsOf(row(1), About::readiness), 25.0);
    lifters[0].meetDate = kToday.addDays(28);
    EXPECT_DOUBLE_EQ(pointsOf(row(1), About::meet), 10.0);
    lifters[0].meetDate = kToday;
    EXPECT_DOUBLE_EQ(pointsOf(row(1), About::meet), 24.0) << "half a point a day";

    plan({2}, kToday.addDays(-3));
    EXPECT_DOUBLE_EQ(pointsOf(row(2), About::missed), 10.0);
    for (int day = 4; day < 10; ++day)
        plan({2}, kToday.addDays(-day));
    EXPECT_DOUBLE_EQ(pointsOf(row(2), About::missed), 40.0) << "up to four";
    benches[{2}] = bench(100.0, 98.0);
    EXPECT_NEAR(pointsOf(row(2), About::falling), 20.0, 1e-9) << "ten a per cent";
    benches[{2}] = bench(100.0, 90.0);
    EXPECT_DOUBLE_EQ(pointsOf(row(2), About::falling), 40.0) << "up to four per cent";

    LiftEstimate &third = benches[{3}];
    third.estimate.standing = strength::Standing::conflicting;
    third.estimate.pulls = {{0, 0, -4.0, 1.0}};
    EXPECT_DOUBLE_EQ(pointsOf(row(3), About::conflict), 6.0);
    EXPECT_DOUBLE_EQ(pointsOf(row(3), About::surprise), 12.0) << "three an SD";
    third.estimate.pulls = {{0, 0, 7.0, 1.0}};
    EXPECT_DOUBLE_EQ(pointsOf(row(3), About::surprise), 15.0) << "up to five of them";
    third.readings.front().day = kToday.addDays(-12);
    EXPECT_DOUBLE_EQ(pointsOf(row(3), About::away), 15.0);
    std::erase_if(cards, [](const Card &card) { return card.day > kToday.addDays(7); });
    EXPECT_DOUBLE_EQ(pointsOf(row(3), About::unplanned), 8.0);
    cards.clear();
    EXPECT_DOUBLE_EQ(pointsOf(row(3), About::unplanned), 20.0);
}

TEST_F(Squad, TheTrendComparesWithTheSundayFourWeeksBefore)
{
    auto &weeks = benches[{1}].estimate.weeks;
    weeks[weeks.size() - 5].smoothed.kg = 80.0;
    EXPECT_DOUBLE_EQ(*row(1).fourWeekChange, 0.25);
    weeks[weeks.size() - 5].smoothed.kg = 100.0;
    weeks[weeks.size() - 4].smoothed.kg = weeks[weeks.size() - 6].smoothed.kg = 80.0;
    EXPECT_DOUBLE_EQ(*row(1).fourWeekChange, 0.0);
    EXPECT_EQ(row(1).trendKg.back(), weeks.back().smoothed.kg);
    EXPECT_EQ(row(1).trendKg.front(), weeks[weeks.size() - 12].smoothed.kg);
}

TEST_F(Squad, ALayoffCountsInTheMaxAndALiftersOtherLiftsAsTraining)
{
    benches[{1}].estimate.idle = {engineDay(kToday), {91.0, 85.0, 97.0}};
    EXPECT_EQ(row(1).max->kg, 91.0);
    LoggedSession old = benches[{1}].readings.front();
    old.day = kToday.addDays(-20);
    benches[{1}].readings.push_back(old);
    EXPECT_EQ(row(1).lastSession, kToday.addDays(-2)) << "the last of them, in any order";
}

TEST_F(Squad, OfTwoCheckInsOfADayTheLaterOneCountsAndTheNextDaysAreUnknown)
{
    checkIn({1}, 1).sleep = 1;
    checkIn({1}, 1).sleep = 4;
    checkIn({1}, 3).sleep = 2;
    EXPECT_EQ(row(1).readiness, 4.0);
}
