#include "core/csv/csv_writer.h"

#include <gtest/gtest.h>

using namespace core;

TEST(CsvWriter, AFieldIsQuotedOnlyWhereAReaderWouldMistakeIt)
{
    // RFC 4180, section 2, rules 6 and 7; spaces at an end are kept from being trimmed.
    const auto field = [](const char *text) {
        return csvField(QString::fromUtf8(text)).toStdString();
    };
    EXPECT_EQ(field(""), "");
    EXPECT_EQ(field("slow, then fast"), "\"slow, then fast\"");
    EXPECT_EQ(field("slow then fast"), "slow then fast");
    EXPECT_EQ(field("a \"b\""), "\"a \"\"b\"\"\"");
    EXPECT_EQ(field("a\nb"), "\"a\nb\"");
    EXPECT_EQ(field("a\rb"), "\"a\rb\"");
    EXPECT_EQ(field(" a"), "\" a\"");
    EXPECT_EQ(field("a "), "\"a \"");
}

TEST(CsvWriter, ALineHasACommaBetweenItsFieldsAndNoneBehindThem)
{
    EXPECT_EQ(csvLine({"a", "", "b"}).toStdString(), "a,,b\r\n");
    EXPECT_EQ(csvLine({"a"}).toStdString(), "a\r\n");
}

TEST(CsvWriter, ANumberHasNoMoreDigitsThanItNeedsAndNoExponent)
{
    EXPECT_EQ(csvNumber(102.5).toStdString(), "102.5");
    EXPECT_EQ(csvNumber(0.1 + 0.2).toStdString(), "0.30000000000000004");
    EXPECT_EQ(csvNumber(1e9).toStdString(), "1000000000");
}
