#include "core/csv/csv_reader.h"

#include <QBuffer>
#include <gmock/gmock.h>
#include <random>

using core::CsvReader;
using testing::ElementsAre;

namespace {

using Fields = std::vector<std::string>;

struct Reading
{
    std::vector<Fields> records;
    std::vector<int> recordLines;
    std::vector<int> faultLines;
    QStringList faults;
};

Reading read(const QByteArray &text)
{
    QBuffer buffer;
    buffer.setData(text);
    buffer.open(QIODevice::ReadOnly);
    CsvReader reader(buffer);
    Reading reading;
    for (;;)
        switch (reader.next()) {
        case CsvReader::Step::end:
            return reading;
        case CsvReader::Step::fault:
            reading.faultLines.push_back(reader.line());
            reading.faults << reader.words();
            break;
        case CsvReader::Step::record:
            reading.records.emplace_back(reader.fields().begin(), reader.fields().end());
            reading.recordLines.push_back(reader.line());
        }
}

} // namespace

// RFC 4180, section 2, rules 1 to 7 with its own examples.
TEST(CsvReader, ReadsTheExamplesOfTheStandard)
{
    const Fields plain{"aaa", "bbb", "ccc"};
    const Fields second{"zzz", "yyy", "xxx"};
    EXPECT_THAT(read("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n").records, ElementsAre(plain, second));
    EXPECT_THAT(read("aaa,bbb,ccc\r\nzzz,yyy,xxx").records, ElementsAre(plain, second));
    EXPECT_THAT(read("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx").records, ElementsAre(plain, second));
    EXPECT_THAT(read("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx").records,
        ElementsAre(Fields{"aaa", "b\r\nbb", "ccc"}, second));
    EXPECT_THAT(
        read("\"aaa\",\"b\"\"bb\",\"ccc\"").records, ElementsAre(Fields{"aaa", "b\"bb", "ccc"}));
}

TEST(CsvReader, KeepsSpacesAndBlankFields)
{
    EXPECT_THAT(read(" a ,,\"\",\n").records, ElementsAre(Fields{" a ", "", "", ""}));
}

TEST(CsvReader, AcceptsAByteOrderMarkBothLineEndsAndEmptyLines)
{
    const Reading reading = read("\xEF\xBB\xBF"
                                 "a,b\n\r\n\nc,d\r\n");
    EXPECT_THAT(reading.records, ElementsAre(Fields{"a", "b"}, Fields{"c", "d"}));
    EXPECT_THAT(reading.recordLines, ElementsAre(1, 4));
}

TEST(CsvReader, AnEmptyFileHasNoRecord)
{
    EXPECT_THAT(read("").records, testing::IsEmpty());
    EXPECT_THAT(read("\xEF\xBB\xBF").records, testing::IsEmpty());
    EXPECT_THAT(read("").faultLines, testing::IsEmpty());
}

TEST(CsvReader, CountsLinesInsideQuotes)
{
    EXPECT_THAT(read("\"a\nb\",1\nc,2\n").recordLines, ElementsAre(1, 3));
}

TEST(CsvReader, AStrayQuotationMarkSpoilsItsLineOnly)
{
    const Reading reading = read("a,b\nx\"y,1\n\"p\"q,2\nc,d\n");
    EXPECT_THAT(reading.records, ElementsAre(Fields{"a", "b"}, Fields{"c", "d"}));
    EXPECT_THAT(reading.faultLines, ElementsAre(2, 3));
}

TEST(CsvReader, AnOpenQuotationMarkIsToldByTheLineThatOpensIt)
{
    const Reading reading = read("a,b\nc,d\n1,\"2\n3,4\n5,6\n");
    EXPECT_THAT(reading.faultLines, ElementsAre(3));
    EXPECT_TRUE(reading.faults.front().contains(QStringLiteral("never closed")));
}

TEST(CsvReader, ALoneCarriageReturnIsAFault)
{
    EXPECT_THAT(read("a,b\rc,d\re,f").faultLines, ElementsAre(1));
}

