#include "core/plan/progression.h"

#include "core/plan/lay_out.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/core/plan/set_line_values.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

struct Ids
{
    qint64 last = 100;
    CardId operator()() { return {++last}; }
};

std::vector<std::string> carried(const QString &line, const ProgressionRule &rule, int weeks)
{
    std::vector<std::string> lines;
    for (int week = 1; week <= weeks; ++week)
        lines.push_back(
            setLineText(progressed(parseSetLines(line).lines.front(), rule, week)).toStdString());
    return lines;
}

Lifter grownUp()
{
    Lifter lifter;
    lifter.isAdult = true;
    return lifter;
}

Progression carry(const std::vector<Card> &week, const ProgressionRule &rule, int weeks)
{
    return progress(week, rule, weeks, grownUp(), Ids());
}

std::vector<Card> weekOf(const QString &first, const QString &second)
{
    return {cardOf(1, kMonday, 0, {1}, first), cardOf(2, kMonday, 1, {2}, second)};
}

rc::Gen<ProgressionRule> anyRule()
{
    return rc::gen::exec([]() -> ProgressionRule {
        const LoadIn in = *rc::gen::element(LoadIn::percent, LoadIn::kilogram, LoadIn::pound);
        const double amount = *rc::gen::inRange(-4000, 4000) / 100.0;
        switch (*rc::gen::inRange(0, 5)) {
        case 0:
            return AddLoad{amount, in};
        case 1:
            return AddReps{*rc::gen::inRange(-5, 6), *rc::gen::inRange(0, 60)};
        case 2:
            return RaiseRpe{amount / 10.0, *rc::gen::inRange(0, 120) / 10.0};
        case 3:
            return DropSets{*rc::gen::inRange(-3, 4), *rc::gen::inRange(-1, 5)};
        default:
            return Wave{{0.0, amount, amount / 2.0}, amount / 4.0, in};
        }
    });
}

} // namespace

TEST(Progression, AddsLoad)
{
    EXPECT_THAT(carried(u"3x5 100kg"_qs, AddLoad{2.5, LoadIn::kilogram}, 3),
        ElementsAre("3x5 102.5kg", "3x5 105kg", "3x5 107.5kg"));
    EXPECT_THAT(carried(u"3x5 225lb"_qs, AddLoad{5, LoadIn::pound}, 2),
        ElementsAre("3x5 230lb", "3x5 235lb"));
    EXPECT_THAT(carried(u"3x5 70%"_qs, AddLoad{2.5, LoadIn::percent}, 2),
        ElementsAre("3x5 72.5%", "3x5 75%"));
    EXPECT_THAT(carried(u"3x5 100kg"_qs, AddLoad{1, LoadIn::percent}, 2),
        ElementsAre("3x5 101kg", "3x5 102kg"));
    EXPECT_THAT(carried(u"3x5 -10%"_qs, AddLoad{2.5, LoadIn::percent}, 1), ElementsAre("3x5 -10%"));
}

TEST(Progression, AddsRepsUpToItsBound)
{
    EXPECT_THAT(carried(u"3x5 @8"_qs, AddReps{1, 7}, 3), ElementsAre("3x6 @8", "3x7 @8", "3x7 @8"));
    EXPECT_THAT(
        carried(u"3x4-6 @8"_qs, AddReps{1, 8}, 3), ElementsAre("3x5-7 @8", "3x6-8 @8", "3x6-8 @8"));
    EXPECT_THAT(carried(u"3x1+2 @8"_qs, AddReps{1, 5}, 1), ElementsAre("3x1+3 @8"));
    EXPECT_THAT(carried(u"3x10 @8"_qs, AddReps{1, 8}, 1), ElementsAre("3x10 @8")); // never fewer
}

