#include "core/csv/csv_table.h"

#include "core/domain/nearest_word.h"

#include <QBuffer>
#include <array>
#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;

namespace {

constexpr std::array kColumns{Column{"name", true}, Column{"amount", true}, Column{"day"}};

/// A file of these columns, with what is wrong in it.
struct File
{
    explicit File(const QByteArray &text)
    {
        buffer.setData(text);
        buffer.open(QIODevice::ReadOnly);
    }

    [[nodiscard]] std::string field(size_t i) const
    {
        return problems.items()[i].field.toStdString();
    }
    [[nodiscard]] std::string words(size_t i) const
    {
        return problems.items()[i].words.toStdString();
    }

    QBuffer buffer;
    ProblemList problems;
};

/// The day of a row that has it as its last cell; empty where it is none.
std::optional<QDate> dayOf(const QByteArray &cell)
{
    File file("name,amount,day\na,1," + cell + '\n');
    CsvTable table(file.buffer, {}, kColumns, file.problems);
    EXPECT_TRUE(table.next());
    return table.date(2);
}

} // namespace

TEST(CsvTable, FindsColumnsByNameInAnyOrderAndWithoutSpacesAround)
{
    File file(" amount ,\tname\n 2.5 ,\" a b \"\n");
    CsvTable table(file.buffer, QStringLiteral("f.csv"), kColumns, file.problems);
    ASSERT_TRUE(table.next());
    EXPECT_EQ(table.line(), 2);
    EXPECT_EQ(table.text(0), QStringLiteral("a b"));
    EXPECT_EQ(table.number(1), 2.5);
    EXPECT_TRUE(table.isBlank(2)) << "the file lacks it";
    EXPECT_EQ(table.date(2), std::nullopt);
    EXPECT_FALSE(table.next());
    EXPECT_TRUE(file.problems.isEmpty());
}

TEST(CsvTable, ALineWithTooFewOrTooManyFieldsIsToldAndTheNextIsRead)
{
    File file("name,amount\na\nb,1,2\nc,3\n");
    CsvTable table(file.buffer, QStringLiteral("f.csv"), kColumns, file.problems);
    ASSERT_TRUE(table.next());
    EXPECT_EQ(table.text(0), QStringLiteral("c"));
    ASSERT_EQ(file.problems.count(), 2u);
    EXPECT_EQ(file.words(0), "The line has 1 fields, the header names 2.");
    EXPECT_TRUE(file.problems.items()[0].remedy.contains(QStringLiteral("comma for each blank")));
    EXPECT_EQ(file.words(1), "The line has 3 fields, the header names 2.");
    EXPECT_TRUE(file.problems.items()[1].remedy.contains(QStringLiteral("with a point")));
}

TEST(CsvTable, ADayHasYearMonthAndDayInTheirPlaces)
{
    EXPECT_EQ(dayOf("2026-03-31"), QDate(2026, 3, 31));
    for (const char *wrong : {"2026-3-31", "2026/03/31", "2026-03/31", "2026-03-311", "20260-3-31",
             "2o26-03-31", "2026-o3-31", "2026-03-3o", "2026-02-30", "2026-00-10"})
        EXPECT_EQ(dayOf(wrong), std::nullopt) << wrong;
}

TEST(CsvTable, ABadCellIsQuotedAndALongOneCutShort)
{
    const auto quoted = [](int length) {
        File file("name,amount\na," + QByteArray(length, 'x') + '\n');
        CsvTable table(file.buffer, {}, kColumns, file.problems);
        EXPECT_TRUE(table.next());
        EXPECT_EQ(table.number(1), std::nullopt);
        EXPECT_EQ(file.field(0), "amount");
        return file.problems.items().front().words;
    };
    EXPECT_TRUE(quoted(40).startsWith(u'"' + QString(40, u'x') + u'"'));
    EXPECT_TRUE(quoted(41).startsWith(u'"' + QString(39, u'x') + u'…' + u'"'));
}

TEST(CsvTable, ABlankCellIsAProblemOnlyWhereItIsDemanded)
{
    File file("name,amount\n,1\n");
    CsvTable table(file.buffer, {}, kColumns, file.problems);
    ASSERT_TRUE(table.next());
    EXPECT_EQ(table.wholeNumber(0), std::nullopt);
    EXPECT_TRUE(file.problems.isEmpty());
    EXPECT_TRUE(table.demand(1, QStringLiteral("Write it.")));
    EXPECT_FALSE(table.demand(0, QStringLiteral("Write it.")));
    ASSERT_EQ(file.problems.count(), 1u);
    EXPECT_EQ(
        oneLine(file.problems.items()[0]).toStdString(), ":2: name: The field is blank. Write it.");
}

