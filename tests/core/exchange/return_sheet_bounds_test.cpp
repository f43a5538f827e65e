#include "tests/core/exchange/return_files.h"

#include <gmock/gmock.h>

// What a return sheet may hold at the most and at the least. The columns are those that the page of
// the hand-out writes; its newest ones may be missing, as a sheet may come from an older page.

using namespace core;
using tests::kMonday;
using tests::kReadOn;
using tests::PlannedWeek;
using tests::ReturnFile;

namespace {

/// The field of each problem, in order.
QStringList fieldsOf(const ReturnSheet &sheet)
{
    QStringList fields;
    for (const Problem &problem : sheet.problems.items())
        fields << problem.field;
    return fields;
}

/// What is wrong with a sheet whose third set has `value` in `field`.
QStringList wrongWith(const char *field, const QString &value)
{
    ReturnFile file{PlannedWeek()};
    file.rows[3][QLatin1String(field)] = value;
    return fieldsOf(file.read());
}

QStringList wrongInCheckIn(const char *field, const QString &value)
{
    ReturnFile file{PlannedWeek()};
    file.rows.append({{"row", "check_in"}, {"date", "2024-05-06"}, {field, value}});
    return fieldsOf(file.read());
}

/// The sheet without a column.
QByteArray without(const QByteArray &text, qsizetype column)
{
    QByteArrayList lines = text.split('\n');
    for (QByteArray &line : lines) {
        QByteArrayList cells = line.split(',');
        if (column < cells.size())
            cells.removeAt(column);
        line = cells.join(',');
    }
    return lines.join('\n');
}

QString day(QDate date)
{
    return date.toString(Qt::ISODate);
}

const QStringList kSound;

} // namespace

TEST(ReturnSheetBounds, AnyColumnButTheNewestHasToBeThere)
{
    const QStringList mayBeMissing{QStringLiteral("lead_variation"), QStringLiteral("lead_reps"),
        QStringLiteral("note"), QStringLiteral("sleep"), QStringLiteral("stress"),
        QStringLiteral("motivation"), QStringLiteral("sore_back"), QStringLiteral("sore_legs"),
        QStringLiteral("sore_chest"), QStringLiteral("sore_shoulders"),
        QStringLiteral("sore_elbows"), QStringLiteral("sore_wrists"), QStringLiteral("pain"),
        QStringLiteral("pain_words")};
    const QByteArray whole = ReturnFile{PlannedWeek()}.text();
    const QStringList columns = returnColumns();
    for (qsizetype i = 0; i < columns.size() - 1; ++i) {
        const ReturnSheet sheet = ReturnFile::readText(without(whole, i));
        if (mayBeMissing.contains(columns[i]))
            EXPECT_EQ(fieldsOf(sheet), kSound) << columns[i].toStdString();
        else
            EXPECT_EQ(fieldsOf(sheet), QStringList(columns[i])) << columns[i].toStdString();
    }
}

TEST(ReturnSheetBounds, ASessionMayBeMadeUpFourWeeksLateAndDoneTomorrowByTheClockElsewhere)
{
    // The lifter's phone may be a time zone ahead.
    EXPECT_EQ(wrongWith("date", day(kReadOn.addDays(1))), kSound);
    EXPECT_EQ(wrongWith("date", day(kReadOn.addDays(2))), QStringList("date"));
    const auto readLater = [](QDate trained) {
        ReturnFile file{PlannedWeek()};
        file.rows[3]["date"] = day(trained);
        QBuffer buffer;
        buffer.setData(file.text());
        buffer.open(QIODevice::ReadOnly);
        return fieldsOf(readReturnSheet(buffer, QStringLiteral("ada.csv"), kMonday.addDays(99)));
    };
    EXPECT_EQ(readLater(kMonday.addDays(7 + 28)), kSound);
    EXPECT_EQ(readLater(kMonday.addDays(7 + 29)), QStringList("date"));
}

