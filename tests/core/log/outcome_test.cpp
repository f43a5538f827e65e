#include "core/log/outcome.h"

#include "core/log/given_score.h"
#include "core/log/roster_adherence.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

/// A day of two cards, three sets and one.
struct Trained
{
    Lifter lifter;
    std::vector<Card> cards{cardOf(1, kDay, 0, idOf("comp"), u"3x3 100kg"_qs),
        cardOf(2, kDay, 1, idOf("feet_up"), u"1x5 80kg"_qs)};
    std::vector<LoggedSession> sessions;
    std::vector<CheckIn> checkIns;
    std::vector<GivenDay> given;
    QDate today = kDay.addDays(1);

    Trained()
    {
        lifter.id = {1};
        lifter.gear = usualGear(Unit::kilogram);
    }
    SetEntry &did(qint64 card, int set, int reps, double loadKg = 100.0)
    {
        if (sessions.empty())
            sessions.push_back(sessionOf(kDay, {}));
        SetEntry entry = setOf(card == 1 ? idOf("comp") : idOf("feet_up"), loadKg, reps);
        entry.answers = {{card}, set};
        sessions.front().sets.push_back(entry);
        return sessions.front().sets.back();
    }
    [[nodiscard]] std::vector<ResolvedCard> resolved() const
    {
        return asGiven(cards, lifter, builtInCatalogue(), given);
    }
    [[nodiscard]] std::map<QDate, DayOutcome> outcomes() const
    {
        const std::vector<ResolvedCard> all = resolved();
        return core::outcomes({all, sessions, checkIns, builtInCatalogue(), today},
            kDay.addDays(-6), kDay.addDays(6));
    }
    [[nodiscard]] std::vector<CardOutcome> ofCards() const { return outcomes().at(kDay).cards; }
};

} // namespace

TEST(Outcome, OfADayThatIsOverIsLeftOutAndOfOneAheadOpen)
{
    Trained day;
    EXPECT_THAT(day.ofCards(),
        ElementsAre(
            CardOutcome{{1}, Outcome::leftOut, 3, 0}, CardOutcome{{2}, Outcome::leftOut, 1, 0}));
    day.today = kDay;
    EXPECT_THAT(day.ofCards(),
        ElementsAre(CardOutcome{{1}, Outcome::open, 3, 0}, CardOutcome{{2}, Outcome::open, 1, 0}));
}

TEST(Outcome, IsDoneWithEveryRepOfEverySet)
{
    Trained day;
    for (int set = 0; set < 3; ++set)
        day.did(1, set, 3);
    day.did(2, 0, 6, 80.0);
    EXPECT_THAT(day.ofCards(),
        ElementsAre(CardOutcome{{1}, Outcome::done, 3, 3}, CardOutcome{{2}, Outcome::done, 1, 1}));
}

TEST(Outcome, IsPartlyWithSetsOpenOrCutShort)
{
    Trained day;
    day.did(1, 0, 3);
    day.did(2, 0, 4, 80.0);
    EXPECT_THAT(day.ofCards(),
        ElementsAre(
            CardOutcome{{1}, Outcome::partly, 3, 1}, CardOutcome{{2}, Outcome::partly, 1, 0}));
}

TEST(Outcome, IsMissedWhereARepWasTriedAndMissed)
{
    Trained day;
    day.did(1, 0, 3);
    day.did(1, 1, 2).failed = true;
    EXPECT_EQ(day.ofCards().front(), (CardOutcome{{1}, Outcome::missed, 3, 1}));
    EXPECT_EQ(day.outcomes().at(kDay).missed, 1);
    day.sessions.front().sets.back().repsDone = 3; // the rep missed was one more than planned
    EXPECT_EQ(day.ofCards().front(), (CardOutcome{{1}, Outcome::partly, 3, 2}));
    EXPECT_EQ(day.outcomes().at(kDay).missed, 0);
}

