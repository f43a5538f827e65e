#include "core/notation/set_line.h"

#include "core/domain/units.h"

#include <QStringList>
#include <gmock/gmock.h>

using namespace core;

namespace {

SetLine one(const QString &text)
{
    const ParsedSetLines parsed = parseSetLines(text);
    EXPECT_FALSE(parsed.error) << parsed.error->words.toStdString();
    EXPECT_EQ(parsed.lines.size(), 1u);
    return parsed.lines.empty() ? SetLine{} : parsed.lines.front();
}

SetLineError errorOf(const QString &text)
{
    const ParsedSetLines parsed = parseSetLines(text);
    EXPECT_TRUE(parsed.error) << text.toStdString();
    return parsed.error.value_or(SetLineError{});
}

void expectError(const QString &text, int column, const char *remedy)
{
    const SetLineError error = errorOf(text);
    EXPECT_EQ(error.column, column) << text.toStdString() << ": " << error.words.toStdString();
    EXPECT_THAT(error.words.toStdString(), testing::HasSubstr(remedy)) << text.toStdString();
}

SetLine line(int sets, int reps, Target target = {})
{
    SetLine l;
    l.sets = sets;
    l.reps = reps;
    l.target = target;
    return l;
}

} // namespace

TEST(SetLine, ReadsEachKindOfTarget)
{
    EXPECT_EQ(one(u"4x3 @8"_qs), line(4, 3, RpeTarget{8.0, {}}));
    EXPECT_EQ(one(u"1x1 @8.5"_qs), line(1, 1, RpeTarget{8.5, {}}));
    EXPECT_EQ(one(u"5x5 75%"_qs), line(5, 5, ShareTarget{75.0}));
    EXPECT_EQ(one(u"3x5 102.5kg"_qs), line(3, 5, LoadTarget{102.5, false}));
    EXPECT_EQ(one(u"3x5 225lb"_qs), line(3, 5, LoadTarget{225 * kKgPerPound, true}));
    EXPECT_EQ(one(u"3x5"_qs), line(3, 5, {}));
}

TEST(SetLine, DoesNotMindSpacesCaseOrTheMultiplicationSign)
{
    const SetLine expected = line(4, 3, LoadTarget{100.0, false});
    for (const QString &text : {u"4x3 100kg"_qs, u" 4 X 3  100 KG "_qs, u"4\u00d73\t100Kg"_qs})
        EXPECT_EQ(one(text), expected) << text.toStdString();
    EXPECT_EQ(one(u"4x3@ 8"_qs), line(4, 3, RpeTarget{8.0, {}}));
}

TEST(SetLine, BlankTextIsACardWithoutSets)
{
    EXPECT_TRUE(parseSetLines({}).lines.empty());
    EXPECT_FALSE(parseSetLines(u"  \n "_qs).error);
}

TEST(SetLine, ReadsARowALine)
{
    const ParsedSetLines parsed = parseSetLines(u"1x1 @8\n\n3x3 @7"_qs);
    EXPECT_THAT(parsed.lines,
        testing::ElementsAre(line(1, 1, RpeTarget{8.0, {}}), line(3, 3, RpeTarget{7.0, {}})));
    EXPECT_EQ(errorOf(u"1x1 @8\n3x @7"_qs).line, 2);
}

TEST(SetLine, ErrorsPointAtTheColumnAndSayWhatToWrite)
{
    expectError(u"heavy"_qs, 1, "4x3 @8");
    expectError(u"0x3"_qs, 1, "1 to 30 sets");
    expectError(u"31x3"_qs, 1, "1 to 30 sets");
    expectError(u"4"_qs, 2, "write x and the reps");
    expectError(u"4*3"_qs, 2, "write x and the reps");
    expectError(u"4x"_qs, 3, "write the reps");
    expectError(u"4x51"_qs, 3, "1 to 50 reps");
    expectError(u"4x2.5"_qs, 4, "whole numbers");
    expectError(u"4x99999999999999999999"_qs, 3, "1 to 50 reps");
    expectError(u"4x3 @"_qs, 6, "1 to 10");
    expectError(u"4x3 @11"_qs, 6, "1 to 10");
    expectError(u"4x3 @8.3"_qs, 6, "in halves");
    expectError(u"4x3 @8,"_qs, 8, "after the comma");
    expectError(u"4x3 1,000kg"_qs, 9, "two decimals");
    expectError(u"4x3 100."_qs, 9, "digit after the point");
    expectError(u"4x3 100.125kg"_qs, 11, "two decimals");
    expectError(u"4x3 100"_qs, 8, "75% of the max, 100kg or 225lb");
    expectError(u"4x3 8 rpe"_qs, 7, "write @8");
    expectError(u"4x3 0%"_qs, 5, "more than 0%");
    expectError(u"4x3 151%"_qs, 5, "at most 150%");
    expectError(u"4x3 0kg"_qs, 5, "above 0");
    expectError(u"4x3 1001kg"_qs, 5, "1000 kg");
    expectError(u"4x3 @8 3x3 @7"_qs, 8, "row of their own");
    expectError(u"4x3 @8 75%"_qs, 8, "row of their own");
}

