#include "core/domain/check_in.h"

#include <gmock/gmock.h>

using namespace core;

namespace {
CheckIn soundCheckIn()
{
    CheckIn c;
    c.lifter = LifterId{1};
    c.day = QDate(2026, 3, 2);
    c.sleep = 4;
    c.stress = 3;
    c.motivation = 5;
    c.soreness = {{BodyArea::back, 2}, {BodyArea::legs, 3}, {BodyArea::chest, 5}};
    return c;
}
} // namespace

TEST(CheckIn, TwoAndLessIsSore)
{
    const CheckIn c = soundCheckIn();
    EXPECT_THAT(soreAreas(c), testing::ElementsAre(BodyArea::back));
    EXPECT_FALSE(isSore(c, BodyArea::legs));
    EXPECT_FALSE(isSore(c, BodyArea::elbows)); // not asked
}

TEST(CheckIn, ReadinessIsTheMeanWithTheSorestArea)
{
    EXPECT_DOUBLE_EQ(readiness(soundCheckIn()).value(), (4 + 3 + 5 + 2) / 4.0);
    EXPECT_FALSE(readiness(CheckIn{}));
    CheckIn one;
    one.sleep = 2;
    EXPECT_DOUBLE_EQ(readiness(one).value(), 2.0);
}

TEST(CheckIn, EachFieldOutOfBoundsIsNamed)
{
    CheckIn c = soundCheckIn();
    EXPECT_TRUE(problems(c).isEmpty());
    c.day = {};
    c.sleep = 0;
    c.soreness[BodyArea::legs] = 6;
    c.pain = PainFlag{};
    EXPECT_EQ(problems(c).size(), 4);
    c.pain->words = QStringLiteral("left wrist");
    EXPECT_EQ(problems(c).size(), 3);
}

TEST(CheckIn, PainOfAnAreaNeedsNoWordsAndDoesNotGoWithFreedomFromIt)
{
    CheckIn c = soundCheckIn();
    c.isPainFree = true;
    EXPECT_TRUE(problems(c).isEmpty());
    c.pain = PainFlag{BodyArea::elbows, {}};
    EXPECT_EQ(problems(c).size(), 1);
    c.isPainFree = false;
    EXPECT_TRUE(problems(c).isEmpty());
}

TEST(CheckIn, WhereItHurtsIsNeverBlank)
{
    EXPECT_EQ(words(PainFlag{}).toStdString(), "elsewhere");
    EXPECT_EQ(words(PainFlag{{}, QStringLiteral(" left foot ")}).toStdString(), "left foot");
    EXPECT_EQ(words(PainFlag{BodyArea::chest, QStringLiteral("left")}).toStdString(), "chest");
}
