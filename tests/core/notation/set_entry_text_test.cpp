#include "core/notation/set_entry_text.h"

#include <gmock/gmock.h>

using namespace core;
using testing::DoubleNear;
using testing::HasSubstr;
using testing::Optional;

namespace {

SetEntry planned(int reps = 5, double loadKg = 100.0)
{
    SetEntry entry;
    entry.variation = {1};
    entry.loadKg = loadKg;
    entry.repsPlanned = reps;
    entry.repsDone = reps;
    return entry;
}

SetEntry entered(const char *text, const SetEntry &start = planned(), Unit unit = Unit::kilogram)
{
    const EntryReading reading = readEntry(QString::fromUtf8(text), start, unit);
    EXPECT_FALSE(reading.error) << text << ": "
                                << (reading.error ? reading.error->words.toStdString() : "");
    return reading.entry;
}

std::string refused(const char *text, const SetEntry &start = planned())
{
    const EntryReading reading = readEntry(QString::fromUtf8(text), start, Unit::kilogram);
    EXPECT_TRUE(reading.error) << text;
    return reading.error ? reading.error->words.toStdString() : std::string();
}

} // namespace

TEST(SetEntryText, NothingTypedIsTheSetAsPlanned)
{
    EXPECT_EQ(entered(""), planned());
    EXPECT_EQ(entered("  "), planned());
}

TEST(SetEntryText, OnlyWhatIsWrittenChanges)
{
    const SetEntry entry = entered("x4");
    EXPECT_EQ(entry.repsDone, 4);
    EXPECT_EQ(entry.loadKg, 100.0);
    EXPECT_EQ(entry.rpe, std::nullopt);
    EXPECT_THAT(entry.repsPlanned, Optional(5));
}

TEST(SetEntryText, PartsStandInAnyOrderAndNeedNoBlanks)
{
    for (const char *text : {"102.5x4 @9.5 t3", "t3 @9.5 x4 102.5", "102,5x4@9,5t3",
             "102.5 X 4 9.5 T3", "+2.5 x4 0.5RIR t3", "102.5 x4 0.5 rir t 3"}) {
        const SetEntry entry = entered(text);
        EXPECT_EQ(entry.loadKg, 102.5) << text;
        EXPECT_EQ(entry.repsDone, 4) << text;
        EXPECT_THAT(entry.rpe, Optional(9.5)) << text;
        EXPECT_THAT(entry.touch, Optional(3)) << text;
    }
}

TEST(SetEntryText, ABareNumberUpToTenIsARatingAboveALoad)
{
    EXPECT_THAT(entered("8").rpe, Optional(8.0));
    EXPECT_THAT(entered("10").rpe, Optional(10.0));
    EXPECT_EQ(entered("20").loadKg, 20.0);
    EXPECT_EQ(entered("10kg").loadKg, 10.0);
}

TEST(SetEntryText, RepsMayStandBeforeTheLoad)
{
    for (const char *text : {"100x4", "4x100", "4 x 100 kg", "4*100kg", "4 \u00d7 100"}) {
        EXPECT_EQ(entered(text).loadKg, 100.0) << text;
        EXPECT_EQ(entered(text).repsDone, 4) << text;
        EXPECT_EQ(entered(text).rpe, std::nullopt) << text;
    }
    EXPECT_EQ(entered("3x102,5 @9").loadKg, 102.5);
    EXPECT_EQ(entered("12x60").loadKg, 60.0);
    EXPECT_EQ(entered("20x12").loadKg, 20.0);
    EXPECT_EQ(entered("12x20kg").repsDone, 12);
    EXPECT_THAT(entered("8 x4").rpe, Optional(8.0));
    EXPECT_THAT(refused("4x100 x3"), HasSubstr("reps is there twice"));
}

TEST(SetEntryText, LoadsAreInTheLiftersUnitUnlessOneIsWritten)
{
    EXPECT_THAT(entered("225", planned(), Unit::pound).loadKg, DoubleNear(102.058, 1e-3));
    EXPECT_EQ(entered("100kg", planned(), Unit::pound).loadKg, 100.0);
    EXPECT_THAT(entered("225lb").loadKg, DoubleNear(102.058, 1e-3));
    EXPECT_EQ(entered("-7.5").loadKg, 92.5);
    EXPECT_THAT(entered("+5lb").loadKg, DoubleNear(100.0 + 5 * kKgPerPound, 1e-9));
}

