#include "core/loads/estimate_words.h"

#include <gmock/gmock.h>
#include <set>

using namespace core;
using strength::Standing;

namespace {
constexpr Standing kAll[] = {Standing::noData, Standing::priorOnly, Standing::thin, Standing::stale,
    Standing::conflicting, Standing::enough};
}

TEST(EstimateWords, EveryStandingHasItsOwnWordsAndAdvice)
{
    std::set<QString> labels;
    std::set<QString> sentences;
    for (const Standing standing : kAll) {
        labels.insert(words(standing));
        sentences.insert(advice(standing));
        EXPECT_LE(words(standing).size(), 24) << "a badge holds few words";
        EXPECT_TRUE(advice(standing).endsWith(u'.'));
    }
    EXPECT_EQ(labels.size(), std::size(kAll));
    EXPECT_EQ(sentences.size(), std::size(kAll));
}

TEST(EstimateWords, OnlyEstimatesFromTheLiftersOwnSetsCarryLoads)
{
    EXPECT_FALSE(carriesLoads(Standing::noData));
    EXPECT_FALSE(carriesLoads(Standing::priorOnly));
    EXPECT_TRUE(carriesLoads(Standing::thin));
    EXPECT_TRUE(carriesLoads(Standing::stale));
    EXPECT_TRUE(carriesLoads(Standing::conflicting));
    EXPECT_TRUE(carriesLoads(Standing::enough));
}

TEST(EstimateWords, AnEstimateOutOfDateSaysHowLongAgoTheLastSetWas)
{
    strength::LifterEstimate estimate;
    estimate.standing = Standing::stale;
    EXPECT_EQ(words(estimate), words(Standing::stale)) << "of an unknown day";
    estimate.asOf = 20000;
    for (const auto &[days, span] : {std::pair{22, "22 days"}, {41, "41 days"}, {42, "6 weeks"},
             {48, "6 weeks"}, {121, "17 weeks"}, {122, "4 months"}, {639, "20 months"},
             {640, "21 months"}, {730, "23 months"}, {731, "2 years"}, {3653, "10 years"}}) {
        estimate.lastSet = estimate.asOf - days;
        EXPECT_EQ(words(estimate), QStringLiteral("out of date: last set %1 ago").arg(span));
        EXPECT_TRUE(advice(estimate).startsWith(
            QStringLiteral("The last set of this lift was %1 ago. ").arg(span)));
    }
}

TEST(EstimateWords, ElseAnEstimateIsSaidByItsStanding)
{
    strength::LifterEstimate estimate;
    estimate.asOf = 100;
    estimate.lastSet = 0;
    for (const Standing standing : kAll)
        if (standing != Standing::stale) {
            estimate.standing = standing;
            EXPECT_EQ(words(estimate), words(standing));
            EXPECT_EQ(advice(estimate), advice(standing));
        }
}

TEST(EstimateWords, AClockBehindTheNewestSetIsPointedOut)
{
    const QDate may(2026, 5, 3), november(2026, 11, 28);
    EXPECT_EQ(clockTrouble(november, {}), QString());
    EXPECT_EQ(clockTrouble(november, may), QString());
    EXPECT_EQ(clockTrouble(november, november), QString());
    EXPECT_EQ(clockTrouble(november, november.addDays(1)).isEmpty(), false);
    EXPECT_TRUE(clockTrouble(may, november)
                    .startsWith(QStringLiteral("This computer's clock says 3 May 2026, but the "
                                               "newest set is of 28 November 2026.")));
}
