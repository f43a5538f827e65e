#include "core/domain/check_in.h"
#include "core/domain/lifter.h"
#include "core/domain/variation.h"
#include "core/domain/waiver.h"

#include <gmock/gmock.h>

using namespace core;

namespace {

/// Every value up to the last one has its line in the table, and no word is taken twice.
template <class Enum> void expectAllNamed(Enum last)
{
    ASSERT_EQ(kEnumWords<Enum>.size(), size_t(last) + 1);
    for (int value = 0; value <= int(last); ++value)
        EXPECT_EQ(fromFileWord<Enum>(fileWord(Enum(value))), Enum(value));
}

} // namespace

TEST(FileWords, ReadBackAndNoneIsTakenTwice)
{
    expectAllNamed(Lift::deadlift);
    expectAllNamed(Fatigue::high);
    expectAllNamed(TouchStyle::sinking);
    expectAllNamed(Serves::sinking);
    expectAllNamed(Sex::male);
    expectAllNamed(Unit::pound);
    expectAllNamed(BodyArea::wrists);
    expectAllNamed(Work::much);
    expectAllNamed(CheckRule::noCompetitionLift);
    EXPECT_FALSE(fromFileWord<Lift>(QStringLiteral("press")));
    EXPECT_FALSE(fromFileWord<Fatigue>(QString()));
    EXPECT_FALSE(fromFileWord<Serves>(QString()));
    EXPECT_FALSE(fromFileWord<Sex>(QStringLiteral("x")));
    EXPECT_FALSE(fromFileWord<CheckRule>(QString()));
}

TEST(FileWords, EnumsOfTheScreenHaveWordsForIt)
{
    for (const Lift lift : {Lift::bench, Lift::squat, Lift::deadlift})
        EXPECT_FALSE(words(lift).isEmpty());
    EXPECT_EQ(words(Fatigue::moderate), QStringLiteral("moderate fatigue"));
    EXPECT_EQ(words(TouchStyle::undecided), QStringLiteral("touch undecided"));
    EXPECT_EQ(words(Serves::both), QStringLiteral("both touches"));
    EXPECT_EQ(words(Sex::unstated), QStringLiteral("not stated"));
    EXPECT_EQ(words(BodyArea::wrists), QStringLiteral("wrists"));
}