TEST(SetLine, ReadsADecimalCommaAndWritesAPoint)
{
    for (const auto &[typed, kept] :
        {std::pair{u"3x5 102,5kg"_qs, u"3x5 102.5kg"_qs}, {u"4x3 @8,5"_qs, u"4x3 @8.5"_qs},
            {u"1x5 225,25lb then 2x5 -7,5%"_qs, u"1x5 225.25lb\n2x5 -7.5%"_qs}}) {
        const ParsedSetLines parsed = parseSetLines(typed);
        ASSERT_FALSE(parsed.error) << qPrintable(parsed.error->words);
        EXPECT_EQ(setLineText(parsed.lines), kept);
    }
}

TEST(SetLine, ReadsReservesAndRanges)
{
    EXPECT_EQ(one(u"3x5 2RIR"_qs), line(3, 5, ReserveTarget{2.0, {}}));
    EXPECT_EQ(one(u"3x5 1-2 rir"_qs), line(3, 5, ReserveTarget{1.0, 2.0}));
    EXPECT_EQ(one(u"3x5 @7-8.5"_qs), line(3, 5, RpeTarget{7.0, 8.5}));
    SetLine range = line(3, 4, RpeTarget{8.0, {}});
    range.mostReps = 6;
    EXPECT_EQ(one(u"3x4-6 @8"_qs), range);
    EXPECT_EQ(expectedReps(range), 5);
}

TEST(SetLine, ReadsDropsFromTheTopSet)
{
    using In = DropTarget::In;
    EXPECT_EQ(one(u"3x3 -10%"_qs), line(3, 3, DropTarget{10.0, In::percent}));
    EXPECT_EQ(one(u"3x3 - 7.5 kg"_qs), line(3, 3, DropTarget{7.5, In::kilogram}));
    EXPECT_EQ(one(u"3x3 \u221220lb"_qs), line(3, 3, DropTarget{20.0, In::pound}));
}

TEST(SetLine, ReadsAsManyAsPossible)
{
    SetLine most = line(1, 1, ShareTarget{70.0});
    most.asManyAsPossible = true;
    EXPECT_EQ(one(u"1xAMRAP 70%"_qs), most);
    EXPECT_EQ(one(u"1x1+ 70%"_qs), most);
    most.mostReps = 10;
    EXPECT_EQ(one(u"1x amrap max 10 70%"_qs), most);
    most.reps = 5;
    EXPECT_EQ(one(u"1x5+ max10 70%"_qs), most);
    EXPECT_EQ(setLineText(most), u"1x5+ max 10 70%"_qs);
    EXPECT_EQ(expectedReps(most), 5);
}

TEST(SetLine, ReadsLeadRepSets)
{
    SetLine lead = line(4, 3, RpeTarget{8.0, {}});
    lead.leadReps = 1;
    EXPECT_EQ(one(u"4x1+2 @8"_qs), lead);
    lead.restCode = u"feet_up"_qs;
    EXPECT_EQ(one(u"4x1+2(feet_up) @8"_qs), lead);
    EXPECT_EQ(one(u"4x1+2( Feet_Up ) @8"_qs), lead);
    EXPECT_EQ(setLineText(lead), u"4x1+2(feet_up) @8"_qs);
}

