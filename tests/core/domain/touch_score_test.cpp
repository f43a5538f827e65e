#include "core/domain/touch_score.h"

#include <QSet>
#include <gtest/gtest.h>

using namespace core;

TEST(TouchScore, HasFiveStepsWithWordsOfTheirOwn)
{
    QSet<QString> said;
    for (int score = kSoftestTouch; score <= kHardestTouch; ++score)
        said << touchWord(score);
    EXPECT_EQ(said.size(), 5);
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