TEST(Outcome, TellsOfExtraSetsAndOfPain)
{
    Trained day;
    day.did(1, 0, 3);
    day.did(1, 7, 3).repsPlanned.reset(); // of no set that was planned
    day.sessions.front().sets.back().answers.reset();
    day.sessions.front().sets.back().variation = idOf("incline");
    CheckIn hurts;
    hurts.lifter = {1};
    hurts.day = kDay;
    hurts.pain = PainFlag{BodyArea::elbows, {}};
    day.checkIns = {hurts};
    EXPECT_EQ(day.outcomes().at(kDay).extra, 1);
    EXPECT_TRUE(day.outcomes().at(kDay).hasPain);
    day.checkIns.front().pain.reset();
    EXPECT_FALSE(day.outcomes().at(kDay).hasPain);
}

TEST(Outcome, OfASessionWithoutAPlanIsExtraWork)
{
    Trained day;
    day.sessions = {sessionOf(kDay.addDays(2), {setOf(idOf("comp"), 100, 3)})};
    EXPECT_EQ(day.outcomes().at(kDay.addDays(2)).extra, 1);
    EXPECT_THAT(day.outcomes().at(kDay.addDays(2)).cards, IsEmpty());
    EXPECT_EQ(day.outcomes().at(kDay.addDays(2)).missed, 0);
    day.sessions.front().sets.front().failed = true;
    EXPECT_EQ(day.outcomes().at(kDay.addDays(2)).missed, 1) << "no card has it";
    EXPECT_FALSE(day.outcomes().contains(kDay.addDays(1)));
}

TEST(Adherence, CountsWhatIsOverAndWhatIsDoneAlready)
{
    Trained day;
    day.did(1, 0, 3);
    EXPECT_EQ(adherence(day.outcomes(), day.today).share(), 0.25);
    day.today = kDay; // under way: what is open is not left out yet
    EXPECT_EQ(adherence(day.outcomes(), day.today).share(), 1.0);
    EXPECT_EQ(adherence({}, kDay).share(), std::nullopt);
}

TEST(Adherence, OfLateIsOfTheFourWeeksThatAreOver)
{
    Trained day; // a Wednesday
    day.did(1, 0, 3);
    const auto ofLate = [&day](QDate today) {
        const std::vector<ResolvedCard> all = day.resolved();
        return adherenceOfLate({all, day.sessions, day.checkIns, builtInCatalogue(), today});
    };
    EXPECT_EQ(ofLate(kDay.addDays(4)), Adherence{}) << "the week runs until Sunday";
    EXPECT_EQ(ofLate(kDay.addDays(5)), (Adherence{4, 1, 0}));
    EXPECT_EQ(ofLate(kDay.addDays(5 + 27)), (Adherence{4, 1, 0}));
    EXPECT_EQ(ofLate(kDay.addDays(5 + 28)), Adherence{}) << "the fifth week back";
}

TEST(FinishedWeeks, TellWhatBecameOfThem)
{
    Trained day;
    day.cards.push_back(cardOf(3, kDay.addDays(7), 0, idOf("comp"), u"2x3 100kg"_qs));
    day.did(1, 0, 3);
    day.did(1, 1, 2).failed = true;
    CheckIn hurts;
    hurts.lifter = {1};
    hurts.day = kDay.addDays(1); // nothing was trained
    hurts.pain = PainFlag{BodyArea::elbows, {}};
    day.checkIns = {hurts};
    const auto weeksOn = [&day](QDate today) {
        const std::vector<ResolvedCard> all = day.resolved();
        return finishedWeeks(
            {all, day.sessions, day.checkIns, builtInCatalogue(), today}, kDay.addDays(-60));
    };
    const QDate monday(2026, 3, 2);
    EXPECT_THAT(weeksOn(monday.addDays(6)), IsEmpty()) << "this week and those ahead";
    EXPECT_THAT(weeksOn(monday.addDays(7)),
        ElementsAre(std::pair(monday, WeekOutcome{{4, 1, 0}, 1, true})));
    const auto both = weeksOn(monday.addDays(14));
    ASSERT_EQ(both.size(), 2u);
    EXPECT_EQ(both.at(monday.addDays(7)), (WeekOutcome{{2, 0, 0}, 0, false}));
}

