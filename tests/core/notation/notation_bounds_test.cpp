#include "core/notation/set_entry_text.h"
#include "core/notation/set_line.h"
#include "core/notation/set_line_completion.h"
#include "core/notation/set_words.h"

#include "core/csv/catalogue_csv.h"

#include <QLocale>
#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

std::vector<std::string> inserts(const char *text)
{
    const QString before = QString::fromUtf8(text);
    std::vector<std::string> all;
    for (const Completion &c : completions(before, int(before.size())))
        all.push_back(c.insert.toStdString());
    return all;
}

std::string refusal(const QString &text, const SetEntry &start)
{
    const EntryReading reading = readEntry(text, start, Unit::kilogram);
    return reading.error ? reading.error->words.toStdString() : std::string();
}

} // namespace

TEST(NotationBounds, EachPlaceOffersWhatACoachWouldWriteThere)
{
    EXPECT_THAT(inserts(""), ElementsAre("3x5 @8", "1x1 @8", "3x3 -10%", "1xAMRAP max 10 70%"));
    EXPECT_THAT(inserts("4x"), ElementsAre("1", "3", "5", "8", "4-6", "1+2", "AMRAP"));
    EXPECT_THAT(inserts("4x3 -"), ElementsAre("10%"));
    EXPECT_THAT(inserts("4x3 pause "), ElementsAre("2", "3"));
    EXPECT_THAT(inserts("4x3 rest "), ElementsAre("3min", "90s"));
    EXPECT_THAT(inserts("4x3 tempo "), ElementsAre("4-2-0"));
    EXPECT_THAT(inserts("4x3 tempo 4-"), IsEmpty()) << "the others cannot be guessed";
    EXPECT_THAT(inserts("4x3-"), IsEmpty());
    EXPECT_THAT(inserts("1x5+ max "), ElementsAre("10"));
}

TEST(NotationBounds, WhatIsOfferedCanBeRead)
{
    for (const std::string &line : inserts(""))
        EXPECT_FALSE(parseSetLines(QString::fromStdString(line)).error) << line;
    for (const std::string &reps : inserts("4x"))
        EXPECT_FALSE(parseSetLines(QString::fromStdString("4x" + reps)).error) << reps;
    for (const std::string &part : inserts("4x3"))
        if (part != " / ") {
            EXPECT_FALSE(parseSetLines(QString::fromStdString("4x3" + part)).error) << part;
        }
    for (const std::string &rpe : inserts("4x3 @"))
        EXPECT_FALSE(parseSetLines(QString::fromStdString("4x3 @" + rpe)).error) << rpe;
}

TEST(NotationBounds, EachRatingIsExplainedByWhatItLeaves)
{
    for (const Completion &c : completions(QStringLiteral("4x3 @"), 5))
        EXPECT_TRUE(c.explanation.endsWith(u' ' + QString::number(10 - c.insert.toInt())))
            << c.explanation.toStdString();
}

TEST(NotationBounds, AWordThatIsBegunIsReplacedFromItsStart)
{
    const auto offers = completions(QStringLiteral("4x1+2(fee"), 9, builtInCatalogue());
    ASSERT_FALSE(offers.empty());
    for (const Completion &c : offers)
        EXPECT_EQ(c.replaces, 3);
    EXPECT_THAT(completions(QStringLiteral("4x1+2(FEE"), 9, builtInCatalogue()),
        testing::SizeIs(offers.size()));
    EXPECT_EQ(completions(QStringLiteral("4x3 @8 re"), 9)[0].replaces, 2);
}

TEST(NotationBounds, ACursorBehindThenIsInTheNextLine)
{
    const QString text = QStringLiteral("1x1 @8 then ");
    EXPECT_EQ(completions(text, 12)[0].insert, QStringLiteral("3x5 @8"));
    EXPECT_EQ(completions(text, 5)[0].insert, QStringLiteral("8"));
}

TEST(NotationBounds, AMistakeIsPlacedFromTheFirstCharacterOfTheFirstRow)
{
    const SetLineError error;
    EXPECT_EQ(error.line, 1);
    EXPECT_EQ(error.column, 1);
    EXPECT_EQ(LoadTarget{}.loadKg, 0.0);
    EXPECT_FALSE(LoadTarget{}.inPounds);
    EXPECT_EQ(parseSetLines(QStringLiteral("?")).error->line, 1);
    EXPECT_EQ(parseSetLines(QStringLiteral("1x1 then ?")).error->column, 10);
}

TEST(NotationBounds, OfAWordThatSaysNothingTwentyLettersAreQuoted)
{
    SetEntry start;
    start.loadKg = 100.0;
    start.repsPlanned = start.repsDone = 5;
    EXPECT_THAT(refusal(QString(20, u'z'), start),
        testing::StartsWith('"' + std::string(20, 'z') + "\" says nothing"));
    EXPECT_THAT(refusal(QString(21, u'z'), start),
        testing::StartsWith('"' + std::string(20, 'z') + "\" says nothing"));
    // However large, a score that is none is told as one.
    for (const char *touch : {"t0", "t6", "t1234", "t99999999999999999999"})
        EXPECT_THAT(
            refusal(QString::fromLatin1(touch), start), testing::HasSubstr("touch score is 1 to 5"))
            << touch;
}

TEST(NotationBounds, RatingsAreWrittenWithFourDigits)
{
    QLocale::setDefault(QLocale::c());
    SetEntry done;
    done.loadKg = 100.0;
    done.repsDone = 5;
    done.rpe = 9.0;
    const SetAsked asked{QStringLiteral("Bench press"), 100.0, 5, 22.0 / 3.0, {}};
    EXPECT_THAT(
        differenceWords(asked, asked.variation, done, Unit::kilogram).join(u' ').toStdString(),
        testing::HasSubstr("RPE 9 against 7.333)"));
}