TEST(CsvReader, NamesTheLineOfTheFirstByteThatIsNotUtf8)
{
    EXPECT_THAT(read("a,b\nJ\xF6rn,1\nc,d\n").faultLines, ElementsAre(2)); // Latin-1
    EXPECT_THAT(read("a\n\"x\ny\xE9\nz\"\n").faultLines, ElementsAre(3));
    EXPECT_THAT(read(QByteArray("a\nb\0c\n", 6)).faultLines, ElementsAre(2));
    // Two halves of one letter in two fields are no letter; surrogates and overlong forms are none.
    EXPECT_THAT(read("\xC3,\xA9\n").faultLines, ElementsAre(1));
    EXPECT_THAT(read("\xED\xA0\x80\n\xC0\xAF\n").faultLines, ElementsAre(1, 2));
    EXPECT_THAT(read("J\xC3\xB6rn\n").faultLines, testing::IsEmpty());
}

TEST(CsvReader, ALineOfTenMegabytesIsAFaultAndTheNextIsRead)
{
    const Reading reading = read("a,b\n" + QByteArray(10'000'000, 'x') + "\nc,d\n");
    EXPECT_THAT(reading.records, ElementsAre(Fields{"a", "b"}, Fields{"c", "d"}));
    EXPECT_THAT(reading.faultLines, ElementsAre(2));
    // Commas alone count too.
    EXPECT_THAT(read(QByteArray(10'000'000, ',')).faultLines, ElementsAre(1));
}

TEST(CsvReader, AnyBytesEndWithoutACrash)
{
    std::mt19937 random(7);
    const QByteArray letters = "a,\"\n\r\xC3\xA9\xFF 1";
    for (int round = 0; round < 2000; ++round) {
        QByteArray text;
        for (unsigned length = random() % 60; length > 0; --length)
            text += round % 2 ? letters[int(random() % unsigned(letters.size()))]
                              : char(random() % 256);
        const Reading reading = read(text);
        for (const int line : reading.recordLines)
            EXPECT_LE(line, text.count('\n') + 1);
        EXPECT_LE(
            qsizetype(reading.records.size() + reading.faultLines.size()), text.count('\n') + 1);
    }
}

TEST(CsvReader, ALineIsTooLongFromAMillionBytesOnItsCommasIncluded)
{
    const auto faults = [](const QByteArray &line) { return read(line + "\n").faultLines.size(); };
    EXPECT_EQ(faults(QByteArray(999'999, 'x')), 0u);
    EXPECT_EQ(faults(QByteArray(1'000'000, 'x')), 1u);
    EXPECT_EQ(faults(QByteArray(999'998, 'x') + ","), 0u);
    EXPECT_EQ(faults(QByteArray(999'999, 'x') + ","), 1u);
}

TEST(CsvReader, AQuotationMarkInsideAFieldOrBehindAQuotedOneIsOutOfPlace)
{
    for (const char *line : {"ab\"c\"", "\"ab\"c", "\"ab\" ", "a,b\""}) {
        EXPECT_THAT(read(line).faultLines, ElementsAre(1)) << line;
        EXPECT_TRUE(read(line).faults[0].contains(QStringLiteral("middle of a field"))) << line;
    }
    EXPECT_THAT(read("a,\"\"\r\n").records, ElementsAre(Fields{"a", ""}));
}

TEST(CsvReader, ARecordMayBeAsShortAsOneByteOrOneComma)
{
    EXPECT_THAT(read("a").records, ElementsAre(Fields{"a"}));
    EXPECT_THAT(read("a\n,\n\nb").records, ElementsAre(Fields{"a"}, Fields{"", ""}, Fields{"b"}));
}

TEST(CsvReader, ACarriageReturnMayEndTheFile)
{
    const Reading reading = read("a,b\r");
    EXPECT_THAT(reading.records, ElementsAre(Fields{"a", "b"}));
    EXPECT_THAT(reading.faultLines, testing::IsEmpty());
}

TEST(CsvReader, CountsTheLinesOfAFieldUpToTheByteThatIsNotUtf8)
{
    EXPECT_THAT(read("a\n\"x\n\xE9\ny\"\n").faultLines, ElementsAre(3)) << "at a line's begin";
    EXPECT_THAT(read("a\n\"x\ny\nz\xE9\nw\"\n").faultLines, ElementsAre(4)) << "two lines down";
    EXPECT_THAT(read("\"p\nq\",\xE9\n").faultLines, ElementsAre(2)) << "in the next field";
}