TEST(RosterAdherence, PairsTheLogOfEveryLiftWithItsCards)
{
    Trained day;
    day.cards.push_back(cardOf(3, kDay, 2, idOf("squat"), u"1x5 140kg"_qs));
    day.did(1, 0, 3);
    LiftEstimate bench, squat;
    bench.readings = day.sessions;
    SetEntry legs = setOf(idOf("squat"), 140, 5);
    legs.answers = PlannedSetRef{{3}, 0};
    squat.readings = {sessionOf(kDay, {legs})};
    Lifter other = day.lifter;
    other.id = {2};
    RosterDone roster{{day.lifter, other}, builtInCatalogue(), day.cards, {},
        [&](LifterId lifter, Lift lift) -> const LiftEstimate * {
            return lifter != day.lifter.id || lift == Lift::deadlift ? nullptr
                : lift == Lift::bench                                ? &bench
                                                                     : &squat;
        },
        kDay.addDays(7)};
    EXPECT_THAT(adherenceOfAll(roster), ElementsAre(std::pair(LifterId{1}, Adherence{5, 2, 0})))
        << "of the other no estimate is there yet";
    roster.today = kDay;
    EXPECT_THAT(adherenceOfAll(roster), ElementsAre(std::pair(LifterId{1}, Adherence{})));
}

// The score of what was given

namespace {

/// The day given with these chances of the first set of both cards.
void give(Trained &day, double first, double second)
{
    GivenDay given{
        {1}, {1}, kDay, 1, GivenBy::handOut, QDateTime(kDay.addDays(-2), QTime(9, 0), Qt::UTC), {}};
    for (const Card &card : day.cards) {
        GivenLine line;
        line.loadKg = card.id.value == 1 ? 100.0 : 80.0;
        line.firstMade = card.id.value == 1 ? first : second;
        given.cards.push_back({card.id, card.variation, card.setLine, {}, {line}});
    }
    day.given = {given};
}

GivenScore scoreOf(const Trained &day)
{
    return scoreGiven(day.resolved(), day.sessions, builtInCatalogue());
}

} // namespace

TEST(GivenScore, CountsTheFirstSetOfALineInTheTenthOfItsChance)
{
    Trained day;
    give(day, 0.79, 0.8);
    day.did(1, 0, 3);
    day.did(1, 1, 1).failed = true; // a later set counts no more
    day.did(2, 0, 4, 80.0).failed = true;
    const GivenScore score = scoreOf(day);
    EXPECT_EQ(score[7], (GivenTenth{1, 1, 0.79}));
    EXPECT_EQ(score[8], (GivenTenth{1, 0, 0.8}));
    EXPECT_EQ(score[6], GivenTenth{});
}

TEST(GivenScore, ACertainSetIsInTheLastTenth)
{
    Trained day;
    give(day, 1.0, 0.0);
    day.did(1, 0, 3);
    day.did(2, 0, 5, 80.0);
    EXPECT_EQ(scoreOf(day)[9].sets, 1);
    EXPECT_EQ(scoreOf(day)[0].sets, 1);
}

TEST(GivenScore, LeavesOutWhatWasNotTriedAsGiven)
{
    Trained day;
    give(day, 0.75, 0.75);
    EXPECT_EQ(scoreOf(day)[7].sets, 0) << "not tried";
    day.did(1, 0, 3, 97.5);
    EXPECT_EQ(scoreOf(day)[7].sets, 0) << "another load";
    day.sessions.front().sets.front().loadKg = 100.0;
    EXPECT_EQ(scoreOf(day)[7].sets, 1);
    day.given.clear();
    EXPECT_EQ(scoreOf(day)[7].sets, 0) << "it was not given";
}

TEST(GivenScore, OfASetCutShortIsThatItWasNotMade)
{
    Trained day;
    give(day, 0.75, 0.75);
    day.did(2, 0, 3, 80.0);
    EXPECT_EQ(scoreOf(day)[7], (GivenTenth{1, 0, 0.75}));
}

TEST(GivenScore, AddsUpOverLifters)
{
    GivenScore a{}, b{};
    a[3] = {2, 1, 0.7};
    b[3] = {1, 1, 0.35};
    EXPECT_EQ((a + b)[3].sets, 3);
    EXPECT_EQ((a + b)[3].made, 2);
    EXPECT_DOUBLE_EQ((a + b)[3].chance, 1.05);
}