TEST(ReturnSheetBounds, APlannedDayIsOneOfTheSevenOfTheWeek)
{
    EXPECT_EQ(wrongWith("planned_date", day(kMonday)), kSound);
    EXPECT_EQ(wrongWith("planned_date", day(kMonday.addDays(6))), kSound);
    EXPECT_EQ(wrongWith("planned_date", day(kMonday.addDays(-1))), QStringList("planned_date"));
    EXPECT_EQ(wrongWith("planned_date", day(kMonday.addDays(7))), QStringList("planned_date"));
}

TEST(ReturnSheetBounds, AnswersRunFromOneToFive)
{
    for (const char *question : {"sleep", "stress", "motivation", "sore_back", "sore_legs",
             "sore_chest", "sore_shoulders", "sore_elbows"}) {
        EXPECT_EQ(wrongInCheckIn(question, QStringLiteral("1")), kSound) << question;
        EXPECT_EQ(wrongInCheckIn(question, QStringLiteral("5")), kSound) << question;
        EXPECT_EQ(wrongInCheckIn(question, QStringLiteral("0")), QStringList(question));
        EXPECT_EQ(wrongInCheckIn(question, QStringLiteral("6")), QStringList(question));
    }
}

TEST(ReturnSheetBounds, CardsAndSetsAreCountedFromOne)
{
    for (const char *place : {"card", "set"}) {
        EXPECT_EQ(wrongWith(place, QStringLiteral("9")), kSound) << place;
        EXPECT_EQ(wrongWith(place, QStringLiteral("0")), QStringList(place));
        EXPECT_EQ(wrongWith(place, QStringLiteral("2000")), kSound) << place;
        EXPECT_EQ(wrongWith(place, QStringLiteral("2001")), QStringList(place));
    }
}

TEST(ReturnSheetBounds, LeadRepsAndTheirVariationGoTogether)
{
    const auto wrongWithLead = [](const QString &reps, const QString &variation) {
        ReturnFile file{PlannedWeek()};
        file.rows[3]["lead_reps"] = reps;
        file.rows[3]["lead_variation"] = variation;
        return fieldsOf(file.read());
    };
    const QString paused = QStringLiteral("long_pause");
    const QStringList wrong(QStringLiteral("lead_reps"));
    EXPECT_EQ(wrongWithLead({}, {}), kSound);
    EXPECT_EQ(wrongWithLead(QStringLiteral("1"), paused), kSound);
    EXPECT_EQ(wrongWithLead(QStringLiteral("100"), paused), kSound);
    EXPECT_EQ(wrongWithLead(QStringLiteral("1"), {}), wrong);
    EXPECT_EQ(wrongWithLead({}, paused), wrong);
    EXPECT_EQ(wrongWithLead(QStringLiteral("0"), paused), wrong);
    EXPECT_EQ(wrongWithLead(QStringLiteral("-1"), {}), wrong);
    EXPECT_EQ(wrongWithLead(QStringLiteral("101"), paused), wrong);
}

TEST(ReturnSheetBounds, AWeekHoldsTwoThousandRows)
{
    ReturnFile file{PlannedWeek()};
    const tests::ReturnRow row = file.rows[1];
    while (file.rows.size() < 2000) {
        file.rows.append(row);
        file.rows.last()["set"] = QString::number(file.rows.size() % 2000 + 1);
        file.rows.last()["card"] = QStringLiteral("9");
    }
    EXPECT_EQ(fieldsOf(file.read()), kSound);
    file.rows.append(row);
    EXPECT_EQ(fieldsOf(file.read()), QStringList("row"));
}

TEST(ReturnSheetBounds, OnlyAFormatThatIsKnownIsRead)
{
    for (const char *format : {"0", "2", ""}) {
        ReturnFile file{PlannedWeek()};
        file.rows[0]["format"] = QLatin1String(format);
        EXPECT_EQ(fieldsOf(file.read()), QStringList("format")) << format;
    }
}

