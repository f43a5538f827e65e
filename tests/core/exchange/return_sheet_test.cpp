#include "core/exchange/return_sheet.h"

#include "core/exchange/file_kind.h"
#include "tests/core/exchange/return_files.h"

#include <gmock/gmock.h>

using namespace core;
using tests::PlannedWeek;
using tests::ReturnFile;
using tests::ReturnRow;

namespace {

/// The one problem of the sheet, by field and words.
void expectOnly(const ReturnSheet &sheet, const char *field, const char *words, int line = -1)
{
    ASSERT_EQ(sheet.problems.count(), 1u);
    const Problem &problem = sheet.problems.items().front();
    EXPECT_EQ(problem.file, QStringLiteral("ada.csv"));
    EXPECT_EQ(problem.field, QLatin1String(field));
    EXPECT_TRUE(problem.words.contains(QLatin1String(words))) << problem.words.toStdString();
    EXPECT_FALSE(problem.remedy.isEmpty());
    if (line >= 0) {
        EXPECT_EQ(problem.line, line);
    }
}

} // namespace

TEST(ReturnSheet, ReadsWhatThePageGaveBack)
{
    ReturnFile file{PlannedWeek()};
    file.rows[2]["load_kg"] = QStringLiteral("97.5");
    file.rows[2]["touch"] = QStringLiteral("4");
    file.rows[2]["failed"] = QStringLiteral("1");
    file.rows[2]["note"] = QStringLiteral("slipped, \"badly\"\nthen left");
    file.reopen(3, "skipped");
    file.reopen(4);
    file.rows.append({{"row", "check_in"}, {"date", "2024-05-06"}, {"sleep", "4"},
        {"sore_back", "2"}, {"pain", "elbows"}, {"pain_words", "left, sharp"}});
    const ReturnSheet sheet = file.read();
    ASSERT_TRUE(sheet.problems.isEmpty());
    EXPECT_EQ(sheet.lifterId, LifterId{7});
    EXPECT_EQ(sheet.lifter, QStringLiteral("Ada Example"));
    EXPECT_EQ(sheet.monday, tests::kMonday);
    ASSERT_EQ(sheet.sets.size(), 4u);
    EXPECT_EQ(sheet.sets[0].plannedKg, 100.0);
    EXPECT_EQ(sheet.sets[1].set.loadKg, 97.5);
    EXPECT_EQ(sheet.sets[1].set.touch, 4);
    EXPECT_TRUE(sheet.sets[1].set.failed);
    EXPECT_EQ(sheet.sets[1].set.note, QStringLiteral("slipped, \"badly\"\nthen left"));
    EXPECT_EQ(sheet.sets[2].state, ReturnedSet::State::skipped);
    EXPECT_EQ(sheet.sets[3].state, ReturnedSet::State::open);
    ASSERT_EQ(sheet.checkIns.size(), 1u);
    EXPECT_EQ(sheet.checkIns[0].sleep, 4);
    EXPECT_FALSE(sheet.checkIns[0].stress);
    EXPECT_EQ(sheet.checkIns[0].soreness.at(BodyArea::back), 2);
    EXPECT_EQ(sheet.checkIns[0].pain, (PainFlag{BodyArea::elbows, QStringLiteral("left, sharp")}));
}

TEST(ReturnSheet, IsToldFromOtherFiles)
{
    QBuffer buffer;
    buffer.setData(ReturnFile{PlannedWeek()}.text());
    buffer.open(QIODevice::ReadOnly);
    EXPECT_EQ(fileKind(buffer), FileKind::returnSheet);
}

TEST(ReturnSheet, ACutFileIsKnownWhereverItWasCut)
{
    const ReturnFile file{PlannedWeek()};
    const QByteArray whole = file.text();
    ASSERT_TRUE(ReturnFile::readText(whole).problems.isEmpty());
    // The last line may lose its line break: nothing is missing then.
    for (qsizetype length = 0; length < whole.size() - 2; ++length) {
        const ReturnSheet sheet = ReturnFile::readText(whole.left(length));
        // Cut inside the commas behind the count, the end row is merely narrow: a problem as well.
        EXPECT_FALSE(sheet.problems.isEmpty()) << "cut at " << length;
    }
    ReturnFile endless = file;
    endless.hasEnd = false;
    expectOnly(endless.read(), "", "was cut", 0);
}

TEST(ReturnSheet, ARowThatWentMissingOnTheWayIsNoticed)
{
    const QByteArray whole = ReturnFile{PlannedWeek()}.text();
    QList<QByteArray> lines = whole.split('\n');
    lines.removeAt(3);
    expectOnly(ReturnFile::readText(lines.join('\n')), "rows", "sent with 5 rows, and 4");
    QByteArray twice = whole + whole.mid(whole.indexOf('\n') + 1);
    expectOnly(ReturnFile::readText(twice), "row", "behind the end");
}

