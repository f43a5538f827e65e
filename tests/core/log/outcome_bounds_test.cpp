#include "core/log/given_score.h"
#include "core/log/outcome.h"
#include "core/log/trained_days.h"
#include "tests/core/plan/plan_rows.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

const QDate kDoneDay(2026, 3, 4);

/// One card of two sets that was given with a chance.
struct DoneDay
{
    Lifter lifter;
    std::vector<Card> cards{cardOf(1, kDoneDay, 0, idOf("comp"), u"2x3 100kg"_qs)};
    std::vector<GivenDay> given;
    std::vector<LoggedSession> sessions{sessionOf(kDoneDay, {})};

    DoneDay()
    {
        lifter.id = {1};
        lifter.gear = usualGear(Unit::kilogram);
        GivenDay day{{1}, {1}, kDoneDay, 1, GivenBy::handOut,
            QDateTime(kDoneDay.addDays(-2), QTime(9, 0), Qt::UTC), {}};
        GivenLine line;
        line.loadKg = 100.0;
        line.firstMade = 0.75;
        day.cards.push_back({{1}, cards[0].variation, cards[0].setLine, {}, {line}});
        given = {day};
    }
    SetEntry &did(int set, double loadKg = 100.0, int reps = 3)
    {
        SetEntry &entry = sessions[0].sets.emplace_back(setOf(idOf("comp"), loadKg, reps));
        entry.answers = {{1}, set};
        return entry;
    }
    [[nodiscard]] GivenTenth scored() const
    {
        return scoreGiven(
            asGiven(cards, lifter, builtInCatalogue(), given), sessions, builtInCatalogue())[7];
    }
    [[nodiscard]] CardOutcome outcome() const
    {
        const auto resolved = asGiven(cards, lifter, builtInCatalogue(), {});
        return outcomes(
            {resolved, sessions, {}, builtInCatalogue(), kDoneDay.addDays(1)}, kDoneDay, kDoneDay)
            .at(kDoneDay)
            .cards.at(0);
    }
};

} // namespace

TEST(GivenScoreBounds, ALoadCountsAsGivenUpToHalfAKiloBesideIt)
{
    const auto counts = [](double loadKg) {
        DoneDay day;
        day.did(0, loadKg);
        return day.scored().sets == 1;
    };
    EXPECT_TRUE(counts(100.5));
    EXPECT_FALSE(counts(100.51));
    EXPECT_TRUE(counts(99.5));
    EXPECT_FALSE(counts(99.49));
}

TEST(GivenScoreBounds, AnotherVariationOrASetWithoutAGivenLoadDoesNotCount)
{
    DoneDay swapped;
    swapped.did(0).variation = idOf("feet_up");
    EXPECT_EQ(swapped.scored(), GivenTenth{});
    DoneDay without;
    without.cards[0].setLine = without.given[0].cards[0].setLine = u"2x3 @8"_qs;
    without.given[0].cards[0].lines[0].loadKg.reset();
    without.did(0);
    EXPECT_EQ(without.scored(), GivenTenth{});
}

TEST(GivenScoreBounds, AMissBeyondTheRepsAskedForIsMadeAllTheSame)
{
    DoneDay day;
    day.did(0, 100.0, 3).failed = true;
    EXPECT_EQ(day.scored(), (GivenTenth{1, 1, 0.75}));
    day.sessions[0].sets[0].repsDone = 2;
    EXPECT_EQ(day.scored(), (GivenTenth{1, 0, 0.75}));
    day.sessions[0].sets[0].failed = false;
    EXPECT_EQ(day.scored(), (GivenTenth{1, 0, 0.75})) << "cut short is not made either";
}

TEST(GivenScoreBounds, OfNoCardsThereIsNone)
{
    EXPECT_EQ(scoreGiven({}, DoneDay().sessions, builtInCatalogue()), GivenScore{});
}

