#include "app/demo/demo_roster.h"

#include "core/advice/plan_checks.h"
#include "core/csv/catalogue_csv.h"
#include "core/loads/lift_estimate.h"
#include "core/notation/set_line.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

using namespace core;

namespace {

const std::vector<Variation> &catalogue()
{
    return builtInCatalogue();
}

Edit roster(QDate today)
{
    qint64 next = 0;
    return demo::demoRoster(catalogue(), today,
        {[&] { return LifterId{++next}; }, [&] { return SessionId{++next}; },
            [&] { return CardId{++next}; }, [&] { return BlockId{++next}; },
            [&] { return CheckInId{++next}; }});
}

const QDate kToday(2026, 11, 25);

} // namespace

TEST(DemoRoster, TheSameDayGivesTheSameRoster)
{
    EXPECT_EQ(roster(kToday), roster(kToday));
}

TEST(DemoRoster, HoldsTwelveSoundLiftersOfBothUnitsAndTouchStyles)
{
    std::set<QString> names;
    std::set<Unit> units;
    std::set<TouchStyle> styles;
    const Edit edit = roster(kToday);
    for (const Lifter &lifter : edit.lifters.after) {
        EXPECT_TRUE(problems(lifter).isEmpty()) << lifter.name.toStdString();
        names.insert(lifter.name);
        units.insert(lifter.unit);
        styles.insert(lifter.touchStyle);
    }
    EXPECT_EQ(names.size(), 12u);
    EXPECT_EQ(units.size(), 2u);
    EXPECT_EQ(styles.size(), 3u);
}

TEST(DemoRoster, TheLogEndsBeforeTodayAndEachSetIsSound)
{
    const QDate monday(2026, 11, 23);
    std::map<LifterId, int> sets;
    const Edit edit = roster(kToday);
    for (const LoggedSession &session : edit.sessions.after) {
        EXPECT_LT(session.day, kToday);
        EXPECT_GE(session.day, monday.addDays(-30 * 7));
        for (const SetEntry &set : session.sets) {
            EXPECT_TRUE(problems(set).isEmpty()) << problems(set).join(u' ').toStdString();
            ++sets[session.lifter];
        }
    }
    ASSERT_EQ(sets.size(), 12u);
    for (const auto &[lifter, count] : sets)
        EXPECT_GT(count, 90);
}

TEST(DemoRoster, SomeSetsAreMissedSomeUnratedButNeitherIsTheRule)
{
    int all = 0;
    int missed = 0;
    int unrated = 0;
    const Edit edit = roster(kToday);
    for (const LoggedSession &session : edit.sessions.after)
        for (const SetEntry &set : session.sets) {
            ++all;
            missed += set.failed;
            unrated += !set.failed && !set.rpe;
        }
    EXPECT_GT(missed, all / 400);
    EXPECT_LT(missed, all / 15);
    EXPECT_GT(unrated, all / 30);
    EXPECT_LT(unrated, all / 3);
}

TEST(DemoRoster, EveryLifterHasAPlanForThisWeekWithoutGapsInADay)
{
    std::map<std::pair<LifterId, QDate>, int> next;
    std::set<LifterId> planned;
    const Edit edit = roster(kToday);
    for (const Card &card : edit.cards.after) {
        EXPECT_EQ(card.position, (next[{card.lifter, card.day}]++));
        planned.insert(card.lifter);
    }
    EXPECT_EQ(planned.size(), 12u);
}

TEST(DemoRoster, TheWeekUnderWayIsLoggedByItsPlanAndOneMissedMonday)
{
    const QDate monday(2026, 11, 23);
    const Edit edit = roster(kToday);
    std::set<LifterId> trained;
    for (const LoggedSession &session : edit.sessions.after)
        if (session.day == monday) {
            trained.insert(session.lifter);
            for (const SetEntry &set : session.sets)
                EXPECT_TRUE(std::any_of(
                    edit.cards.after.begin(), edit.cards.after.end(), [&](const Card &card) {
                        return card.lifter == session.lifter && card.day == monday
                            && card.variation == set.variation;
                    }));
        }
    EXPECT_EQ(trained.size(), 11u);
}

TEST(DemoRoster, SomeHaveCheckedInTodayOneWithPain)
{
    int pains = 0;
    const Edit edit = roster(kToday);
    for (const CheckIn &checkIn : edit.checkIns.after) {
        EXPECT_TRUE(problems(checkIn).isEmpty());
        EXPECT_EQ(checkIn.day, kToday);
        pains += checkIn.pain.has_value();
    }
    EXPECT_EQ(pains, 1);
    EXPECT_EQ(edit.checkIns.after.size(), 5u);
}