TEST(SetEntryText, StepsCountFromThePlanNotFromWhatWasLogged)
{
    SetEntry logged = planned();
    logged.loadKg = 90.0;
    EXPECT_EQ(readEntry(QStringLiteral("+5"), logged, Unit::kilogram, 100.0).entry.loadKg, 105.0);
}

TEST(SetEntryText, AMissSaysHowManyRepsWentUpExceptOfASingle)
{
    const SetEntry entry = entered("x3 miss");
    EXPECT_TRUE(entry.failed);
    EXPECT_EQ(entry.repsDone, 3);
    EXPECT_EQ(entered("miss", planned(1)).repsDone, 0);
    EXPECT_EQ(entered("x0 m").repsDone, 0);
    EXPECT_THAT(refused("miss"), HasSubstr("How many reps went up"));
    EXPECT_THAT(refused("x0"), HasSubstr("x0 miss"));
}

TEST(SetEntryText, WhatWasLoggedCanBeTakenBack)
{
    SetEntry logged = planned();
    logged.repsDone = 3;
    logged.failed = true;
    logged.rpe = 9.0;
    logged.touch = 4;
    logged.note = QStringLiteral("slow");
    const SetEntry entry = entered("made @- t- ;", logged);
    EXPECT_FALSE(entry.failed);
    EXPECT_EQ(entry.rpe, std::nullopt);
    EXPECT_EQ(entry.touch, std::nullopt);
    EXPECT_EQ(entry.note, QString());
}

TEST(SetEntryText, TheNoteRunsToTheEndAndIsData)
{
    EXPECT_EQ(entered("9; x9 miss @1 <b>; t5").note, QStringLiteral("x9 miss @1 <b>; t5"));
}

TEST(SetEntryText, LeadRepsByPart)
{
    SetEntry set = planned(3);
    set.lead = {{2}, 1};
    EXPECT_EQ(entered("", set).lead->reps, 1);
    const SetEntry entry = entered("x2+1", set);
    EXPECT_EQ(entry.repsDone, 3);
    EXPECT_EQ(entry.lead->reps, 2);
    EXPECT_EQ(entered("x2", set).repsDone, 2);
    EXPECT_THAT(refused("x1+2"), HasSubstr("no lead reps"));
    EXPECT_EQ(entered("x3 +5", set).loadKg, 105.0) << "a heavier bar, not lead reps";
    EXPECT_EQ(entered("x3 +5", set).repsDone, 3);
    EXPECT_EQ(entered("x5+2.5").loadKg, 102.5);
}

TEST(SetEntryText, AMistakeIsNamedWithItsPlace)
{
    const EntryReading reading =
        readEntry(QStringLiteral("x4 heavy @8"), planned(), Unit::kilogram);
    ASSERT_TRUE(reading.error);
    EXPECT_EQ(reading.error->position, 3);
    EXPECT_THAT(reading.error->words.toStdString(), HasSubstr("\"heavy\""));
    EXPECT_THAT(refused("x4 x5"), HasSubstr("reps is there twice"));
    EXPECT_THAT(refused("100 110"), HasSubstr("load is there twice"));
    EXPECT_THAT(refused("8 @9"), HasSubstr("rating is there twice"));
    EXPECT_THAT(refused("@11"), HasSubstr("RPE is 1 to 10"));
    EXPECT_THAT(refused("8.3"), HasSubstr("RPE is 1 to 10 in halves"));
    EXPECT_THAT(refused("t6"), HasSubstr("touch score is 1 to 5"));
    EXPECT_THAT(refused("1025"), HasSubstr("at most 700 kg"));
    EXPECT_THAT(refused("-100"), HasSubstr("more than 0"));
}

TEST(SetEntryText, WhatNobodyKnowsHasToBeTyped)
{
    SetEntry open = planned(5, 0.0);
    EXPECT_THAT(refused("", open), HasSubstr("No load"));
    EXPECT_THAT(refused("x5", open), HasSubstr("No load"));
    EXPECT_THAT(refused("+5", open), HasSubstr("count from"));
    EXPECT_EQ(entered("90", open).loadKg, 90.0);
    SetEntry many = planned();
    many.repsDone = 0;
    EXPECT_THAT(refused("", many), HasSubstr("How many reps"));
    EXPECT_EQ(entered("x9", many).repsDone, 9);
}

