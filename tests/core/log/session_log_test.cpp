#include "core/log/session_log.h"

#include "tests/support/days.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

SetEntry set(double loadKg)
{
    SetEntry entry;
    entry.variation = {1};
    entry.loadKg = loadKg;
    entry.repsDone = 5;
    return entry;
}

LoggedSession session(qint64 id, int number, std::vector<SetEntry> sets)
{
    return {{id}, {3}, kDay, number, std::nullopt, std::move(sets)};
}

SessionId never()
{
    ADD_FAILURE() << "no new session is needed";
    return {};
}

} // namespace

TEST(SessionLog, TheFirstSetBeginsASession)
{
    const Edit edit = addSet({}, {3}, kDay, set(100), 0, [] { return SessionId{9}; });
    EXPECT_THAT(edit.sessions.before, IsEmpty());
    EXPECT_THAT(edit.sessions.after, ElementsAre(session(9, 1, {set(100)})));
}

TEST(SessionLog, ASetGoesBehindTheOneBeforeItInItsSession)
{
    const std::vector<LoggedSession> day{
        session(1, 1, {set(100), set(102)}), session(2, 2, {set(60)})};
    EXPECT_THAT(setsOf(day), ElementsAre(set(100), set(102), set(60)));
    EXPECT_EQ(addSet(day, {3}, kDay, set(50), 0, never).sessions.after[0],
        session(1, 1, {set(50), set(100), set(102)}));
    EXPECT_EQ(addSet(day, {3}, kDay, set(50), 2, never).sessions.after[0],
        session(1, 1, {set(100), set(102), set(50)}));
    EXPECT_EQ(addSet(day, {3}, kDay, set(50), 3, never).sessions.after[0],
        session(2, 2, {set(60), set(50)}));
}

TEST(SessionLog, AChangeThatChangesNothingIsNoStep)
{
    const std::vector<LoggedSession> day{session(1, 1, {set(100), set(102)})};
    EXPECT_TRUE(changeSet(day, set(102), 1).isEmpty());
    EXPECT_EQ(changeSet(day, set(90), 1).sessions.after[0], session(1, 1, {set(100), set(90)}));
    EXPECT_THROW((void)changeSet(day, set(90), 2), std::out_of_range);
}

TEST(SessionLog, TheLastSetTakesItsSessionWithItUnlessReadinessWasSaid)
{
    std::vector<LoggedSession> day{session(1, 1, {set(100)})};
    EXPECT_THAT(removeSet(day, 0).sessions.after, IsEmpty());
    day[0].readiness = 4;
    ASSERT_THAT(removeSet(day, 0).sessions.after, SizeIs(1));
    EXPECT_THAT(removeSet(day, 0).sessions.after[0].sets, IsEmpty());
}

TEST(SessionLog, ACheckInTakesThePlaceOfTheOneBeforeAndGoesWithItsLastAnswer)
{
    CheckIn said;
    said.lifter = {3};
    said.day = kDay;
    EXPECT_TRUE(sayCheckIn(nullptr, said, [] { return CheckInId{5}; }).isEmpty());
    said.sleep = 4;
    const Edit first = sayCheckIn(nullptr, said, [] { return CheckInId{5}; });
    ASSERT_THAT(first.checkIns.after, SizeIs(1));
    const CheckIn stored = first.checkIns.after[0];
    EXPECT_EQ(stored.id, CheckInId{5});
    EXPECT_TRUE(sayCheckIn(&stored, said, [] { return CheckInId{6}; }).isEmpty());
    said.sleep.reset();
    const Edit last = sayCheckIn(&stored, said, [] { return CheckInId{6}; });
    EXPECT_THAT(last.checkIns.before, ElementsAre(stored));
    EXPECT_THAT(last.checkIns.after, IsEmpty());
}
