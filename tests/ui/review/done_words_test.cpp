#include "ui/review/done_words.h"

#include <gmock/gmock.h>

using namespace ui;
using testing::HasSubstr;
using testing::Not;

TEST(DoneWords, OfAdherence)
{
    EXPECT_EQ(adherenceWords({48, 42, 0}).toStdString(),
        "Sets done in the last 4 weeks that are over: 42 of 48 planned (88 %).");
    EXPECT_EQ(adherenceWords({0, 0, 3}).toStdString(),
        "Nothing was planned in the last 4 weeks that are over. Beside the plan: 3.");
}

TEST(DoneWords, OfTheScoreAreALineForEachTenthThatAllLiftersHaveSetsIn)
{
    core::GivenScore own{}, all{};
    all[7] = {40, 30, 30.0};
    all[9] = {12, 12, 11.5};
    all[2] = {9, 9, 2.0}; // too few
    own[9] = {4, 3, 3.8};
    const std::string words = scoreWords(own, all).toStdString();
    EXPECT_THAT(words, HasSubstr("70\u201380 %: none so far; all lifters 75 % of 40"));
    EXPECT_THAT(words, HasSubstr("90\u2013100 %: made 3 of 4; all lifters 100 % of 12"));
    EXPECT_THAT(words, Not(HasSubstr("20\u201330")));
}

TEST(DoneWords, OfTooLittleSayWhatIsLacking)
{
    core::GivenScore all{};
    all[9] = {9, 9, 8.5};
    all[8] = {2, 1, 1.7};
    EXPECT_EQ(scoreWords({}, all).toStdString(),
        "How far the chances given hold cannot be said yet: that takes 10 first sets with a like "
        "chance, and all lifters together have tried 11 of any.");
}