TEST(SetEntryText, WhatCanBeRepsIsTakenForThemByItsSize)
{
    // No bar is as light as 10 kg, and nobody does more than 30 reps of what is logged here.
    const auto both = [](const char *text) {
        const SetEntry entry = entered(text);
        return std::pair(entry.loadKg, entry.repsDone);
    };
    EXPECT_EQ(both("10x11"), std::pair(11.0, 10));
    EXPECT_EQ(both("11x10"), std::pair(11.0, 10));
    EXPECT_EQ(both("10kg x10"), std::pair(10.0, 10));
    EXPECT_EQ(both("30x31"), std::pair(31.0, 30));
    EXPECT_EQ(both("31x30"), std::pair(31.0, 30));
    EXPECT_EQ(both("31x32"), std::pair(31.0, 32));
    EXPECT_EQ(both("30x30"), std::pair(30.0, 30));
    EXPECT_EQ(both("12x10kg"), std::pair(10.0, 12));
}

TEST(SetEntryText, EachPartIsWrittenOnce)
{
    for (const char *text : {"@8 9RIR", "@8 @-", "@- 8", "t3 t-", "t3 t4", "miss made", "m miss",
             "+5 -5", "+5 100", "100 4x90"})
        EXPECT_THAT(refused(text), HasSubstr("is there twice")) << text;
}

TEST(SetEntryText, AMistakeIsPointedAtWhereItStands)
{
    const auto position = [](const char *text, const SetEntry &start = planned()) {
        const EntryReading reading = readEntry(QString::fromUtf8(text), start, Unit::kilogram);
        return reading.error ? reading.error->position : -1;
    };
    EXPECT_EQ(position("x4  x5"), 4);
    EXPECT_EQ(position("@9 miss"), 3) << "how many reps?";
    EXPECT_EQ(position("x0 @9"), 5) << "something is missing at the end";
    EXPECT_EQ(position("x4 1025"), 3);
    EXPECT_EQ(position("@9 5x1025"), 3);
    EXPECT_EQ(position("@9 -100"), 3);
    EXPECT_EQ(position("@9 x1+2"), 3);
    EXPECT_EQ(position("@9 +5", planned(5, 0.0)), 3);
    EXPECT_EQ(position("x4 @11"), 0) << "of the set as a whole";
}

TEST(SetEntryText, ALeadSetHasALeadRepOrIsOneNumber)
{
    SetEntry set = planned(3);
    set.lead = {{2}, 1};
    EXPECT_THAT(refused("x0+2", set), HasSubstr("as one number"));
    EXPECT_EQ(entered("x1+2", set).repsDone, 3);
}

TEST(SetEntryText, AMissedSingleThatIsTakenBackHasItsRepAgain)
{
    EXPECT_THAT(refused("made",
                    [] {
                        SetEntry missed = planned(1);
                        missed.repsDone = 0;
                        missed.failed = true;
                        return missed;
                    }()),
        HasSubstr("How many reps"));
    EXPECT_FALSE(entered("made x1", planned(1)).failed);
}

TEST(SetEntryText, BehindTheRepsTheLoadIsInTheUnitWrittenOrTheLifters)
{
    EXPECT_THAT(entered("5x225lb").loadKg, DoubleNear(102.058, 1e-3));
    EXPECT_THAT(entered("5x225", planned(), Unit::pound).loadKg, DoubleNear(102.058, 1e-3));
    EXPECT_EQ(entered("5x100kg", planned(), Unit::pound).loadKg, 100.0);
    EXPECT_THAT(
        entered("+5", planned(), Unit::pound).loadKg, DoubleNear(100.0 + 5 * kKgPerPound, 1e-9));
}

TEST(SetEntryText, ATouchOfAnyLengthIsOneOfTheFiveOrRefused)
{
    EXPECT_THAT(entered("t1").touch, Optional(1));
    EXPECT_THAT(entered("t5").touch, Optional(5));
    for (const char *text : {"t0", "t10", "t1111", "t99999999999"})
        EXPECT_THAT(refused(text), HasSubstr("touch score is 1 to 5")) << text;
}

TEST(SetEntryText, AMissingLoadIsOfTheSetAsAWhole)
{
    for (const char *text : {"", "x5 @9"}) {
        const EntryReading reading =
            readEntry(QString::fromUtf8(text), planned(5, 0.0), Unit::kilogram);
        ASSERT_TRUE(reading.error);
        EXPECT_EQ(reading.error->position, 0) << text;
    }
    EXPECT_EQ(EntryError{}.position, 0);
}
