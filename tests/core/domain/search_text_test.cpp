#include "core/domain/search_text.h"

#include <gtest/gtest.h>

using namespace core;
using namespace Qt::StringLiterals;

TEST(SearchText, IsComparedWithoutCaseAndAccents)
{
    EXPECT_EQ(folded(u"Zo\u00eb N\u00fa\u00f1ez"_s), u"zoe nunez"_s);
    EXPECT_EQ(folded(u"STRASSE"_s), folded(u"stra\u00dfe"_s));
    EXPECT_EQ(folded(u"\uff11\uff12 \u00bd"_s), u"12 1\u20442"_s) << "compatibility forms";
    EXPECT_NE(folded(u"a b"_s), folded(u"ab"_s));
}

TEST(SearchText, EveryWordHasToOccurInAnyOrder)
{
    const QString text = folded(u"Off-chest pause bench"_s);
    EXPECT_TRUE(matchesWords(text, u"bench  pau"_s));
    EXPECT_FALSE(matchesWords(text, u"bench feet"_s));
    EXPECT_TRUE(matchesWords(text, u" "_s)) << "a blank query finds everything";
}