TEST(CsvTable, AFileLargerThanOneReadIsOneFile)
{
    // Reads of 64 KiB begin and end inside fields, quotes and line ends.
    QByteArray text = "name,amount\n";
    for (int row = 0; row < 20'000; ++row)
        text += "\"a \"\"" + QByteArray::number(row) + "\"\"\"," + QByteArray::number(row) + "\r\n";
    ASSERT_GT(text.size(), 4 * 65536);
    File file(text);
    CsvTable table(file.buffer, {}, kColumns, file.problems);
    for (int row = 0; row < 20'000; ++row) {
        ASSERT_TRUE(table.next()) << row;
        ASSERT_EQ(table.line(), row + 2);
        ASSERT_EQ(table.text(0), QStringLiteral("a \"%1\"").arg(row));
        ASSERT_EQ(table.wholeNumber(1), row);
    }
    EXPECT_FALSE(table.next());
    EXPECT_TRUE(file.problems.isEmpty());
}

TEST(NearestWord, ASlipOfTheHandFindsItsWord)
{
    const QStringList known{QStringLiteral("comp"), QStringLiteral("feet_up"),
        QStringLiteral("close_grip"), QStringLiteral("long_pause")};
    const auto nearest = [&known](const char *typed) {
        return nearestWord(QString::fromLatin1(typed), known).toStdString();
    };
    EXPECT_EQ(nearest("Feet-Up"), "feet_up");
    EXPECT_EQ(nearest("feet up"), "feet_up");
    EXPECT_EQ(nearest("fete_up"), "feet_up"); // two changes of seven letters
    EXPECT_EQ(nearest("feet"), "") << "three of seven are too many";
    EXPECT_EQ(nearest("com"), "comp");
    EXPECT_EQ(nearest("cmp"), "comp");
    EXPECT_EQ(nearest("xcomp"), "comp");
    EXPECT_EQ(nearest("cm"), "") << "two of four are too many";
    EXPECT_EQ(nearest("close_gr"), "close_grip");
    EXPECT_EQ(nearest("clsegri"), "close_grip");
    EXPECT_EQ(nearest("squat"), "");
    EXPECT_EQ(nearest(""), "");
}

TEST(NearestWord, NothingLongerThanAnyNameIsASlip)
{
    const auto nearest = [](int length) {
        return nearestWord(QString(length, u'x'), {QString(60, u'x')}).size();
    };
    EXPECT_EQ(nearest(60), 60);
    EXPECT_EQ(nearest(61), 0);
}

TEST(ProblemList, KeepsTheFirstAndCountsTheRest)
{
    ProblemList list, more;
    const auto at = [](int line) { return Problem{QStringLiteral("f"), line, {}, {}, {}}; };
    for (size_t i = 0; i < ProblemList::kKept; ++i)
        list.add(at(2));
    EXPECT_EQ(list.items().size(), 10'000u);
    list.add(at(1));
    EXPECT_EQ(list.items().size(), ProblemList::kKept);
    EXPECT_EQ(list.count(), ProblemList::kKept + 1);
    more.add(at(3));
    more.add(list);
    EXPECT_EQ(more.count(), ProblemList::kKept + 2);
    more.sortByLine();
    EXPECT_EQ(more.items().back().line, 3);
    EXPECT_EQ(more.items().front().line, 2);
}

TEST(CsvTable, AnyColumnMayBeNamedOnceOnly)
{
    for (const char *header : {"name,name,amount", "amount,name,amount", "name,amount,day,day"}) {
        File file(QByteArray(header) + '\n');
        CsvTable table(file.buffer, {}, kColumns, file.problems);
        EXPECT_FALSE(table.next());
        ASSERT_EQ(file.problems.count(), 1u) << header;
        EXPECT_TRUE(file.problems.items()[0].words.contains(QStringLiteral("twice"))) << header;
    }
}

TEST(CsvTable, OtherSeparatorsAreTold)
{
    for (const auto &[header, word] :
        {std::pair("name;amount", "semicolons"), {"name\tamount", "tabs"}}) {
        File file(QByteArray(header) + '\n');
        CsvTable table(file.buffer, {}, kColumns, file.problems);
        ASSERT_EQ(file.problems.count(), 1u);
        EXPECT_TRUE(file.problems.items()[0].words.contains(QLatin1String(word)));
    }
}

TEST(ProblemList, OneLineNamesWhatThereIsToName)
{
    const auto line = [](int number, const char *field, const char *remedy) {
        return oneLine({QStringLiteral("log.csv"), number, QLatin1String(field),
                           QStringLiteral("Wrong."), QLatin1String(remedy)})
            .toStdString();
    };
    EXPECT_EQ(line(12, "rpe", "Mend it."), "log.csv:12: rpe: Wrong. Mend it.");
    EXPECT_EQ(line(1, "", ""), "log.csv:1: Wrong.");
    EXPECT_EQ(line(0, "", "Mend it."), "log.csv: Wrong. Mend it.") << "the file as a whole";
}

TEST(CsvTable, AWholeNumberLiesWithinItsBoundsOrIsToldInTheirWords)
{
    const auto within = [](const QByteArray &cell) {
        File file("name,amount\na," + cell + '\n');
        CsvTable table(file.buffer, {}, kColumns, file.problems);
        EXPECT_TRUE(table.next());
        const auto value =
            table.wholeNumber(1, 2, 5, QStringLiteral("2 to 5."), QStringLiteral("Write it."));
        return std::pair(value, file.problems.count());
    };
    EXPECT_EQ(within("2"), std::pair(std::optional(2), size_t(0)));
    EXPECT_EQ(within("5"), std::pair(std::optional(5), size_t(0)));
    EXPECT_EQ(within("1"), std::pair(std::optional<int>(), size_t(1)));
    EXPECT_EQ(within("6"), std::pair(std::optional<int>(), size_t(1)));
    EXPECT_EQ(within("x"), std::pair(std::optional<int>(), size_t(1))) << "told once";
    EXPECT_EQ(within(""), std::pair(std::optional<int>(), size_t(0)));
}

TEST(CsvTable, AnEmptyFileIsAskedForItsColumns)
{
    File file("");
    CsvTable table(file.buffer, {}, kColumns, file.problems);
    EXPECT_FALSE(table.next());
    ASSERT_EQ(file.problems.count(), 1u);
    EXPECT_EQ(file.problems.items()[0].line, 0);
    EXPECT_TRUE(file.problems.items()[0].remedy.endsWith(QStringLiteral("name,amount")))
        << "those that it has to name";
}

TEST(CsvTable, OnlyWhatAPointWouldMakeANumberIsToldToHaveOne)
{
    const auto told = [](const QByteArray &cell) {
        File file("name,amount\na,\"" + cell + "\"\n");
        CsvTable table(file.buffer, {}, kColumns, file.problems);
        EXPECT_TRUE(table.next());
        EXPECT_EQ(table.number(1), std::nullopt);
        return file.words(0);
    };
    EXPECT_EQ(told("102,5"), "\"102,5\" has a comma as decimal sign.");
    EXPECT_EQ(told("1,2,3"), "\"1,2,3\" is not a number.");
    EXPECT_EQ(told("inf"), "\"inf\" is not a number.");
    EXPECT_EQ(told("5kg"), "\"5kg\" is not a number.");
}

TEST(NearestWord, ALetterAddedLeftOutOrChangedIsOneSlip)
{
    const auto nearest = [](const char *typed, const QStringList &known) {
        return nearestWord(QString::fromLatin1(typed), known).toStdString();
    };
    const QStringList comp{QStringLiteral("comp")};
    for (const char *slip : {"comb", "coomp", "compx", "omp", "cmp"})
        EXPECT_EQ(nearest(slip, comp), "comp") << slip;
    EXPECT_EQ(nearest("zzcomp", comp), "comp") << "two of six letters are a third of them";
    EXPECT_EQ(nearest("zzzcomp", comp), "") << "three of seven are more";
    EXPECT_EQ(nearest("abcd", {QStringLiteral("abce"), QStringLiteral("abcf")}), "abce")
        << "of two that are equally near the first";
    EXPECT_EQ(nearest("abcde", {QStringLiteral("abcdxy"), QStringLiteral("abcdf")}), "abcdf");
}

TEST(ProblemList, ProblemsOfOneLineKeepTheirOrder)
{
    ProblemList list;
    for (const char *field : {"c", "a", "b"})
        list.add({{}, 2, QLatin1String(field), {}, {}});
    list.add(Problem{});
    list.sortByLine();
    EXPECT_EQ(list.items()[0].line, 0) << "of the file as a whole";
    EXPECT_EQ(list.items()[1].field, QStringLiteral("c"));
    EXPECT_EQ(list.items()[2].field, QStringLiteral("a"));
    EXPECT_EQ(list.items()[3].field, QStringLiteral("b"));
}