TEST(Progression, RaisesEffortUpToItsBound)
{
    EXPECT_THAT(
        carried(u"3x5 @7"_qs, RaiseRpe{0.5, 8.0}, 3), ElementsAre("3x5 @7.5", "3x5 @8", "3x5 @8"));
    EXPECT_THAT(
        carried(u"3x5 @7-8"_qs, RaiseRpe{1.0, 9.0}, 2), ElementsAre("3x5 @8-9", "3x5 @8-9"));
    EXPECT_THAT(carried(u"3x5 3RIR"_qs, RaiseRpe{1.0, 9.0}, 3),
        ElementsAre("3x5 2RIR", "3x5 1RIR", "3x5 1RIR"));
}

TEST(Progression, DropsSets)
{
    EXPECT_THAT(
        carried(u"4x3 @8"_qs, DropSets{1, 2}, 3), ElementsAre("3x3 @8", "2x3 @8", "2x3 @8"));
}

TEST(Progression, Waves)
{
    EXPECT_THAT(carried(u"3x5 70%"_qs, Wave{{0, 5, 10}, 2.5, LoadIn::percent}, 6),
        ElementsAre("3x5 75%", "3x5 80%", "3x5 72.5%", "3x5 77.5%", "3x5 82.5%", "3x5 75%"));
}

TEST(Progression, LoadsStayWithinTheGrammar)
{
    EXPECT_THAT(carried(u"3x5 148%"_qs, AddLoad{2.5, LoadIn::percent}, 2),
        ElementsAre("3x5 150%", "3x5 150%"));
    EXPECT_THAT(carried(u"3x5 3%"_qs, AddLoad{-1.5, LoadIn::percent}, 2),
        ElementsAre("3x5 1.5%", "3x5 1%"));
    EXPECT_THAT(carried(u"3x5 998kg"_qs, AddLoad{1.5, LoadIn::kilogram}, 2),
        ElementsAre("3x5 999.5kg", "3x5 1000kg"));
    EXPECT_THAT(carried(u"3x5 3kg"_qs, AddLoad{-1.5, LoadIn::kilogram}, 2),
        ElementsAre("3x5 1.5kg", "3x5 1kg"));
    EXPECT_THAT(carried(u"3x5 3lb"_qs, AddLoad{-1.5, LoadIn::pound}, 2),
        ElementsAre("3x5 1.5lb", "3x5 1lb"));
    EXPECT_THAT(carried(u"3x5 100kg"_qs, AddLoad{5, LoadIn::pound}, 1), // 2.268 kg
        ElementsAre("3x5 102.27kg"));
    EXPECT_THAT(carried(u"3x5 200lb"_qs, AddLoad{1, LoadIn::percent}, 2),
        ElementsAre("3x5 202lb", "3x5 204lb"));
}

TEST(Progression, RepsOfEachKindOfSetGoUpToTheRulesBound)
{
    EXPECT_THAT(carried(u"1x5+ max 8 70%"_qs, AddReps{1, 6}, 2),
        ElementsAre("1x6+ max 9 70%", "1x6+ max 9 70%"));
    EXPECT_THAT(
        carried(u"3x48 @8"_qs, AddReps{1, 60}, 3), ElementsAre("3x49 @8", "3x50 @8", "3x50 @8"));
    EXPECT_THAT(carried(u"3x2+2 @8"_qs, AddReps{-1, 60}, 3),
        ElementsAre("3x2+1 @8", "3x2+1 @8", "3x2+1 @8")); // a rep has to follow the lead
    EXPECT_THAT(carried(u"3x2 @8"_qs, AddReps{-1, 60}, 2), ElementsAre("3x1 @8", "3x1 @8"));
    EXPECT_THAT(carried(u"3x1-2 @8"_qs, AddReps{-1, 60}, 1), ElementsAre("3x1-2 @8"));
}

