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