TEST(SetLine, ReadsMannerRestAndNoteInAnyOrder)
{
    SetLine full = line(3, 2, RpeTarget{7.0, {}});
    full.manner = Tempo{4, 2, 0};
    full.restSeconds = 180;
    full.note = u"soft; 2/3 speed"_qs;
    EXPECT_EQ(one(u"3x2 @7 tempo 4-2-0 rest 3min; soft; 2/3 speed"_qs), full);
    EXPECT_EQ(one(u"3x2 rest 3:00 TEMPO4-2-0 @7;soft; 2/3 speed "_qs), full);
    EXPECT_EQ(one(u"3x2 rest 180s @7 tempo 4-2-0 ; soft; 2/3 speed"_qs), full);
    full.manner = Pause{3};
    full.restSeconds = 95;
    EXPECT_EQ(setLineText(full), u"3x2 @7 pause 3 rest 95s ; soft; 2/3 speed"_qs);
}

TEST(SetLine, ThenPartsTheLinesOfOneRow)
{
    const ParsedSetLines parsed = parseSetLines(u"1x1 @8 then 3x3 -10%THEN1x5+ 60%"_qs);
    ASSERT_FALSE(parsed.error) << parsed.error->words.toStdString();
    EXPECT_EQ(setLineText(parsed.lines), u"1x1 @8\n3x3 -10%\n1x5+ 60%"_qs);
    EXPECT_EQ(errorOf(u"1x1 @8 then 3x"_qs).column, 15);
    EXPECT_TRUE(
        parseSetLines(u"1x1 @8\nthen 3x3"_qs).lines == parseSetLines(u"1x1 @8 then 3x3"_qs).lines);
}

TEST(SetLine, ThenIsAWordOfTheNoteAndNoPartOfAnother)
{
    EXPECT_EQ(one(u"3x3 @8 ; slow, then fast"_qs).note, u"slow, then fast"_qs);
    EXPECT_EQ(one(u"3x1+2(then_some) @8"_qs).restCode, u"then_some"_qs);
    EXPECT_EQ(one(u"3x1+2(then) @8"_qs).restCode, u"then"_qs);
    EXPECT_TRUE(parseSetLines(u"1x1 @8 thence 3x3"_qs).error);
    EXPECT_TRUE(parseSetLines(u"1x1 rest 90sthen 3x3"_qs).error);
}

TEST(SetLine, ASlashIsRefusedWithTheWordToWrite)
{
    expectError(u"1x1 @8 / 3x3 -10%"_qs, 8, "Write then in place of the slash");
    expectError(u"1x1 @8/3x3"_qs, 7, "Write then in place of the slash");
    expectError(u"/3x3"_qs, 1, "Write then in place of the slash");
    EXPECT_EQ(one(u"3x3 @8 ; 2/3 speed"_qs).note, u"2/3 speed"_qs);
}

TEST(SetLine, OnOneRowItReadsAsBefore)
{
    EXPECT_EQ(onOneRow(u"1x1 @8\n3x3   -10%\n\n1x5"_qs), u"1x1 @8 then 3x3 -10% then 1x5"_qs);
    const QString noted = onOneRow(u"1x1 @8 ; clean\n3x3 @7\n2x2"_qs);
    EXPECT_EQ(noted, u"1x1 @8 ; clean\nthen 3x3 @7 then 2x2"_qs) << "a note ends its row";
    EXPECT_EQ(parseSetLines(noted).lines.size(), 3u);
    EXPECT_EQ(onOneRow(u"heavy  as\nit goes"_qs), u"heavy as it goes"_qs);
    EXPECT_EQ(onOneRow({}), QString());
}

