#include "app/demo/demo_roster.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <map>
#include <set>

using namespace core;

namespace {

std::vector<Variation> catalogue()
{
    std::vector<Variation> all;
    for (const char *code : {"comp", "off_chest_pause", "long_pause", "feet_up", "close_grip",
             "tempo_4_2_0", "squat", "deadlift"}) {
        Variation v;
        v.id = {qint64(all.size()) + 1};
        v.code = QString::fromLatin1(code);
        all.push_back(v);
    }
    return all;
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

TEST(DemoRoster, ACatalogueWithoutATrainedVariationIsNamed)
{
    EXPECT_THROW((void)demo::demoRoster({}, kToday, {}), std::invalid_argument);
}