TEST(ReturnSheet, EachBadFieldIsNamedWithItsRowAndARemedy)
{
    struct Case
    {
        const char *field;
        const char *value;
        const char *words;
    };
    for (const Case &one : std::initializer_list<Case>{{"load_kg", "9000", "at most 700"},
             {"load_kg", "102,5", "comma"}, {"load_kg", "", "blank"}, {"load_kg", "nan", "number"},
             {"reps_done", "-1", "0 to 100"}, {"reps_done", "0", "missed"}, {"rpe", "11", "halves"},
             {"rpe", "8.3", "halves"}, {"failed", "yes", "neither"}, {"touch", "6", "1 to 5"},
             {"date", "2024-05-32", "calendar"}, {"date", "2024-07-02", "not come"},
             {"date", "2023-05-06", "far from"}, {"planned_date", "2024-05-14", "not of the"},
             {"card", "0", "numbered from 1"}, {"set", "x", "whole number"},
             {"variation", "", "blank"}, {"row", "frob", "no row of this kind"}}) {
        ReturnFile file{PlannedWeek()};
        file.rows[2][QLatin1String(one.field)] = QLatin1String(one.value);
        SCOPED_TRACE(testing::Message() << one.field << " = " << one.value);
        expectOnly(file.read(), one.field, one.words, 4);
    }
}

TEST(ReturnSheet, TheFirstRowSaysWhoseItIs)
{
    ReturnFile file{PlannedWeek()};
    file.rows[0]["format"] = QStringLiteral("2");
    expectOnly(file.read(), "format", "newer program", 2);
    file = ReturnFile{PlannedWeek()};
    file.rows[0]["week"] = QStringLiteral("2024-05-07");
    EXPECT_EQ(file.read().problems.items().front().field, QStringLiteral("week"));
    file = ReturnFile{PlannedWeek()};
    file.rows[0]["lifter_id"].clear();
    expectOnly(file.read(), "lifter_id", "blank", 2);
    file = ReturnFile{PlannedWeek()};
    file.rows.removeFirst();
    EXPECT_EQ(file.read().problems.items().front().words,
        QStringLiteral("The first row is not the one that names the lifter."));
    file = ReturnFile{PlannedWeek()};
    file.rows.insert(2, file.rows[0]);
    expectOnly(file.read(), "row", "twice", 4);
}

TEST(ReturnSheet, ASetCannotComeTwice)
{
    ReturnFile file{PlannedWeek()};
    file.rows.append(file.rows[1]);
    expectOnly(file.read(), "set", "twice");
}

TEST(ReturnSheet, AFarTooLargeFileIsNotRead)
{
    expectOnly(ReturnFile::readText(QByteArray(2'000'000, 'x')), "", "far larger", 0);
    ReturnFile file{PlannedWeek()};
    const ReturnRow row = file.rows[1];
    for (int i = 0; i < 3000; ++i) {
        file.rows.append(row);
        file.rows.last()["set"] = QString::number(i + 10);
    }
    EXPECT_EQ(file.read().problems.items().back().field, QStringLiteral("row"));
}

TEST(ReturnSheet, PainIsNeverPassedOver)
{
    ReturnFile file{PlannedWeek()};
    file.rows.append({{"row", "check_in"}, {"date", "2024-05-06"}, {"pain", "elsewhere"}});
    ReturnSheet sheet = file.read();
    ASSERT_TRUE(sheet.problems.isEmpty());
    sheet.checkIns[0].lifter = sheet.lifterId;
    ASSERT_TRUE(sheet.checkIns[0].pain.has_value());
    EXPECT_TRUE(problems(sheet.checkIns[0]).isEmpty()) << "it says that it was not said where";

    file.rows.last()["pain"] = QStringLiteral("knee");
    expectOnly(file.read(), "pain", "unknown");

    file.rows.last()["pain_words"] = QStringLiteral("it hurts");
    for (const char *said : {"", "no"}) {
        file.rows.last()["pain"] = QString::fromLatin1(said);
        expectOnly(file.read(), "pain_words", "not where");
    }
    file.rows.last().remove("pain_words");
    file.rows.last()["pain"] = QStringLiteral("no");
    EXPECT_TRUE(file.read().checkIns[0].isPainFree);
    EXPECT_FALSE(file.read().checkIns[0].pain);
    file.rows.last()["pain"] = QString();
    file.rows.last()["sore_wrists"] = QStringLiteral("2");
    EXPECT_FALSE(file.read().checkIns[0].isPainFree) << "not asked is no answer";
    EXPECT_EQ(file.read().checkIns[0].soreness.at(BodyArea::wrists), 2);

    CheckIn earlier, later;
    later.isPainFree = true;
    EXPECT_TRUE(merged(earlier, later).isPainFree);
    earlier.pain = PainFlag{BodyArea::chest, {}};
    EXPECT_FALSE(merged(earlier, later).isPainFree) << "of two sessions on one day one hurt";
    earlier.sleep = 2;
    later.sleep = 3;
    EXPECT_EQ(merged(earlier, later).pain, earlier.pain);
    EXPECT_EQ(merged(earlier, later).sleep, 3);
}

TEST(ReturnSheet, ScriptInNamesAndNotesStaysTheTextItIs)
{
    const QString hostile = QStringLiteral("<script>alert(1)</script>");
    ReturnFile file{PlannedWeek()};
    file.rows[0]["lifter"] = hostile;
    file.rows[1]["note"] = QStringLiteral("=HYPERLINK(\"http://x\")") + hostile;
    const ReturnSheet sheet = file.read();
    ASSERT_TRUE(sheet.problems.isEmpty());
    EXPECT_EQ(sheet.lifter, hostile);
    EXPECT_EQ(sheet.sets[0].set.note, QStringLiteral("=HYPERLINK(\"http://x\")") + hostile);
}
