#include "core/domain/touch_score.h"

#include <QSet>
#include <gtest/gtest.h>

using namespace core;

TEST(TouchScore, HasFiveStepsWithWordsOfTheirOwn)
{
    const QStringList words = touchSteps();
    EXPECT_EQ(words.size(), kHardestTouch - kSoftestTouch + 1);
    EXPECT_EQ(QSet<QString>(words.begin(), words.end()).size(), words.size());
    EXPECT_EQ(words.value(kHardestTouch - kSoftestTouch), touchWord(kHardestTouch));
    EXPECT_FALSE(isTouchScore(0));
    EXPECT_FALSE(isTouchScore(6));
}

TEST(TouchScore, TheScaleReadsFromSoftToHard)
{
    EXPECT_EQ(touchScale().toStdString(),
        "1 = held off or feather-light, 2 = light, 3 = rests, 4 = sinks, 5 = sinks and stops");
}

TEST(TouchScore, ASinkingLifterMayGoFurtherThanASoftOne)
{
    EXPECT_LT(wantedTouch(TouchStyle::soft), wantedTouch(TouchStyle::undecided));
    EXPECT_LT(wantedTouch(TouchStyle::undecided), wantedTouch(TouchStyle::sinking));
    EXPECT_LT(wantedTouch(TouchStyle::sinking), kHardestTouch);
}

TEST(TouchScore, HowHardATouchMayBeIsForTheStyleToSay)
{
    EXPECT_EQ(touchWord(wantedTouch(TouchStyle::soft)), QStringLiteral("light"));
    EXPECT_EQ(touchWord(wantedTouch(TouchStyle::undecided)), QStringLiteral("rests"));
    EXPECT_EQ(touchWord(wantedTouch(TouchStyle::sinking)), QStringLiteral("sinks"));
    EXPECT_TRUE(isTouchScore(1));
    EXPECT_TRUE(isTouchScore(5));
}
