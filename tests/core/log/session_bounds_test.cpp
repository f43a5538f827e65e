#include "core/log/session_log.h"
#include "core/log/session_rows.h"
#include "tests/core/plan/plan_rows.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

DaySet plannedSet(const char *code, int reps, std::optional<double> loadKg)
{
    DaySet set;
    set.variation = idOf(code);
    set.reps = reps;
    set.planKg = set.loadKg = loadKg;
    return set;
}

SetEntry doneSet(const char *code, double loadKg, std::optional<int> repsPlanned = {})
{
    SetEntry entry = setOf(idOf(code), loadKg, 5);
    entry.repsPlanned = repsPlanned;
    return entry;
}

/// The planned set that a set done answers; -1 where it is an extra one.
int answered(const std::vector<DaySet> &planned, const SetEntry &done)
{
    for (const SessionRow &row : sessionRows(planned, std::vector{done}, builtInCatalogue()))
        if (row.done)
            return row.planned ? int(*row.planned) : -1;
    return -2;
}

std::vector<DaySet> setsOfLine(const QString &setLine)
{
    Lifter lifter;
    lifter.gear = usualGear(Unit::kilogram);
    return daySets(
        resolveCards({cardOf(1, QDate(2026, 3, 4), 0, idOf("comp"), setLine)},
            {lifter, builtInCatalogue(), [](Lift) { return nullptr; }, noCheckIns(), {}, {}}),
        builtInCatalogue(), Unit::kilogram);
}

LoggedSession sessionWith(std::vector<double> loads)
{
    LoggedSession session = sessionOf(QDate(2026, 3, 4), {});
    session.id = {1};
    for (const double kg : loads)
        session.sets.push_back(setOf(idOf("comp"), kg, 5));
    return session;
}

} // namespace

TEST(SessionRowsBounds, AnAnswerByLoadLiesWithinATenthAndIsOfTheVariation)
{
    const std::vector<DaySet> one{plannedSet("comp", 5, 100.0)};
    EXPECT_EQ(answered(one, doneSet("comp", 109.9)), 0);
    EXPECT_EQ(answered(one, doneSet("comp", 110.2)), -1);
    EXPECT_EQ(answered(one, doneSet("comp", 90.1)), 0);
    EXPECT_EQ(answered(one, doneSet("comp", 89.8)), -1);
    EXPECT_EQ(answered(one, doneSet("feet_up", 100.0)), -1);
    EXPECT_EQ(answered({plannedSet("comp", 5, {})}, doneSet("comp", 300.0)), 0)
        << "without a planned load any will do";
}

TEST(SessionRowsBounds, ASetWithItsLeadAnswersTheOneThatWasPlannedWithIt)
{
    std::vector<DaySet> planned(3, plannedSet("comp", 3, 100.0));
    planned[1].lead = LeadReps{idOf("tempo_4_2_0"), 1};
    EXPECT_EQ(answered(planned, doneSet("comp", 100.0, 3)), 0);
    SetEntry led = doneSet("comp", 100.0, 3);
    led.lead = planned[1].lead;
    EXPECT_EQ(answered(planned, led), 1);
    led.repsPlanned = 4;
    EXPECT_EQ(answered(planned, led), 1);
    planned[1].reps = 5;
    led.repsPlanned = 3;
    EXPECT_EQ(answered(planned, led), 0) << "the reps say more than the lead";
}

TEST(SessionRowsBounds, AVariationThatTheCatalogueLacksIsNobodysSwap)
{
    SetEntry unknown = doneSet("comp", 100.0, 5);
    unknown.variation = {999};
    EXPECT_EQ(answered({plannedSet("comp", 5, 100.0)}, unknown), -1);
    DaySet planned = plannedSet("comp", 5, 100.0);
    planned.variation = {998};
    EXPECT_EQ(answered({planned}, doneSet("comp", 100.0, 5)), -1);
}

TEST(DaySetsBounds, ALoadAndADropFromItAreByHandAndAShareIsNot)
{
    const std::vector<DaySet> sets = setsOfLine(u"1x5 100kg\n1x5 -10%\n1x5 80%\n1x5 @8\n1x5"_qs);
    ASSERT_THAT(sets, SizeIs(5));
    EXPECT_TRUE(sets[0].isByHand);
    EXPECT_TRUE(sets[1].isByHand);
    for (size_t i = 2; i < 5; ++i)
        EXPECT_FALSE(sets[i].isByHand) << i;
}

TEST(DaySetsBounds, OnlyAPlainCountOfRepsIsExact)
{
    const std::vector<DaySet> sets =
        setsOfLine(u"1x5 100kg\n1x4-6 100kg\n1x5+ 100kg\n1x5+ max 8 100kg"_qs);
    ASSERT_THAT(sets, SizeIs(4));
    EXPECT_TRUE(sets[0].isExact);
    EXPECT_FALSE(sets[0].isOpenEnded);
    EXPECT_FALSE(sets[1].isExact);
    EXPECT_FALSE(sets[1].isOpenEnded);
    for (size_t i = 2; i < 4; ++i) {
        EXPECT_FALSE(sets[i].isExact) << i;
        EXPECT_TRUE(sets[i].isOpenEnded) << i;
    }
    EXPECT_EQ(sets[0].lead, std::nullopt);
    EXPECT_FALSE(sets[0].isGiven);
    EXPECT_EQ(asPlanned(sets[0]).lead, std::nullopt);
    EXPECT_EQ(askedOf(sets[1], builtInCatalogue()).reps, std::nullopt);
}

TEST(ShiftedBounds, ASetThatIsNotOfTheCatalogueStaysAsItIs)
{
    DaySet unknown = plannedSet("comp", 5, 100.0);
    unknown.variation = {999};
    ReadinessAdvice advice;
    advice.loadFactor = 0.9;
    const PlateTable plates(usualGear(Unit::kilogram));
    const std::vector<DaySet> sets =
        shifted({unknown, plannedSet("comp", 5, {}), plannedSet("comp", 5, 100.0)}, advice,
            builtInCatalogue(), plates);
    EXPECT_EQ(sets[0].loadKg, 100.0);
    EXPECT_EQ(sets[1].loadKg, std::nullopt);
    EXPECT_EQ(sets[2].loadKg, 90.0);
}

TEST(SessionLogBounds, ASessionThatHoldsOtherSetsStaysWhenOneGoes)
{
    const std::vector<LoggedSession> day{sessionWith({100, 90})};
    const Edit edit = removeSet(day, 0);
    EXPECT_THAT(edit.sessions.before, ElementsAre(day[0]));
    EXPECT_THAT(edit.sessions.after, ElementsAre(sessionWith({90})));
    EXPECT_THAT(removeSet(day, 1).sessions.after, ElementsAre(sessionWith({100})));
    EXPECT_THROW((void)removeSet(day, 2), std::out_of_range);
}

TEST(SessionLogBounds, AnotherAnswerTakesThePlaceOfTheCheckInBefore)
{
    CheckIn before;
    before.id = {5};
    before.lifter = {3};
    before.day = QDate(2026, 3, 4);
    before.sleep = 4;
    CheckIn now = before;
    now.id = {};
    now.sleep = 2;
    const Edit edit = sayCheckIn(&before, now, [] { return CheckInId{9}; });
    EXPECT_THAT(edit.checkIns.before, ElementsAre(before));
    ASSERT_THAT(edit.checkIns.after, SizeIs(1));
    EXPECT_EQ(edit.checkIns.after[0].id, before.id);
    EXPECT_EQ(edit.checkIns.after[0].sleep, 2);
}
