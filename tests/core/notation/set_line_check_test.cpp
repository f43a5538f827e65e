#include "core/csv/catalogue_csv.h"
#include "core/notation/set_line_check.h"

#include <gmock/gmock.h>

using namespace core;
using testing::HasSubstr;

namespace {

ParsedSetLines typed(const QString &text, Lift lift = Lift::bench)
{
    return parseSetLines(text, lift, builtInCatalogue());
}

} // namespace

TEST(SetLineCheck, AVariationOfTheLiftIsTaken)
{
    EXPECT_FALSE(typed(QStringLiteral("3x1+2(feet_up) @8")).error);
    EXPECT_FALSE(typed(QStringLiteral("3x1+2 @8 then 3x3 -10%")).error);
    EXPECT_FALSE(typed(QString()).error);
}

TEST(SetLineCheck, AMisspeltOneIsRefusedAtItsPlaceWithTheNearest)
{
    const ParsedSetLines feet = typed(QStringLiteral("1x1 @8\n4x3 then 3x1+2(feetup) @8"));
    ASSERT_TRUE(feet.error);
    EXPECT_EQ(feet.error->line, 2);
    EXPECT_EQ(feet.error->column, 16);
    EXPECT_THAT(feet.error->words.toStdString(), HasSubstr("no variation feetup"));
    EXPECT_THAT(feet.error->words.toStdString(), HasSubstr("Did you mean feet_up?"));
    // A name is meant by its code.
    EXPECT_THAT(typed(QStringLiteral("3x1+2(floor_pres) @8")).error->words.toStdString(),
        HasSubstr("floor_press"));
    EXPECT_THAT(typed(QStringLiteral("3x1+2(zzzzzz) @8")).error->words.toStdString(),
        HasSubstr("choose from its codes"));
}

TEST(SetLineCheck, OneOfAnotherLiftIsRefusedByName)
{
    const ParsedSetLines squat = typed(QStringLiteral("3x1+2(paused_squat) @8"));
    ASSERT_TRUE(squat.error);
    EXPECT_THAT(squat.error->words.toStdString(), HasSubstr("Paused squat is another lift"));
    EXPECT_FALSE(typed(QStringLiteral("3x1+2(paused_squat) @8"), Lift::squat).error);
}

TEST(SetLineCheck, WhatCannotBeReadIsSaidFirst)
{
    const ParsedSetLines both = typed(QStringLiteral("3x1+2(feetup) @8\n3x"));
    ASSERT_TRUE(both.error);
    EXPECT_EQ(both.error->line, 2);
}
