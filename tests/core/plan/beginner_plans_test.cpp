#include "core/plan/progression.h"
#include "core/plan/template.h"
#include "tests/core/plan/plan_rows.h"

#include <gmock/gmock.h>

// Plans of minors and novices: what is laid out or carried on for them holds no maximal work.

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

const QDate kBeginnersMonday(2026, 3, 2);

Lifter adult()
{
    Lifter lifter;
    lifter.isAdult = true;
    return lifter;
}

Lifter minor()
{
    Lifter lifter;
    lifter.id = {1};
    lifter.birthYear = 2011;
    return lifter;
}

Progression carriedFor(
    const Lifter &lifter, const QString &line, const ProgressionRule &rule, int weeks)
{
    const Card card = cardOf(1, kBeginnersMonday, 0, idOf("comp"), line);
    return progress(std::span(&card, 1), rule, weeks, lifter, [] { return CardId{9}; });
}

std::vector<std::string> linesOf(const Progression &progression)
{
    std::vector<std::string> lines;
    for (const Card &row : progression.rows)
        lines.push_back(row.setLine.toStdString());
    return lines;
}

TemplateResult laidFor(const Lifter &lifter, const QString &setLine)
{
    BlockTemplate block;
    block.name = QStringLiteral("Peak");
    block.cards = {{1, 0, 0, QStringLiteral("comp"), setLine, {}}};
    const std::vector<Card> none;
    return applyTemplate(block, {lifter, kBeginnersMonday, builtInCatalogue(), none, nullptr},
        [] { return CardId{9}; });
}

} // namespace

TEST(BeginnersProgression, RaisesEffortNoHigherThanEight)
{
    const RaiseRpe rule{0.5, 9.5};
    const Progression young = carriedFor(minor(), u"3x5 @7"_qs, rule, 4);
    EXPECT_THAT(linesOf(young), ElementsAre("3x5 @7.5", "3x5 @8", "3x5 @8", "3x5 @8"));
    EXPECT_THAT(young.remarks, SizeIs(2)) << "8 in place of 8.5, and of 9";
    EXPECT_THAT(linesOf(carriedFor(Lifter(), u"3x5 @7"_qs, rule, 4)),
        ElementsAre("3x5 @7.5", "3x5 @8", "3x5 @8.5", "3x5 @9"));
    EXPECT_THAT(carriedFor(minor(), u"3x5 @7"_qs, rule, 2).remarks, IsEmpty());
}

TEST(BeginnersProgression, AShareThatWouldBecomeMaximalStaysWhereItWas)
{
    const AddLoad rule{2.5, LoadIn::percent};
    EXPECT_THAT(linesOf(carriedFor(minor(), u"3x3 90%"_qs, rule, 3)),
        ElementsAre("3x3 92.5%", "3x3 90%", "3x3 90%"));
    EXPECT_THAT(linesOf(carriedFor(adult(), u"3x3 90%"_qs, rule, 3)),
        ElementsAre("3x3 92.5%", "3x3 95%", "3x3 97.5%"));
    EXPECT_THAT(
        linesOf(carriedFor(minor(), u"3x3 80%"_qs, rule, 2)), ElementsAre("3x3 82.5%", "3x3 85%"));
    EXPECT_THAT(linesOf(carriedFor(minor(), u"3x3 96%"_qs, rule, 1)), ElementsAre("3x3 85%"))
        << "it was maximal before";
}

TEST(BeginnersProgression, EndsOnTheDayOnWhichTheyAreNoneAnyMore)
{
    Lifter novice = adult();
    novice.trainingSince = kBeginnersMonday.addYears(-1).addDays(14);
    EXPECT_THAT(linesOf(carriedFor(novice, u"3x5 @8"_qs, RaiseRpe{0.5, 9.5}, 3)),
        ElementsAre("3x5 @8", "3x5 @9", "3x5 @9.5"));
}

TEST(BeginnersTemplate, IsLaidWithoutMaximalWorkAndSaysSo)
{
    const TemplateResult young = laidFor(minor(), u"3x1 @9.5"_qs);
    ASSERT_THAT(young.edit.cards.after, SizeIs(1));
    EXPECT_EQ(young.edit.cards.after[0].setLine, u"3x1 @8"_qs);
    EXPECT_THAT(young.remarks, SizeIs(1));
    const TemplateResult grown = laidFor(adult(), u"3x1 @9.5"_qs);
    EXPECT_EQ(grown.edit.cards.after.at(0).setLine, u"3x1 @9.5"_qs);
    EXPECT_THAT(grown.remarks, IsEmpty());
}

TEST(BeginnersTemplate, LeavesWhatIsLightOrCannotBeReadAsItIsWritten)
{
    for (const QString &line : {u"3x5  @7"_qs, u"heavy"_qs}) {
        const TemplateResult young = laidFor(minor(), line);
        EXPECT_EQ(young.edit.cards.after.at(0).setLine, line);
        EXPECT_THAT(young.remarks, IsEmpty());
    }
}