TEST(Progression, EffortStaysOnItsScales)
{
    EXPECT_THAT(carried(u"3x5 @9"_qs, RaiseRpe{0.5, 12.0}, 3),
        ElementsAre("3x5 @9.5", "3x5 @10", "3x5 @10"));
    EXPECT_THAT(
        carried(u"3x5 @2"_qs, RaiseRpe{-0.5, 9.0}, 3), ElementsAre("3x5 @1.5", "3x5 @1", "3x5 @1"));
    EXPECT_THAT(carried(u"3x5 8RIR"_qs, RaiseRpe{-0.5, 9.0}, 3),
        ElementsAre("3x5 8.5RIR", "3x5 9RIR", "3x5 9RIR"));
    EXPECT_THAT(carried(u"3x5 2-3RIR"_qs, RaiseRpe{0.5, 8.7}, 2),
        ElementsAre("3x5 1.5-2.5RIR", "3x5 1.5-2.5RIR")); // in halves, so up to 8.5
    EXPECT_THAT(carried(u"3x5 @9.5"_qs, RaiseRpe{0.5, 9.0}, 1), ElementsAre("3x5 @9.5"));
}

TEST(Progression, SetsStayWithinTheGrammar)
{
    EXPECT_THAT(carried(u"2x3 @8"_qs, DropSets{1, 0}, 2), ElementsAre("1x3 @8", "1x3 @8"));
    EXPECT_THAT(carried(u"29x3 @8"_qs, DropSets{-1, 1}, 2), ElementsAre("30x3 @8", "30x3 @8"));
    EXPECT_THAT(carried(u"2x3 @8"_qs, DropSets{1, 4}, 1), ElementsAre("2x3 @8")); // never more
}

TEST(Progression, AWaveIsReckonedFromItsFirstStep)
{
    EXPECT_THAT(carried(u"3x5 100kg"_qs, Wave{{5, 0}, 2.5, LoadIn::kilogram}, 4),
        ElementsAre("3x5 95kg", "3x5 102.5kg", "3x5 97.5kg", "3x5 105kg"));
    EXPECT_THAT(
        carry(weekOf(u"3x5 70%"_qs, {}), Wave{{0, 0, 5}, 0, LoadIn::percent}, 1).remarks, IsEmpty())
        << "it acts, if late";
}

TEST(Progression, ARuleAsItIsOfferedGoesUpInUsualSteps)
{
    // Common practice, no source.
    EXPECT_THAT(carried(u"3x5 100kg"_qs, AddLoad{}, 1), ElementsAre("3x5 102.5kg"));
    EXPECT_THAT(carried(u"3x11 100kg"_qs, AddReps{}, 2), ElementsAre("3x12 100kg", "3x12 100kg"));
    EXPECT_THAT(carried(u"3x5 @9"_qs, RaiseRpe{}, 2), ElementsAre("3x5 @9.5", "3x5 @9.5"));
    EXPECT_THAT(carried(u"3x5 @9"_qs, DropSets{}, 3), ElementsAre("2x5 @9", "1x5 @9", "1x5 @9"));
    EXPECT_THAT(carried(u"3x5 70%"_qs, Wave{}, 4),
        ElementsAre("3x5 72.5%", "3x5 75%", "3x5 72.5%", "3x5 75%"));
}

TEST(Progression, CarriesAWeekOnItsWeekdays)
{
    const Progression carriedOn =
        carry(weekOf(u"1x1 @8\n3x3 -10%"_qs, u"3x5 60kg"_qs), AddLoad{2.5, LoadIn::kilogram}, 2);
    ASSERT_EQ(carriedOn.rows.size(), 4u);
    EXPECT_EQ(carriedOn.rows[1].day, kMonday.addDays(7));
    EXPECT_EQ(carriedOn.rows[1].setLine, u"3x5 62.5kg"_qs);
    EXPECT_EQ(carriedOn.rows[1].position, 1);
    EXPECT_EQ(carriedOn.rows[3].day, kMonday.addDays(14));
    EXPECT_EQ(carriedOn.rows[3].setLine, u"3x5 65kg"_qs);
    EXPECT_NE(carriedOn.rows[0].id, carriedOn.rows[2].id);
    ASSERT_EQ(carriedOn.remarks.size(), 1); // the line by RPE
    EXPECT_TRUE(carriedOn.remarks.front().contains(u"1x1 @8"));
}

