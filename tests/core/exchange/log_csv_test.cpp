#include "core/exchange/log_csv.h"

#include "tests/core/exchange/files.h"

#include <gmock/gmock.h>

using core::LogTable;
using core::Problem;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

/// The one problem of a row that should have one.
Problem onlyProblem(const QByteArray &row)
{
    const LogTable log = files::logRows(row);
    EXPECT_EQ(log.problems.count(), 1u) << row.toStdString();
    return log.problems.isEmpty() ? Problem{} : log.problems.items().front();
}

#define EXPECT_PROBLEM(row, atLine, inField, saying, withRemedy)                                   \
    do {                                                                                           \
        const Problem p = onlyProblem(row);                                                        \
        EXPECT_EQ(p.file, QStringLiteral("log.csv"));                                              \
        EXPECT_EQ(p.line, atLine);                                                                 \
        EXPECT_EQ(p.field, QStringLiteral(inField));                                               \
        EXPECT_TRUE(p.words.contains(QStringLiteral(saying))) << p.words.toStdString();            \
        EXPECT_TRUE(p.remedy.contains(QStringLiteral(withRemedy))) << p.remedy.toStdString();      \
    } while (false)

} // namespace

TEST(LogCsv, ReadsALineOfAllColumnsInAnyOrder)
{
    const LogTable log = files::log("note,readiness,touch,velocity_ms,session,failed,rpe,reps_done,"
                                    "reps_planned,load_kg,variation,date,lifter\r\n"
                                    "\"slow, but clean\",4,2,0.31,2,1,9.5,2,3,102.5,feet_up,"
                                    "2026-03-31,Ada Berg\r\n");
    ASSERT_TRUE(log.problems.isEmpty()) << oneLine(log.problems.items()[0]).toStdString();
    ASSERT_THAT(log.rows, SizeIs(1));
    const core::LogRow &row = log.rows[0];
    EXPECT_EQ(row.line, 2);
    EXPECT_EQ(row.lifter, QStringLiteral("Ada Berg"));
    EXPECT_EQ(row.day, QDate(2026, 3, 31));
    EXPECT_EQ(row.number, 2);
    EXPECT_EQ(row.variation, QStringLiteral("feet_up"));
    EXPECT_EQ(row.readiness, 4);
    EXPECT_EQ(row.set.loadKg, 102.5);
    EXPECT_EQ(row.set.repsPlanned, 3);
    EXPECT_EQ(row.set.repsDone, 2);
    EXPECT_EQ(row.set.rpe, 9.5);
    EXPECT_TRUE(row.set.failed);
    EXPECT_EQ(row.set.velocityMs, 0.31);
    EXPECT_EQ(row.set.touch, 2);
    EXPECT_EQ(row.set.note, QStringLiteral("slow, but clean"));
}

TEST(LogCsv, BlankCellsAreUnknownNotZero)
{
    const LogTable log = files::logRows("Ada,2026-03-31,comp,100,,5,,\n");
    ASSERT_TRUE(log.problems.isEmpty());
    const core::LogRow &row = log.rows.at(0);
    EXPECT_FALSE(row.set.repsPlanned);
    EXPECT_FALSE(row.set.rpe);
    EXPECT_FALSE(row.set.failed);
    EXPECT_FALSE(row.readiness);
    EXPECT_EQ(row.number, 1);
}

TEST(LogCsv, AMissedFirstRepIsASet)
{
    const LogTable log = files::logRows("Ada,2026-03-31,comp,140,1,0,10,1\n");
    EXPECT_TRUE(log.problems.isEmpty());
    EXPECT_EQ(log.rows.at(0).set.repsDone, 0);
}

TEST(LogCsv, NamesAreReadTheSameHoweverTheLetterIsStored)
{
    const LogTable log = files::logRows("Jo\xCC\x88rn,2026-03-31,comp,100,,5,,\n"
                                        "  J\xC3\xB6rn ,2026-03-31,comp,100,,5,,\n");
    EXPECT_TRUE(log.problems.isEmpty());
    EXPECT_EQ(log.rows.at(0).lifter, log.rows.at(1).lifter);
}

TEST(LogCsv, TellsAnEmptyFile)
{
    const LogTable log = files::log("");
    ASSERT_EQ(log.problems.count(), 1u);
    EXPECT_EQ(log.problems.items()[0].words, QStringLiteral("The file is empty."));
    EXPECT_TRUE(log.problems.items()[0].remedy.contains(QStringLiteral("lifter,date,variation")));
}

TEST(LogCsv, TellsEachColumnThatIsUnknownMissingOrDoubled)
{
    const LogTable log = files::log("lifter,date,variation,lode_kg,reps_planned,reps_done,rpe,rpe\n"
                                    "Ada,2026-03-31,comp,100,5,5,8,8\n");
    EXPECT_THAT(log.rows, IsEmpty());
    ASSERT_EQ(log.problems.count(), 4u);
    const auto &p = log.problems.items();
    EXPECT_EQ(p[0].field, QStringLiteral("lode_kg"));
    EXPECT_TRUE(p[0].remedy.contains(QStringLiteral("load_kg")));
    EXPECT_TRUE(p[1].words.contains(QStringLiteral("twice")));
    EXPECT_EQ(p[2].field, QStringLiteral("load_kg"));
    EXPECT_EQ(p[3].field, QStringLiteral("failed"));
    EXPECT_EQ(p[3].line, 1);
}

TEST(LogCsv, TellsOtherSeparators)
{
    const LogTable log = files::log("lifter;date;variation;load_kg\n");
    ASSERT_EQ(log.problems.count(), 1u);
    EXPECT_TRUE(log.problems.items()[0].words.contains(QStringLiteral("semicolons")));
}

