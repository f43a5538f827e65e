#include "core/domain/lifter.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace core;

namespace {
Lifter anySoundLifter()
{
    Lifter lifter;
    lifter.name = QStringLiteral("Test Lifter");
    lifter.gear = usualGear(Unit::kilogram);
    return lifter;
}
} // namespace

TEST(Lifter, UsualLifterIsSound)
{
    EXPECT_TRUE(problems(anySoundLifter()).isEmpty());
}

TEST(Lifter, EachFieldOutOfBoundsIsNamed)
{
    Lifter lifter = anySoundLifter();
    lifter.name = QStringLiteral("  ");
    lifter.birthYear = 1823;
    lifter.bodyweightKg = 0.0;
    lifter.gear.barKg = -1;
    EXPECT_EQ(problems(lifter).size(), 4);
}

TEST(Lifter, ANameHasNoSignsThatCannotBeSeen)
{
    Lifter lifter;
    lifter.name = QStringLiteral("Ada\u200B");
    lifter.gear = usualGear(Unit::kilogram);
    ASSERT_EQ(problems(lifter).size(), 1);
    lifter.name = QStringLiteral("Ada");
    EXPECT_TRUE(problems(lifter).isEmpty());
}

TEST(Lifter, NobodyWhoIsEnteredTodayIsBornLater)
{
    const QDate today(2026, 1, 1);
    Lifter lifter = anySoundLifter();
    EXPECT_TRUE(problems(lifter, today).isEmpty());
    lifter.birthYear = 2026;
    EXPECT_TRUE(problems(lifter, today).isEmpty());
    lifter.birthYear = 2027;
    EXPECT_EQ(problems(lifter, today).size(), 1);
    EXPECT_TRUE(problems(lifter).isEmpty()) << "a clock that is set back spoils no roster";
    lifter.birthYear = 2101;
    EXPECT_EQ(problems(lifter, today).size(), 1) << "said once";
}

TEST(TouchStyle, FileWordsReadBackAndUnknownOnesDoNot)
{
    for (const TouchStyle style : {TouchStyle::undecided, TouchStyle::soft, TouchStyle::sinking})
        EXPECT_EQ(fromFileWord<TouchStyle>(fileWord(style)), style);
    EXPECT_FALSE(fromFileWord<TouchStyle>(QStringLiteral("hard")));
}

TEST(TouchStyle, AnUndecidedLifterMayTrainWithAnything)
{
    EXPECT_TRUE(suits(Serves::soft, TouchStyle::undecided));
    EXPECT_TRUE(suits(Serves::both, TouchStyle::sinking));
    EXPECT_TRUE(suits(Serves::soft, TouchStyle::soft));
    EXPECT_FALSE(suits(Serves::soft, TouchStyle::sinking));
    EXPECT_FALSE(suits(Serves::sinking, TouchStyle::soft));
}

TEST(Lifter, TheYearOfThe18thBirthdayStillCountsAsUnderAge)
{
    Lifter lifter = anySoundLifter();
    EXPECT_FALSE(mayBeMinor(lifter, QDate(2026, 3, 2)));
    lifter.birthYear = 2008;
    EXPECT_TRUE(mayBeMinor(lifter, QDate(2026, 12, 31)));
    EXPECT_FALSE(mayBeMinor(lifter, QDate(2027, 1, 1)));
}

TEST(Gear, AUsualSetHasThePlatesOfItsUnitInPairs)
{
    // Common practice, no source.
    using Pairs = std::vector<PlatePairs>;
    const Gear kg = usualGear(Unit::kilogram);
    EXPECT_EQ(kg.barKg, 20.0);
    EXPECT_EQ(kg.collarsKg, 0.0);
    EXPECT_EQ(kg.plates, (Pairs{{25, 6}, {20, 1}, {15, 1}, {10, 1}, {5, 1}, {2.5, 1}, {1.25, 1}}));
    const Gear lb = usualGear(Unit::pound);
    EXPECT_EQ(lb.barKg, 45 * kKgPerPound);
    EXPECT_EQ(lb.collarsKg, 0.0);
    EXPECT_TRUE(problems(lb).isEmpty());
    Pairs inPounds;
    for (const PlatePairs &p : lb.plates)
        inPounds.push_back({std::round(100.0 * fromKg(p.plateKg, Unit::pound)) / 100.0, p.pairs});
    EXPECT_EQ(inPounds, (Pairs{{45, 6}, {35, 1}, {25, 1}, {10, 2}, {5, 1}, {2.5, 1}}));
}

TEST(Lifter, TheLatestBirthYearOfTheFileIsStillToCome)
{
    Lifter lifter = anySoundLifter();
    lifter.birthYear = 2100;
    EXPECT_EQ(problems(lifter, QDate(2099, 12, 31)).size(), 1);
    EXPECT_TRUE(problems(lifter, QDate(2100, 1, 1)).isEmpty());
}

TEST(Lifter, IsANoviceUntilAYearOfTrainingIsFull)
{
    Lifter lifter = anySoundLifter();
    EXPECT_FALSE(isNovice(lifter, QDate(2026, 3, 2))) << "unless it is said";
    lifter.trainingSince = QDate(2025, 3, 2);
    EXPECT_TRUE(isNovice(lifter, QDate(2026, 3, 1)));
    EXPECT_FALSE(isNovice(lifter, QDate(2026, 3, 2)));
    lifter.trainingSince = QDate();
    EXPECT_EQ(problems(lifter).size(), 1) << "no date";
}

TEST(Lifter, AnAgeIsKnownByTheBirthYearOrByWord)
{
    Lifter lifter = anySoundLifter();
    EXPECT_TRUE(isAgeUnknown(lifter));
    lifter.isAdult = true;
    EXPECT_FALSE(isAgeUnknown(lifter));
    lifter.isAdult = false;
    lifter.birthYear = 2012;
    EXPECT_FALSE(isAgeUnknown(lifter));
}
