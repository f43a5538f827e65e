#include "core/plan/set_line.h"

#include "core/domain/units.h"

#include <QStringList>
#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

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

rc::Gen<SetLine> anySetLine()
{
    const auto target = rc::gen::oneOf(rc::gen::just(Target{}),
        rc::gen::map(
            rc::gen::inRange(2, 21), [](int half) { return Target{RpeTarget{half / 2.0}}; }),
        rc::gen::map(rc::gen::inRange(1, 15001),
            [](int hundredth) { return Target{ShareTarget{hundredth / 100.0}}; }),
        rc::gen::map(rc::gen::pair(rc::gen::inRange(1, 100001), rc::gen::arbitrary<bool>()),
            [](const std::pair<int, bool> &p) {
                const Unit unit = p.second ? Unit::pound : Unit::kilogram;
                return Target{LoadTarget{toKg(p.first / 100.0, unit), p.second}};
            }));
    return rc::gen::map(rc::gen::tuple(rc::gen::inRange(1, kMostSets + 1),
                            rc::gen::inRange(1, kMostReps + 1), target),
        [](const std::tuple<int, int, Target> &t) {
            return SetLine{std::get<0>(t), std::get<1>(t), std::get<2>(t)};
        });
}

} // namespace

TEST(SetLine, ReadsEachKindOfTarget)
{
    EXPECT_EQ(one(u"4x3 @8"_qs), (SetLine{4, 3, RpeTarget{8.0}}));
    EXPECT_EQ(one(u"1x1 @8.5"_qs), (SetLine{1, 1, RpeTarget{8.5}}));
    EXPECT_EQ(one(u"5x5 75%"_qs), (SetLine{5, 5, ShareTarget{75.0}}));
    EXPECT_EQ(one(u"3x5 102.5kg"_qs), (SetLine{3, 5, LoadTarget{102.5, false}}));
    EXPECT_EQ(one(u"3x5 225lb"_qs), (SetLine{3, 5, LoadTarget{225 * kKgPerPound, true}}));
    EXPECT_EQ(one(u"3x5"_qs), (SetLine{3, 5, {}}));
}

TEST(SetLine, DoesNotMindSpacesCaseOrTheMultiplicationSign)
{
    const SetLine expected{4, 3, LoadTarget{100.0, false}};
    for (const QString &text : {u"4x3 100kg"_qs, u" 4 X 3  100 KG "_qs, u"4\u00d73\t100Kg"_qs})
        EXPECT_EQ(one(text), expected) << text.toStdString();
    EXPECT_EQ(one(u"4x3@ 8"_qs), (SetLine{4, 3, RpeTarget{8.0}}));
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
        testing::ElementsAre(SetLine{1, 1, RpeTarget{8.0}}, SetLine{3, 3, RpeTarget{7.0}}));
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
    expectError(u"4x3 @8,5"_qs, 7, "with a point");
    expectError(u"4x3 100."_qs, 9, "digit after the point");
    expectError(u"4x3 100.125kg"_qs, 11, "two decimals");
    expectError(u"4x3 100"_qs, 8, "75% of the max, 100kg or 225lb");
    expectError(u"4x3 8 rpe"_qs, 7, "write @8");
    expectError(u"4x3 0%"_qs, 5, "more than 0%");
    expectError(u"4x3 151%"_qs, 5, "at most 150%");
    expectError(u"4x3 0kg"_qs, 5, "above 0");
    expectError(u"4x3 1001kg"_qs, 5, "1000 kg");
    expectError(u"4x3 @8 3x3 @7"_qs, 8, "row of their own");
}

RC_GTEST_PROP(SetLineProperty, ParseIsTheInverseOfPrint, ())
{
    const auto lines = *rc::gen::container<std::vector<SetLine>>(anySetLine());
    const ParsedSetLines parsed = parseSetLines(print(lines));
    RC_ASSERT(!parsed.error);
    RC_ASSERT(parsed.lines == lines);
}

RC_GTEST_PROP(SetLineProperty, AnyTextIsReadOrRefusedAtAPlaceInside, ())
{
    const auto letters = *rc::gen::container<std::string>(
        rc::gen::elementOf(std::string("0123456789xX@%.,kglb \n")));
    const QString text = QString::fromStdString(letters);
    const ParsedSetLines parsed = parseSetLines(text);
    if (parsed.error) {
        const QStringList rows = text.split(u'\n');
        RC_ASSERT(parsed.error->line >= 1 && parsed.error->line <= rows.size());
        RC_ASSERT(parsed.error->column >= 1);
        RC_ASSERT(parsed.error->column <= rows[parsed.error->line - 1].size() + 1);
        RC_ASSERT(!parsed.error->words.isEmpty());
    }
}
