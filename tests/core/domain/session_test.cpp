#include "core/domain/session.h"

#include <gmock/gmock.h>

using namespace core;

TEST(Session, ASetThatAnswersOneNamesItsCardAndCountsFromZero)
{
    SetEntry set;
    set.loadKg = 100.0;
    set.repsDone = 3;
    const auto wrongWith = [&set](const PlannedSetRef &answered) {
        set.answers = answered;
        return problems(set).size();
    };
    EXPECT_EQ(wrongWith({{1}, 0}), 0);
    EXPECT_EQ(wrongWith({{1}, 7}), 0);
    EXPECT_EQ(wrongWith({{1}, -1}), 1);
    EXPECT_EQ(wrongWith({{}, 0}), 1);
    EXPECT_EQ(PlannedSetRef{}.set, 0);
}

TEST(Session, TonnageIsLoadTimesTheRepsThatWentUp)
{
    SetEntry set;
    set.loadKg = 102.5;
    set.repsDone = 3;
    set.failed = true;
    EXPECT_EQ(tonnageKg(set), 307.5);
}

TEST(Session, TheLastDayIsThatOfTheNewestSetInWhateverOrder)
{
    const QDate first(2026, 3, 2);
    const auto on = [first](int day, size_t sets) {
        LoggedSession session;
        session.day = first.addDays(day);
        session.sets.resize(sets);
        return session;
    };
    EXPECT_FALSE(lastDayOf({}).isValid());
    const std::vector<LoggedSession> log{on(0, 1), on(3, 1), on(5, 0), on(1, 2)};
    EXPECT_EQ(lastDayOf(log), first.addDays(3)) << "without a set a session has no newest";
    EXPECT_FALSE(lastDayOf(std::vector{on(5, 0)}).isValid());
}
