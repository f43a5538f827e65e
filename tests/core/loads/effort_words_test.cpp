#include "core/loads/effort_words.h"
#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <QLocale>
#include <gmock/gmock.h>

using namespace core;
using namespace tests;

namespace {

/// Of a lifter of 100 kg, two percent a rep and one percent a hard set; see plainEstimate().
ResolvedLine lineOf(const QString &text, const char *code = "comp", double maxSd = 0.02)
{
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const LiftEstimate lift = plainEstimate(kDay, 100.0, maxSd);
    const PlateTable plates(usualGear(Unit::kilogram));
    return resolve(parseSetLines(text).lines, idOf(code),
        LoadBasis{&lift, plates, Unit::kilogram, kDay, builtInCatalogue()}, 0)
        .back();
}

QString words(const QString &text, const char *code = "comp")
{
    return effortWords(lineOf(text, code));
}

} // namespace

TEST(EffortWords, SayTheEffortOnceWhereItIsAsAsked)
{
    // 1 + ln(100 / 87.5) / 0.02 = 7.68 reps at 87.5 kg: a set of five leaves 2.7, and @7.5 is met.
    EXPECT_EQ(words(u"1x5 @7.5"_qs), u"RPE 7.5, as asked"_qs);
    EXPECT_EQ(words(u"1x5 @7-8"_qs), u"RPE 7.5, as asked"_qs);
}

TEST(EffortWords, SayBothWhereTheyDifferAndThatThePlatesAreWhy)
{
    // Two left after three: 100 exp(-0.08) = 92.3 kg, loaded 92.5: 1.9 left. With five left, 86.9
    // is loaded as 87.5: 4.7 left, to the half RPE 5.5.
    EXPECT_EQ(words(u"1x3 @8"_qs), u"RPE 8, as asked"_qs);
    EXPECT_EQ(words(u"1x3 @5"_qs), u"asked RPE 5, expected about 5.5: rounded up to the plates"_qs);
    // Three left after four is 88.7 kg, loaded 87.5: 3.7 left.
    EXPECT_EQ(
        words(u"1x4 @7"_qs), u"asked RPE 7, expected about 6.5: rounded down to the plates"_qs);
    EXPECT_EQ(words(u"1x4 3RIR"_qs), words(u"1x4 @7"_qs)) << "reps in reserve are the same scale";
}

TEST(EffortWords, TheTargetIsForTheLastSetAndTheEarlierOnesSaySo)
{
    const ResolvedLine line = lineOf(u"5x3 @8"_qs);
    EXPECT_TRUE(effortWords(line).contains(u" rising to "_qs)) << effortWords(line).toStdString();
    EXPECT_TRUE(effortWords(line, 0).endsWith(u"the last set is meant"_qs)
        || effortWords(line, 0).contains(u"the last set is meant, "_qs))
        << effortWords(line, 0).toStdString();
    EXPECT_FALSE(effortWords(line, 4).contains(u"last set"_qs));
    EXPECT_LT(expectedRpe(line, 0).value(), expectedRpe(line, 4).value());
}

TEST(EffortWords, OfALeadRepSetThatTheLeadDecides)
{
    EXPECT_TRUE(words(u"1x1+2 @8"_qs, "tempo_4_2_0").contains(u"the lead reps decide the load"_qs))
        << words(u"1x1+2 @8"_qs, "tempo_4_2_0").toStdString();
}

TEST(EffortWords, AMaxSingleIsCalledOneAndIsAnEvenChance)
{
    EXPECT_EQ(words(u"1x1 @10"_qs), u"a max single: about an even chance"_qs);
    EXPECT_TRUE(lineOf(u"1x1 @10"_qs).caution.isEmpty()) << "nothing to be warned of besides";
    EXPECT_EQ(words(u"1x1 100%"_qs), u"a max single: about an even chance"_qs);
    EXPECT_EQ(
        words(u"1x1 110%"_qs), u"a max single: likely missed, less than a chance of 1 in 10"_qs);
    EXPECT_TRUE(words(u"1x1 102.5kg"_qs).startsWith(u"a max single: likely missed"_qs));
    EXPECT_TRUE(words(u"1x5 100kg"_qs).startsWith(u"all reps: likely missed"_qs));
    EXPECT_FALSE(words(u"1x1 @9"_qs).contains(u"max single"_qs));
    EXPECT_FALSE(words(u"1x1+1 @8"_qs, "tempo_4_2_0").contains(u"max single"_qs));
}

TEST(EffortWords, LoadsAndSharesSayWhatIsExpectedAndFarFromFailureThatItIsEasy)
{
    EXPECT_EQ(words(u"1x5 87.5kg"_qs), u"expected RPE 7.5"_qs);
    EXPECT_EQ(words(u"6x3 60%"_qs), u"expected to be easy"_qs);
    EXPECT_EQ(rpeWords(1.0), u"easy"_qs);
    EXPECT_EQ(rpeWords(4.5), u"easy"_qs);
    EXPECT_EQ(rpeWords(5.0), u"5"_qs);
    EXPECT_TRUE(words(u"3x3"_qs).isEmpty()) << "no load, no words";
}

TEST(ExpectedReps, OfAsManyAsPossibleAreThoseOfTheEstimateUpToTheCap)
{
    // At 70 kg 1 + ln(100 / 70) / 0.02 = 18.8 reps.
    EXPECT_EQ(expectedReps(lineOf(u"1xAMRAP 70%"_qs)), 18);
    EXPECT_EQ(expectedReps(lineOf(u"1xAMRAP max 12 70%"_qs)), 12);
    EXPECT_EQ(words(u"1xAMRAP max 12 70%"_qs), u"the 12 reps of the cap are expected"_qs);
    EXPECT_EQ(words(u"1xAMRAP 70%"_qs), u"about 18 reps are expected"_qs);
    // At 92.5 kg 4.9: five are asked for, and no fewer are counted.
    EXPECT_EQ(expectedReps(lineOf(u"1x5+ 92.5kg"_qs)), 5);
    EXPECT_EQ(expectedReps(lineOf(u"1x4+ 92.5kg"_qs)), 4);
    EXPECT_EQ(expectedReps(lineOf(u"1x4-6 @8"_qs)), 5);
    const ResolvedLine line = lineOf(u"2xAMRAP max 12 70%"_qs);
    EXPECT_EQ(liftCount({&line, 1}), 24);
    EXPECT_NEAR(tonnageKg({&line, 1}), 24 * 70.0, 1e-9);
    ResolvedLine unknown;
    unknown.line = parseSetLines(u"1xAMRAP max 12 70%"_qs).lines.front();
    EXPECT_EQ(expectedReps(unknown), 1);
    EXPECT_EQ(liftCount({unknown.line}), 12) << "by the text alone, its cap";
}
