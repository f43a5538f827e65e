#include "core/notation/card_text.h"

#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);

ParsedCardText parsed(const QString &text)
{
    return parseCardText(text, builtInCatalogue(), kEnglish);
}

QString nameOf(const char *code)
{
    for (const Variation &v : builtInCatalogue())
        if (v.code == QLatin1String(code))
            return v.name;
    return {};
}

} // namespace

TEST(CardText, ReadsAsACoachWouldWriteIt)
{
    std::vector<Card> cards = {cardOf(2, kMonday.addDays(3), 0, idOf("comp"), u"4x3 @8"_qs),
        cardOf(1, kMonday, 0, idOf("off_chest_pause"), u"1x1 @8\n3x3 -10%"_qs)};
    cards[1].note = u"breathe late"_qs;
    EXPECT_EQ(cardText(cards, builtInCatalogue(), kEnglish),
        u"Monday\n%1: 1x1 @8 then 3x3 -10%\n    breathe late\nThursday\n%2: 4x3 @8\n"_qs.arg(
            nameOf("off_chest_pause"), nameOf("comp")));
    EXPECT_EQ(
        cardText({cards[0]}, builtInCatalogue(), kEnglish), nameOf("comp") + u": 4x3 @8\n"_qs);
}

TEST(CardText, ComesBackAsItWas)
{
    std::vector<Card> cards = {
        cardOf(1, kMonday, 0, idOf("off_chest_pause"), u"1x1 @8 ; last one clean\n3x3 -10%"_qs),
        cardOf(2, kMonday, 1, idOf("feet_up"), {}),
        cardOf(3, kMonday.addDays(4), 0, idOf("comp"), u"1x5+ 75%"_qs)};
    cards[2].note = u"one\ntwo"_qs;
    const ParsedCardText back = parsed(cardText(cards, builtInCatalogue(), kEnglish));
    ASSERT_FALSE(back.error) << back.error->words.toStdString();
    ASSERT_EQ(back.rows.size(), cards.size());
    for (size_t i = 0; i < cards.size(); ++i) {
        EXPECT_EQ(back.rows[i].offset, kMonday.daysTo(cards[i].day));
        EXPECT_EQ(back.rows[i].variation, cards[i].variation);
        EXPECT_EQ(back.rows[i].setLine, cards[i].setLine);
        EXPECT_EQ(back.rows[i].note, cards[i].note);
    }
}

TEST(CardText, DaysCountFromTheFirstOneNamed)
{
    const ParsedCardText back = parsed(u"Thu\ncomp: 1x1 @8\nmonday\ncomp: 3x3 @7\n"_qs);
    EXPECT_THAT(back.rows,
        ElementsAre(CardRow{0, idOf("comp"), u"1x1 @8"_qs, {}},
            CardRow{4, idOf("comp"), u"3x3 @7"_qs, {}}));
}

TEST(CardText, AnErrorNamesLineColumnAndRemedy)
{
    const ParsedCardText unknown = parsed(u"Monday\n\nmoon press: 3x3\n"_qs);
    ASSERT_TRUE(unknown.error);
    EXPECT_EQ(unknown.error->line, 3);
    EXPECT_THAT(unknown.error->words.toStdString(), HasSubstr("moon press"));

    const ParsedCardText sets = parsed(u"comp: 3x3 @8\ncomp:  3x @8\n"_qs);
    ASSERT_TRUE(sets.error);
    EXPECT_THAT(sets.rows, IsEmpty());
    EXPECT_EQ(sets.error->line, 2);
    EXPECT_EQ(sets.error->column, 11);
}

TEST(CardText, RowsAndNotesBelongToTheCardAbove)
{
    const ParsedCardText back =
        parsed(u"comp: 1x1 @8\nthen 3x3 -10%\n  first\n\n\tthen second\nFEET_UP\n"_qs);
    ASSERT_FALSE(back.error) << back.error->words.toStdString();
    EXPECT_THAT(back.rows,
        ElementsAre(CardRow{0, idOf("comp"), u"1x1 @8\n3x3 -10%"_qs, u"first\nthen second"_qs},
            CardRow{0, idOf("feet_up"), {}, {}}));
}