TEST(OutcomeBounds, ACardStaysMissedWhateverFollows)
{
    DoneDay day;
    day.did(0, 100.0, 2).failed = true;
    day.did(1);
    EXPECT_EQ(day.outcome(), (CardOutcome{{1}, Outcome::missed, 2, 1}));
    day.sessions[0].sets[0].failed = false;
    EXPECT_EQ(day.outcome(), (CardOutcome{{1}, Outcome::partly, 2, 1}));
    day.sessions[0].sets[0].repsDone = 3;
    EXPECT_EQ(day.outcome(), (CardOutcome{{1}, Outcome::done, 2, 2}));
}

TEST(AdherenceBounds, AddsUpTheSetsOfItsDaysAndTheExtraOnes)
{
    std::map<QDate, DayOutcome> days;
    days[kDoneDay].cards = {
        CardOutcome{{1}, Outcome::partly, 3, 1}, CardOutcome{{2}, Outcome::done, 2, 2}};
    days[kDoneDay].extra = 1;
    days[kDoneDay.addDays(1)].cards = {CardOutcome{{3}, Outcome::partly, 4, 1}};
    days[kDoneDay.addDays(1)].extra = 2;
    const Adherence over = adherence(days, kDoneDay.addDays(2));
    EXPECT_EQ(over.sets, 9);
    EXPECT_EQ(over.done, 4);
    EXPECT_EQ(over.extra, 3);
    EXPECT_EQ(adherence(days, kDoneDay.addDays(1)).sets, 6) << "of the day under way what is done";
}

TEST(AdherenceBounds, AddsUpLiftersOfASquad)
{
    Adherence both{5, 3, 1};
    both += {4, 2, 2};
    EXPECT_EQ(both, (Adherence{9, 5, 3}));
}

TEST(TrainedDays, RunFromTheFirstToTheLastBothIncluded)
{
    std::vector<Card> cards;
    std::vector<LoggedSession> sessions;
    for (const int day : {-1, 0, 3, 4}) {
        cards.push_back(cardOf(day + 2, kDoneDay.addDays(day), 0, idOf("comp"), u"1x1 100kg"_qs));
        sessions.push_back(sessionOf(kDoneDay.addDays(day), {setOf(idOf("comp"), 100.0 + day, 1)}));
    }
    const DoneDay lifter;
    const auto resolved = asGiven(cards, lifter.lifter, builtInCatalogue(), {});
    const auto daysOf = [](const std::map<QDate, TrainedDay> &trained) {
        std::vector<qint64> days;
        for (const auto &[day, what] : trained)
            days.push_back(kDoneDay.daysTo(day));
        return days;
    };
    const QDate last = kDoneDay.addDays(3);
    EXPECT_THAT(daysOf(trainedDays(resolved, {}, kDoneDay, last)), ElementsAre(0, 3));
    EXPECT_THAT(daysOf(trainedDays({}, sessions, kDoneDay, last)), ElementsAre(0, 3));
    const auto both = trainedDays(resolved, sessions, kDoneDay, last);
    EXPECT_EQ(both.at(last).cards.at(0).card.id, CardId{5});
    EXPECT_EQ(both.at(last).done.at(0).loadKg, 103.0);
    EXPECT_THAT(trainedDays({}, {}, kDoneDay, last), IsEmpty());
}

TEST(TrainedDays, HoldTheSetsOfTheirSessionsInOrder)
{
    const std::vector<LoggedSession> sessions{
        sessionOf(kDoneDay, {setOf(idOf("comp"), 60, 5), setOf(idOf("comp"), 80, 3)}),
        sessionOf(kDoneDay, {setOf(idOf("comp"), 100, 1)})};
    const auto days = trainedDays({}, sessions, kDoneDay, kDoneDay);
    std::vector<double> loads;
    for (const SetEntry &set : days.at(kDoneDay).done)
        loads.push_back(set.loadKg);
    EXPECT_THAT(loads, ElementsAre(60.0, 80.0, 100.0));
}