TEST(SetLine, ErrorsOfTheRicherPartsPointAndTeachToo)
{
    expectError(u"4x3-10%"_qs, 4, "space before a drop");
    expectError(u"4x3-"_qs, 5, "4-6");
    expectError(u"4x6-4"_qs, 5, "fewer to more");
    expectError(u"4x49+2"_qs, 6, "50 reps in all");
    expectError(u"1x8+ max 5"_qs, 10, "not below");
    expectError(u"1xAMRAP max"_qs, 12, "AMRAP max 10");
    expectError(u"4x1+2("_qs, 7, "code of the variation");
    expectError(u"4x1+2(feet_up"_qs, 14, "Close the bracket");
    expectError(u"4x1+2(feet-up)"_qs, 7, "code of a variation");
    expectError(u"4x3 @8-7"_qs, 8, "easier to harder");
    expectError(u"4x3 2-1RIR"_qs, 7, "fewer to more");
    expectError(u"4x3 1-2"_qs, 8, "take a range");
    expectError(u"4x3 10RIR"_qs, 5, "0 to 9");
    expectError(u"4x3 75-80%"_qs, 10, "take a range");
    expectError(u"4x3 -10"_qs, 8, "-10%, -10kg or -20lb");
    expectError(u"4x3 -100%"_qs, 6, "below 100");
    expectError(u"4x3 tempo 4-2"_qs, 14, "all three counts");
    expectError(u"4x3 tempo 4-2-21"_qs, 15, "0 to 20");
    expectError(u"4x3 tempo 4-2-0 pause 2"_qs, 17, "there already");
    expectError(u"4x3 rest 3"_qs, 11, "min or s");
    expectError(u"4x3 rest 2:75"_qs, 12, "two digits");
    expectError(u"4x3 rest 61min"_qs, 10, "60 minutes");
}

TEST(SetLine, TheGrammarsLimitsMayBeWritten)
{
    // Those of the grammar in set_line.h: one step more is refused above.
    for (const QString &text : {u"30x50"_qs, u"1x1"_qs, u"1x25+25"_qs, u"1x49-50"_qs, u"3x3 @1"_qs,
             u"3x3 @10"_qs, u"3x3 @9.5-10"_qs, u"3x3 0RIR"_qs, u"3x3 9RIR"_qs, u"3x3 8.5-9RIR"_qs,
             u"3x3 0.01%"_qs, u"3x3 150%"_qs, u"3x3 0.01kg"_qs, u"3x3 1000kg"_qs, u"3x3 -99.99%"_qs,
             u"3x3 -999.99kg"_qs, u"3x3 tempo 20-20-20"_qs, u"3x3 tempo 0-0-0"_qs,
             u"3x3 pause 0"_qs, u"3x3 pause 20"_qs, u"3x3 rest 1s"_qs, u"3x3 rest 60min"_qs,
             u"3x3 rest 60:00"_qs, u"3x3 rest 3600s"_qs, u"3x3 rest 2:59"_qs, u"1x50+ max 50"_qs})
        EXPECT_EQ(parseSetLines(text).error.has_value(), false) << text.toStdString();
    EXPECT_EQ(one(u"3x3 rest 2:09"_qs).restSeconds, 129);
    EXPECT_EQ(one(u"3x3 rest 2 min"_qs).restSeconds, 120);
}

TEST(SetLine, OneStepBeyondTheLimitsIsRefused)
{
    expectError(u"1x26+25"_qs, 6, "50 reps in all");
    expectError(u"1x50-51"_qs, 6, "1 to 50");
    expectError(u"1x5-5"_qs, 5, "fewer to more");
    expectError(u"1x0"_qs, 3, "1 to 50");
    expectError(u"3x3 @0.5"_qs, 6, "1 to 10");
    expectError(u"3x3 @10.5"_qs, 6, "1 to 10");
    expectError(u"3x3 @8-8"_qs, 8, "easier to harder");
    expectError(u"3x3 9.5RIR"_qs, 5, "0 to 9");
    expectError(u"3x3 2.2RIR"_qs, 5, "halves");
    expectError(u"3x3 2-2RIR"_qs, 7, "fewer to more");
    expectError(u"3x3 9-9.5RIR"_qs, 7, "0 to 9");
    expectError(u"3x3 150.01%"_qs, 5, "150%");
    expectError(u"3x3 1000.01kg"_qs, 5, "1000 kg");
    expectError(u"3x3 -0%"_qs, 6, "above 0");
    expectError(u"3x3 -1000kg"_qs, 6, "below 1000");
    expectError(u"3x3 pause 21"_qs, 11, "0 to 20");
    expectError(u"3x3 pause 2 pause 2"_qs, 13, "there already");
    expectError(u"3x3 rest 0s"_qs, 10, "1 to 3600");
    expectError(u"3x3 rest 3601s"_qs, 10, "1 to 3600");
    expectError(u"3x3 rest 60:01"_qs, 10, "60 minutes");
    expectError(u"3x3 rest 2:60"_qs, 12, "two digits");
    expectError(u"3x3 rest 2:5"_qs, 12, "two digits");
    expectError(u"3x3 rest 90s rest 90s"_qs, 14, "there already");
    expectError(u"1x5+ max 4"_qs, 10, "not below");
    expectError(u"1x5+ max 51"_qs, 10, "1 to 50");
}