TEST(Progression, SaysWhereItCannotAct)
{
    EXPECT_EQ(carry(weekOf(u"heavy"_qs, {}), AddReps{}, 1).remarks.size(), 1);
    EXPECT_EQ(carry(weekOf(u"3x5 60kg"_qs, {}), RaiseRpe{}, 1).remarks.size(), 1);
    EXPECT_EQ(
        carry(weekOf(u"3x5 60%"_qs, {}), AddLoad{2.5, LoadIn::kilogram}, 1).remarks.size(), 1);
    EXPECT_EQ(carry(weekOf(u"1x5 @8"_qs, {}), DropSets{}, 1).remarks.size(), 1);
    EXPECT_THAT(carry(weekOf(u"3x5 @8"_qs, {}), AddReps{}, 1).remarks, IsEmpty());
    EXPECT_EQ(carry(weekOf(u"heavy"_qs, {}), AddReps{}, 1).rows.front().setLine, u"heavy"_qs);
    EXPECT_THROW((void)carry({}, Wave{{}, 0.0, LoadIn::percent}, 1), std::invalid_argument);
    EXPECT_THROW((void)carry({}, AddReps{}, -1), std::invalid_argument);
}

RC_GTEST_PROP(ProgressionProperty, EveryLineCarriedCanBeReadAgain, ())
{
    SetLine line = *anySetLine();
    const ProgressionRule rule = *anyRule();
    const SetLine on = progressed(line, rule, *rc::gen::inRange(1, 20));
    const ParsedSetLines parsed = parseSetLines(setLineText(on));
    RC_ASSERT(!parsed.error);
    RC_ASSERT(parsed.lines.size() == 1u);
    RC_ASSERT(setLineText(parsed.lines) == setLineText(on));
    RC_ASSERT(on.note == line.note && on.manner == line.manner);
}

TEST(Progression, WritesNoMaximalWorkBeforeTheAgeIsKnown)
{
    const std::vector<Card> week{cardOf(1, kMonday, 0, {1}, u"3x3 @8.5"_qs)};
    const Lifter unknown;
    const Progression held = progress(week, RaiseRpe{0.5, 10.0}, 3, unknown, Ids());
    EXPECT_EQ(held.rows[0].setLine, u"3x3 @9"_qs);
    EXPECT_EQ(held.rows[2].setLine, u"3x3 @9"_qs) << "as far as it is no maximal work";
    EXPECT_THAT(held.remarks.join(u' ').toStdString(),
        testing::HasSubstr("No maximal work is suggested before the lifter's age is known."));
    const Progression free = carry(week, RaiseRpe{0.5, 10.0}, 3);
    EXPECT_EQ(free.rows[2].setLine, u"3x3 @10"_qs);
    EXPECT_THAT(free.remarks, IsEmpty());
}

TEST(LayOut, KeepsOrReplacesWhatIsThere)
{
    const std::vector<Card> there = {
        cardOf(1, kMonday, 0, {1}, u"a"_qs), cardOf(2, kMonday.addDays(1), 0, {1}, u"b"_qs)};
    const std::vector<Card> rows = {
        cardOf(9, kMonday, 3, {2}, u"d"_qs), cardOf(8, kMonday, 1, {2}, u"c"_qs)};

    const Edit kept = layOut(there, rows, OnOccupiedDays::keep);
    EXPECT_THAT(kept.cards.before, IsEmpty());
    EXPECT_THAT(kept.cards.after,
        ElementsAre(cardOf(8, kMonday, 1, {2}, u"c"_qs), cardOf(9, kMonday, 2, {2}, u"d"_qs)));

    const Edit replaced = layOut(there, rows, OnOccupiedDays::replace);
    EXPECT_THAT(replaced.cards.before, ElementsAre(there[0])); // the next day is left alone
    EXPECT_THAT(replaced.cards.after,
        ElementsAre(cardOf(8, kMonday, 0, {2}, u"c"_qs), cardOf(9, kMonday, 1, {2}, u"d"_qs)));
}