/// The demo of a day, and what the board would show of a lifter's week in it.
struct DemoOf
{
    QDate today;
    Edit edit = roster(today);
    LiftEstimates estimates =
        estimateAll(edit.lifters.after, catalogue(), edit.sessions.after, today);

    [[nodiscard]] std::vector<Finding> findings(const Lifter &lifter, QDate monday) const
    {
        const auto isTheirs = [&lifter](const auto &row) { return row.lifter == lifter.id; };
        std::vector<LoggedSession> sessions;
        std::ranges::copy_if(edit.sessions.after, std::back_inserter(sessions), isTheirs);
        std::vector<CheckIn> said;
        std::ranges::copy_if(edit.checkIns.after, std::back_inserter(said), isTheirs);
        std::vector<Card> cards;
        std::ranges::copy_if(edit.cards.after, std::back_inserter(cards),
            [&](const Card &card) { return isTheirs(card) && mondayOf(card.day) == monday; });
        const EstimateOf estimateOf = [&](Lift lift) {
            const auto found = estimates.find({lifter.id, lift});
            return found == estimates.end() ? nullptr : &found->second;
        };
        const auto resolved =
            resolveCards(cards, {lifter, catalogue(), estimateOf, said, {}, today});
        return checkPlan({lifter, catalogue(), sessions, resolved, estimateOf, said});
    }
};

TEST(DemoPlans, HoldNothingThatTheChecksStopOrWarnOf)
{
    // A Wednesday, the Monday and the Saturday of it, and days of other months.
    for (const QDate today :
        {kToday, kToday.addDays(-2), kToday.addDays(3), kToday.addDays(45), kToday.addDays(-100)}) {
        const DemoOf demo{today};
        for (const Lifter &lifter : demo.edit.lifters.after)
            for (const int week : {0, 1})
                for (const Finding &finding :
                    demo.findings(lifter, mondayOf(today).addDays(7 * week)))
                    EXPECT_EQ(finding.severity, Severity::hint)
                        << today.toString(Qt::ISODate).toStdString() << ' '
                        << lifter.name.toStdString() << ", " << finding.words.toStdString();
    }
}

TEST(DemoPlans, GiveTheMinorNoSingleAndNothingHarderThanSeven)
{
    const Edit edit = roster(kToday);
    int minors = 0;
    for (const Lifter &lifter : edit.lifters.after) {
        if (!mayBeMinor(lifter, kToday))
            continue;
        ++minors;
        for (const Card &card : edit.cards.after)
            if (card.lifter == lifter.id)
                for (const SetLine &line : parseSetLines(card.setLine).lines) {
                    EXPECT_GE(line.reps, 3) << card.setLine.toStdString();
                    EXPECT_LE(std::get<RpeTarget>(line.target).rpe, 7.0);
                }
        for (const LoggedSession &session : edit.sessions.after)
            for (const SetEntry &set : session.sets) {
                EXPECT_TRUE(session.lifter != lifter.id || set.repsPlanned.value() >= 3);
            }
    }
    EXPECT_EQ(minors, 1);
}

TEST(DemoPlans, TheTempoIsALeadRepBeforeCompetitionRepsOfWhoKeepsASoftTouch)
{
    const Edit edit = roster(kToday);
    const VariationId tempo = withCode(catalogue(), QStringLiteral("tempo_4_2_0"))->id;
    const VariationId comp = withCode(catalogue(), QStringLiteral("comp"))->id;
    int led = 0;
    for (const Card &card : edit.cards.after) {
        if (card.variation != tempo)
            continue;
        ++led;
        EXPECT_EQ(parseSetLines(card.setLine).lines.front().leadReps, 1);
        EXPECT_EQ(card.position, 0) << "while fresh, before the other sets of the day";
        const auto lifter = std::ranges::find(edit.lifters.after, card.lifter, &Lifter::id);
        EXPECT_NE(lifter->touchStyle, TouchStyle::sinking);
    }
    EXPECT_GT(led, 10);
    int logged = 0;
    for (const LoggedSession &session : edit.sessions.after)
        for (const SetEntry &set : session.sets) {
            EXPECT_NE(set.variation, tempo) << "never as a set of its own";
            logged += set.lead && set.lead->variation == tempo && set.variation == comp;
        }
    EXPECT_GT(logged, 100);
}

TEST(DemoRoster, ACatalogueWithoutATrainedVariationIsNamed)
{
    EXPECT_THROW((void)demo::demoRoster({}, kToday, {}), std::invalid_argument);
}
