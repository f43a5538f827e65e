#include "core/notation/set_line_completion.h"

#include "core/csv/catalogue_csv.h"

#include <QStringList>
#include <gmock/gmock.h>

using namespace core;
using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;

namespace {

std::vector<std::string> offers(const char *text)
{
    const QString before = QString::fromUtf8(text);
    std::vector<std::string> inserts;
    for (const Completion &c : completions(before, int(before.size()), builtInCatalogue()))
        inserts.push_back(c.insert.toStdString());
    return inserts;
}

/// The text after the first offer was taken.
std::string taken(const char *text)
{
    const QString before = QString::fromUtf8(text);
    const auto all = completions(before, int(before.size()), builtInCatalogue());
    EXPECT_FALSE(all.empty()) << text;
    return all.empty()
        ? std::string()
        : (before.left(before.size() - all.front().replaces) + all.front().insert).toStdString();
}

} // namespace

TEST(SetLineCompletion, OffersWhatMayFollow)
{
    EXPECT_THAT(offers(""), Contains("3x5 @8"));
    EXPECT_THAT(offers("4"), ElementsAre("x"));
    EXPECT_THAT(offers("4x"), Contains("AMRAP"));
    EXPECT_THAT(offers("4x3"), Contains(" @8"));
    EXPECT_THAT(offers("4x3 "), Contains("@8"));
    EXPECT_THAT(offers("4x3 @"), Contains("8"));
    EXPECT_THAT(offers("4x3 100"), ElementsAre("%", "kg", "lb", "RIR"));
    EXPECT_THAT(offers("4x3 -10"), ElementsAre("%", "kg", "lb"));
    EXPECT_THAT(offers("4x3 @8 rest 3"), ElementsAre("min", "s"));
    EXPECT_THAT(offers("1x5+"), Contains(" max 10"));
    EXPECT_THAT(offers("1x12+ max "), ElementsAre("14"));
    EXPECT_THAT(offers("4x1+2"), Contains("("));
}

TEST(SetLineCompletion, OffersNoPartTwice)
{
    EXPECT_THAT(offers("4x3 @8 "), Not(Contains("75%")));
    EXPECT_THAT(offers("4x3 pause 3 "), Not(Contains("tempo 4-2-0")));
    EXPECT_THAT(offers("4x3 rest 3min "), Not(Contains("rest 3min")));
}

TEST(SetLineCompletion, FinishesTheWordThatIsBegun)
{
    EXPECT_EQ(taken("4x3 @8 te"), "4x3 @8 tempo 4-2-0");
    EXPECT_EQ(taken("4x3 @8 tempo"), "4x3 @8 tempo 4-2-0");
    EXPECT_EQ(taken("4x3 @8 tempo "), "4x3 @8 tempo 4-2-0");
    EXPECT_EQ(taken("1xam"), "1xAMRAP");
    EXPECT_EQ(taken("4x3 100 k"), "4x3 100 kg");
    EXPECT_EQ(taken("4x1+2(board_5"), "4x1+2(board_5cm)");
    EXPECT_THAT(offers("4x3 @8 zzz"), IsEmpty());
}

TEST(SetLineCompletion, LooksOnlyAtTheLineOfTheCursor)
{
    EXPECT_THAT(offers("heavy\n4x3 @"), Contains("8"));
    EXPECT_THAT(offers("1x1 @8 then 3"), ElementsAre("x"));
    EXPECT_THAT(offers("1x1 @8 ; push then 3"), IsEmpty()); // inside a note
    const auto inside = completions(QStringLiteral("4x3 @8"), 1);
    ASSERT_EQ(inside.size(), 1u);
    EXPECT_EQ(inside.front().insert, QStringLiteral("x"));
}

TEST(SetLineCompletion, IsSilentBehindAMistake)
{
    EXPECT_THAT(offers("4x99 "), IsEmpty());
    EXPECT_THAT(offers("4x3 @11 "), IsEmpty());
}

TEST(SetLineCompletion, OffersTheLikeliestFirst)
{
    EXPECT_THAT(offers("4x3"),
        ElementsAre(" @8", " 2RIR", " 75%", " 100kg", " -10%", " tempo 4-2-0", " pause 3",
            " rest 3min", " ; ", " then "));
    EXPECT_THAT(offers("4x3 @8 pause 2 rest 90s "), ElementsAre("; ", "then "));
    EXPECT_THAT(offers("4x3 @"), ElementsAre("8", "7", "9", "6", "10"));
    EXPECT_THAT(offers("4x1+2 "), Not(Contains("(")));
    EXPECT_THAT(offers("4x1+2 @8"), Not(Contains("(")));
    EXPECT_THAT(offers("4x3"), Not(Contains("(")));
}

TEST(SetLineCompletion, ACapLiesAboveTheRepsAndWithinTheGrammar)
{
    EXPECT_THAT(offers("1x8+ max "), ElementsAre("10"));
    EXPECT_THAT(offers("1x9+ max "), ElementsAre("11"));
    EXPECT_THAT(offers("1x49+ max "), ElementsAre("50"));
    EXPECT_THAT(offers("1x5+ max 10 "), Not(Contains("max 10")));
    EXPECT_THAT(offers("1x5+ 75% "), Not(Contains("max 10")));
}

TEST(SetLineCompletion, ExplainsARatingByTheRepsItLeaves)
{
    const auto all = completions(QStringLiteral("4x3 @"), 5);
    ASSERT_FALSE(all.empty());
    EXPECT_EQ(all[0].insert, QStringLiteral("8"));
    EXPECT_TRUE(all[0].explanation.endsWith(QStringLiteral("2")));
    EXPECT_EQ(all[0].replaces, 0);
}

TEST(SetLineCompletion, OffersTheUsualRepsAndRatings)
{
    // Common practice, no source.
    EXPECT_THAT(offers("4x"), ElementsAre("1", "3", "5", "8", "4-6", "1+2", "AMRAP"));
    EXPECT_THAT(offers("4x3 pause "), ElementsAre("2", "3"));
    EXPECT_THAT(offers("4x3 rest "), ElementsAre("3min", "90s"));
}

TEST(SetLineCompletion, AWordThatIsWholeIsNotOfferedOnceMore)
{
    for (const char *text : {"1xAMRAP", "4x3 100kg", "4x3 2RIR", "4x3 -10kg", "4x3 rest 3min",
             "4x3 rest 90s", "4x1+2(feet_up)", "4x3 tempo 4-2-0", "1x1 max"}) {
        const QString before = QString::fromUtf8(text);
        for (const Completion &c : completions(before, int(before.size()), builtInCatalogue()))
            EXPECT_FALSE(before.endsWith(c.insert)) << text << " + " << c.insert.toStdString();
    }
}

TEST(SetLineCompletion, AWordBehindAWholeLineIsSiftedAndReplaced)
{
    const auto all = completions(QStringLiteral("4x3 @8 pa"), 9);
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].insert, QStringLiteral("pause 3"));
    EXPECT_EQ(all[0].replaces, 2);
    EXPECT_EQ(Completion{}.replaces, 0);
}