TEST(CardText, ADayNamedAgainIsAWeekOfItsOwnOnlyWhenItComesAround)
{
    const ParsedCardText back =
        parsed(u"Sunday\ncomp: 1x1\nSun\ncomp: 2x2\nTue\ncomp: 3x3\nMon\ncomp: 4x4\n"_qs);
    ASSERT_EQ(back.rows.size(), 4u);
    EXPECT_EQ(back.rows[1].offset, 0);
    EXPECT_EQ(back.rows[2].offset, 2);
    EXPECT_EQ(back.rows[3].offset, 8);
}

TEST(CardText, AnErrorInALaterRowCountsItsColumnsThere)
{
    const ParsedCardText sets = parsed(u"\ncomp: 3x3 @8\nthen 3x @8\n"_qs);
    ASSERT_TRUE(sets.error);
    EXPECT_EQ(sets.error->line, 3);
    EXPECT_EQ(sets.error->column, 9);
    const ParsedCardText slash = parsed(u"comp: 3x3 @8\n/ 3x3\n"_qs);
    ASSERT_TRUE(slash.error);
    EXPECT_EQ(slash.error->line, 2);
    EXPECT_THAT(slash.error->words.toStdString(), HasSubstr("Write then"));
    const ParsedCardText orphan = parsed(u"then 3x3\n"_qs);
    ASSERT_TRUE(orphan.error) << "there is no card that it could belong to";
    EXPECT_EQ(orphan.error->line, 1);
    EXPECT_EQ(orphan.error->column, 1);
}

TEST(CardText, OfTwoVariationsOfOneNameTheOneInUseIsMeant)
{
    std::vector<Variation> catalogue(3);
    for (size_t i = 0; i < catalogue.size(); ++i) {
        catalogue[i].id = {qint64(i) + 1};
        catalogue[i].name = u"Board"_qs;
        catalogue[i].code = u"board_%1"_qs.arg(i);
    }
    catalogue[0].retired = true;
    const ParsedCardText back = parseCardText(u"board: 3x3"_qs, catalogue, kEnglish);
    ASSERT_EQ(back.rows.size(), 1u);
    EXPECT_EQ(back.rows[0].variation, catalogue[1].id);
    EXPECT_EQ(
        parseCardText(u"board_2: 3x3"_qs, catalogue, kEnglish).rows[0].variation, catalogue[2].id);
}

TEST(CardText, WhatCannotBeReadStaysAsWritten)
{
    const std::vector<Card> cards{cardOf(1, kMonday, 0, idOf("comp"), u"heavy  as\nit goes"_qs),
        cardOf(2, kMonday, 1, {}, u"1x1 @8 ; clean\n3x3 @7"_qs)};
    EXPECT_EQ(cardText(cards, builtInCatalogue(), kEnglish),
        nameOf("comp") + u": heavy as it goes\n?: 1x1 @8 ; clean\nthen 3x3 @7\n"_qs);
}

TEST(CardText, NeitherSpacesNorTheColonAreNeeded)
{
    EXPECT_THAT(
        parsed(u"comp:3x3\n"_qs).rows, ElementsAre(CardRow{0, idOf("comp"), u"3x3"_qs, {}}));
    EXPECT_THAT(parsed(u"  comp  \n"_qs).rows, ElementsAre(CardRow{0, idOf("comp"), {}, {}}));
    const ParsedCardText nameless = parsed(u": 3x3\n"_qs);
    ASSERT_TRUE(nameless.error);
    EXPECT_THAT(nameless.error->words.toStdString(), HasSubstr("no variation \"\""));
}

TEST(CardText, BlanksBehindTheSetsDoNotMoveAMistake)
{
    for (const QString &text : {u"comp:  3x @8"_qs, u"comp:  3x @8   "_qs}) {
        const ParsedCardText sets = parsed(text);
        ASSERT_TRUE(sets.error);
        EXPECT_EQ(sets.error->column, 11) << text.toStdString();
    }
    EXPECT_THAT(
        parsed(u"comp: \nthen 3x3 \n"_qs).rows, ElementsAre(CardRow{0, idOf("comp"), u"3x3"_qs, {}}));
}

TEST(CardText, NoCardsAreNoText)
{
    EXPECT_EQ(cardText({}, builtInCatalogue(), kEnglish), QString());
    EXPECT_EQ(CardRow{}.offset, 0) << "the first day named";
}
