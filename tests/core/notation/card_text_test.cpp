#include "core/notation/card_text.h"

#include "tests/core/plan/plan_rows.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

const QDate kMonday(2026, 3, 2);
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
        u"Monday\n%1: 1x1 @8 / 3x3 -10%\n    breathe late\nThursday\n%2: 4x3 @8\n"_qs.arg(
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
