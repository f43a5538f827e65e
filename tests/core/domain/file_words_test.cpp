#include "core/domain/lifter.h"
#include "core/domain/variation.h"
#include "core/domain/waiver.h"

#include <gmock/gmock.h>

using namespace core;

TEST(FileWords, ReadBackAndNoneIsTakenTwice)
{
    for (const Lift lift : {Lift::bench, Lift::squat, Lift::deadlift})
        EXPECT_EQ(liftFromFileWord(fileWord(lift)), lift);
    for (const Fatigue fatigue : {Fatigue::low, Fatigue::moderate, Fatigue::high})
        EXPECT_EQ(fatigueFromFileWord(fileWord(fatigue)), fatigue);
    for (const Serves serves : {Serves::both, Serves::soft, Serves::sinking})
        EXPECT_EQ(servesFromFileWord(fileWord(serves)), serves);
    for (const Sex sex : {Sex::unstated, Sex::female, Sex::male})
        EXPECT_EQ(sexFromFileWord(fileWord(sex)), sex);
    for (int rule = 0; rule <= int(CheckRule::noCompetitionLift); ++rule)
        EXPECT_EQ(checkRuleFromFileWord(fileWord(CheckRule(rule))), CheckRule(rule));
    EXPECT_FALSE(liftFromFileWord(QStringLiteral("press")));
    EXPECT_FALSE(fatigueFromFileWord(QString()));
    EXPECT_FALSE(servesFromFileWord(QString()));
    EXPECT_FALSE(sexFromFileWord(QStringLiteral("x")));
    EXPECT_FALSE(checkRuleFromFileWord(QString()));
}