TEST(ReturnSheetBounds, WhatIsSaidLaterOnADayHoldsAndNotesAreKept)
{
    ReturnFile file{PlannedWeek()};
    file.rows.append({{"row", "check_in"}, {"date", "2024-05-06"}, {"sleep", "2"}, {"stress", "4"},
        {"sore_back", "2"}, {"note", "tired"}});
    file.rows.append({{"row", "check_in"}, {"date", "2024-05-06"}, {"sleep", "3"},
        {"sore_legs", "1"}, {"note", "better"}});
    file.rows.append({{"row", "check_in"}, {"date", "2024-05-08"}, {"sleep", "5"}});
    const ReturnSheet sheet = file.read();
    ASSERT_EQ(fieldsOf(sheet), kSound);
    ASSERT_EQ(sheet.checkIns.size(), 2u);
    EXPECT_EQ(sheet.checkIns[0].sleep, 3);
    EXPECT_EQ(sheet.checkIns[0].stress, 4);
    EXPECT_EQ(sheet.checkIns[0].soreness.size(), 2u);
    EXPECT_EQ(sheet.checkIns[0].note, QStringLiteral("tired\nbetter"));
    EXPECT_EQ(sheet.checkIns[1].sleep, 5);
    EXPECT_EQ(merged(sheet.checkIns[0], sheet.checkIns[0]), sheet.checkIns[0]);
}

TEST(ReturnSheetBounds, AFileOfAMillionBytesIsStillReadAndOneByteMoreIsNot)
{
    const auto isTooLarge = [](qsizetype bytes) {
        return ReturnFile::readText(QByteArray(bytes, 'x'))
            .problems.items()
            .front()
            .words.contains(QStringLiteral("far larger"));
    };
    EXPECT_FALSE(isTooLarge(1'000'000));
    EXPECT_TRUE(isTooLarge(1'000'001));
}

TEST(ReturnSheetBounds, ASessionMayAlsoBeDoneFourWeeksEarly)
{
    EXPECT_EQ(wrongWith("date", day(kMonday.addDays(-35))), kSound);
    EXPECT_EQ(wrongWith("date", day(kMonday.addDays(-36))), QStringList("date"));
}

TEST(ReturnSheetBounds, ANoteThatSaysTheSameIsKeptOnce)
{
    CheckIn earlier, later;
    later.note = QStringLiteral("tired");
    EXPECT_EQ(merged(earlier, later).note, QStringLiteral("tired"));
    earlier.note = QStringLiteral("very tired");
    EXPECT_EQ(merged(earlier, later).note, QStringLiteral("very tired"));
    later.note = QStringLiteral("hungry");
    EXPECT_EQ(merged(earlier, later).note, QStringLiteral("very tired\nhungry"));
    later.note.clear();
    EXPECT_EQ(merged(earlier, later).note, QStringLiteral("very tired"));
}

TEST(ReturnSheetBounds, ASetWithoutItsPlaceIsNotTakenForAnother)
{
    EXPECT_EQ(wrongWith("card", QString()), QStringList("card"));
    EXPECT_EQ(wrongWith("set", QString()), QStringList("set"));
    const auto wrongWithTwo = [](const char *field, int first, int second) {
        ReturnFile file{PlannedWeek()};
        for (const int row : {first, second})
            file.rows[row][QLatin1String(field)] = QStringLiteral("0");
        return fieldsOf(file.read());
    };
    EXPECT_EQ(wrongWithTwo("card", 1, 3), QStringList({"card", "card"})) << "both the first set";
    EXPECT_EQ(wrongWithTwo("set", 1, 2), QStringList({"set", "set"})) << "both of the first card";
}

TEST(ReturnSheetBounds, OnlyAHigherFormatIsThatOfANewerProgram)
{
    const auto said = [](const char *format) {
        ReturnFile file{PlannedWeek()};
        file.rows[0]["format"] = QLatin1String(format);
        return file.read().problems.items().front().words.contains(QStringLiteral("newer"));
    };
    EXPECT_TRUE(said("2"));
    EXPECT_FALSE(said("0"));
    EXPECT_FALSE(said(""));
}