TEST(LogCsv, TellsLatin1ByItsLine)
{
    EXPECT_PROBLEM("Ada,2026-03-31,comp,100,5,5,8,0\nJ\xF6rn,2026-03-31,comp,100,5,5,8,0\n", 3, "",
        "not UTF-8", "CSV UTF-8");
}

TEST(LogCsv, TellsACommaAsDecimalSign)
{
    EXPECT_PROBLEM(
        "Ada\u200B,2026-03-31,comp,100,5,5,8,0\n", 2, "lifter", "cannot be seen", "anew");
    EXPECT_PROBLEM("Ada,2026-03-31,comp,102,5,5,5,8,0\n", 2, "", "9 fields", "102.5");
    EXPECT_PROBLEM("Ada,2026-03-31,comp,\"102,5\",5,5,8,0\n", 2, "load_kg", "comma", "102.5");
}

TEST(LogCsv, TellsADayThatDoesNotExistOrIsOutOfReach)
{
    EXPECT_PROBLEM(
        "Ada,2026-02-31,comp,100,5,5,8,0\n", 2, "date", "not in the calendar", "Look up");
    EXPECT_PROBLEM("Ada,31.03.2026,comp,100,5,5,8,0\n", 2, "date", "not a date", "2026-03-31");
    EXPECT_PROBLEM("Ada,2026-07-02,comp,100,5,5,8,0\n", 2, "date", "not come yet", "took place");
    EXPECT_PROBLEM("Ada,0202-03-31,comp,100,5,5,8,0\n", 2, "date", "before 1950", "four digits");
    EXPECT_TRUE(files::logRows("Ada,2026-07-01,comp,100,5,5,8,0\n").problems.isEmpty());
}

TEST(LogCsv, TellsNumbersOutOfReach)
{
    EXPECT_PROBLEM("Ada,2026-03-31,comp,-100,5,5,8,0\n", 2, "load_kg", "more than 0", "kg");
    EXPECT_PROBLEM("Ada,2026-03-31,comp,nan,5,5,8,0\n", 2, "load_kg", "not a number", "102.5");
    EXPECT_PROBLEM("Ada,2026-03-31,comp,1e999,5,5,8,0\n", 2, "load_kg", "not a number", "102.5");
    EXPECT_PROBLEM("Ada,2026-03-31,comp,100 kg,5,5,8,0\n", 2, "load_kg", "not a number", "102.5");
    EXPECT_PROBLEM("Ada,2026-03-31,comp,100,5,0,8,0\n", 2, "reps_done", "missed", "failed");
    EXPECT_PROBLEM("Ada,2026-03-31,comp,100,5,4.5,8,0\n", 2, "reps_done", "whole", "digits");
    EXPECT_PROBLEM("Ada,2026-03-31,comp,100,0,5,8,0\n", 2, "reps_planned", "1 to 100", "blank");
    EXPECT_PROBLEM("Ada,2026-03-31,comp,100,5,5,11,0\n", 2, "rpe", "1 to 10", "blank");
    EXPECT_PROBLEM("Ada,2026-03-31,comp,100,5,5,8.3,0\n", 2, "rpe", "halves", "blank");
    EXPECT_PROBLEM("Ada,2026-03-31,comp,100,5,5,8,yes\n", 2, "failed", "neither", "Write 1");
}

TEST(LogCsv, TellsBlankFieldsThatASetNeeds)
{
    EXPECT_PROBLEM(",2026-03-31,comp,100,5,5,8,0\n", 2, "lifter", "blank", "name");
    EXPECT_PROBLEM("Ada,,comp,100,5,5,8,0\n", 2, "date", "blank", "day");
    EXPECT_PROBLEM("Ada,2026-03-31,,100,5,5,8,0\n", 2, "variation", "blank", "code");
    EXPECT_PROBLEM("Ada,2026-03-31,comp,,5,5,8,0\n", 2, "load_kg", "blank", "kg");
    EXPECT_PROBLEM("Ada,2026-03-31,comp,100,5,,8,0\n", 2, "reps_done", "blank", "reps");
}

TEST(LogCsv, TellsALineThatIsTooLong)
{
    EXPECT_PROBLEM(QByteArray(10'000'000, 'x') + '\n', 2, "", "longer", "line of its own");
}

TEST(LogCsv, TellsReadinessThatContradictsItself)
{
    const LogTable log =
        files::log("lifter,date,variation,load_kg,reps_planned,reps_done,rpe,failed,"
                   "readiness\n"
                   "Ada,2026-03-31,comp,100,5,5,8,0,3\n"
                   "Ada,2026-03-31,comp,100,5,5,8,0,\n"
                   "ada,2026-03-31,comp,100,5,5,8,0,4\n");
    ASSERT_EQ(log.problems.count(), 1u);
    EXPECT_EQ(log.problems.items()[0].line, 4);
    EXPECT_TRUE(log.problems.items()[0].words.contains(QStringLiteral("Line 2 has 3")));
}

TEST(LogCsv, ListsEveryBadRowAndEveryFieldOfIt)
{
    const LogTable log = files::logRows("Ada,2026-02-31,comp,-1,5,5,11,0\n"
                                        "Ada,2026-03-31,comp,100,5,5,8,0\n"
                                        "Ada,2026-03-31,comp,100,5,5,12,0\n");
    ASSERT_EQ(log.problems.count(), 4u);
    EXPECT_EQ(log.problems.items()[0].line, 2);
    EXPECT_EQ(log.problems.items()[3].line, 4);
}

TEST(LogCsv, CountsMoreProblemsThanItKeeps)
{
    const LogTable log = files::logRows(QByteArray("x\n").repeated(25'000));
    EXPECT_EQ(log.problems.count(), 25'000u);
    EXPECT_EQ(log.problems.items().size(), core::ProblemList::kKept);
}