TEST(SetLine, TheMiddleOfARangeIsExpectedRoundedDown)
{
    EXPECT_EQ(expectedReps(one(u"1x4-7"_qs)), 5);
    EXPECT_EQ(expectedReps(one(u"1x4"_qs)), 4);
    EXPECT_EQ(expectedReps(one(u"1x1+2"_qs)), 3);
    EXPECT_EQ(expectedReps(one(u"1x5+"_qs)), 5);
}

TEST(SetLine, BeforeAnythingIsWrittenALineIsOneSetOfOneAndATargetTheUsualOne)
{
    // What the dialogs and the completion begin with; common practice, no source.
    EXPECT_EQ(SetLine{}, line(1, 1));
    EXPECT_EQ(setLineText(line(3, 5, RpeTarget{})), u"3x5 @8"_qs);
    EXPECT_EQ(setLineText(line(3, 5, ReserveTarget{})), u"3x5 2RIR"_qs);
    EXPECT_EQ(setLineText(line(3, 5, ShareTarget{})), u"3x5 75%"_qs);
    EXPECT_EQ(setLineText(line(3, 5, DropTarget{})), u"3x5 -10%"_qs);
    SetLine paused = line(1, 1);
    paused.manner = Pause{};
    EXPECT_EQ(setLineText(paused), u"1x1 pause 2"_qs);
}

TEST(SetLine, NumbersArePrintedWithAtMostTwoDecimals)
{
    EXPECT_EQ(setLineText(line(1, 1, LoadTarget{100.126, false})), u"1x1 100.13kg"_qs);
    EXPECT_EQ(setLineText(line(1, 1, LoadTarget{225 * kKgPerPound, true})), u"1x1 225lb"_qs);
    SetLine rest = line(1, 1);
    rest.restSeconds = 60;
    EXPECT_EQ(setLineText(rest), u"1x1 rest 1min"_qs);
    rest.restSeconds = 59;
    EXPECT_EQ(setLineText(rest), u"1x1 rest 59s"_qs);
}

TEST(SetLine, TheUpperEndOfARangeKeepsToTheBoundsOfTheLower)
{
    expectError(u"3x3 @8-1"_qs, 8, "easier to harder");
    expectError(u"3x3 @8-10.5"_qs, 8, "1 to 10");
    expectError(u"3x3 @8-0.5"_qs, 8, "1 to 10");
    expectError(u"3x3 9.5-10RIR"_qs, 5, "0 to 9");
}

TEST(SetLine, ACodeHasAnyLetterAnyDigitAndTheUnderscore)
{
    EXPECT_EQ(one(u"1x1+2(az_09)"_qs).restCode, u"az_09"_qs);
    for (const QString &text : {u"1x1+2(a`)"_qs, u"1x1+2(a{)"_qs, u"1x1+2(a:)"_qs, u"1x1+2(a.)"_qs})
        expectError(text, 7, "code of a variation");
}

TEST(SetLine, WhatFollowsARestNeedsNoBlank)
{
    const SetLine rested = one(u"3x3 rest 2:09;slow"_qs);
    EXPECT_EQ(rested.restSeconds, 129);
    EXPECT_EQ(rested.note, u"slow"_qs);
}

TEST(SetLine, APlaceIsCountedFromTheFirstRowAndItsFirstCharacter)
{
    EXPECT_EQ(SetLineError{}.line, 1);
    EXPECT_EQ(SetLineError{}.column, 1);
    EXPECT_EQ(errorOf(u"x"_qs).line, 1);
    EXPECT_EQ(errorOf(u"x"_qs).column, 1);
    EXPECT_EQ(setLineText(line(1, 1, LoadTarget{})), u"1x1 0kg"_qs) << "kg unless said";
}
