#include "core/exchange/import_files.h"

#include "core/csv/catalogue_csv.h"
#include "tests/core/exchange/files.h"
#include "tests/core/exchange/held_roster.h"

#include <QTemporaryDir>
#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

const QByteArray kLog = files::kLogHeader
    + "Ada,2026-03-30,comp,100,5,5,8,0\n"
      "Ada,2026-04-01,comp,102.5,5,5,8,0\n"
      "Cleo,2026-04-01,feet_up,80,5,5,7.5,0\n";
const QByteArray kPeople = "lifter,sex,bodyweight_kg\nAda,f,62\n";

IdSource idsFrom(qint64 first)
{
    return {[n = first]() mutable { return LifterId{n++}; },
        [n = first]() mutable { return SessionId{n++}; }};
}

/// Ada with the first session of the log, and Bo, of whom the files say nothing.
class ImportFilesTest : public testing::Test
{
protected:
    ImportFilesTest()
    {
        roster.catalogue = builtInCatalogue();
        for (const char *name : {"Ada", "Bo"}) {
            Lifter lifter;
            lifter.id = LifterId{qint64(roster.allLifters.size()) + 1};
            lifter.name = QString::fromLatin1(name);
            lifter.gear = usualGear(lifter.unit);
            roster.allLifters.push_back(lifter);
        }
        const RosterRows rows{roster.allLifters, roster.catalogue, {}};
        const LogTable known = files::logRows("Ada,2026-03-30,comp,100,5,5,8,0\n"
                                              "Bo,2026-03-30,comp,90,5,5,8,0\n");
        roster.allSessions = planImport(known, {}, rows, idsFrom(1)).edit.sessions.after;
    }

    QString write(const char *name, const QByteArray &contents) const
    {
        QFile file(m_folder.filePath(QString::fromLatin1(name)));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(contents);
        return file.fileName();
    }

    [[nodiscard]] RosterRows rows() const
    {
        return {roster.allLifters, roster.catalogue, roster.allSessions};
    }

    tests::HeldRoster roster;

private:
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(ImportFilesTest, ThePlanIsThatOfTheTablesAndTheWholeRoster)
{
    const ImportPlan got = readImport({write("log.csv", kLog), write("people.csv", kPeople)},
        idsFrom(100), files::kToday, roster);
    const ImportPlan direct =
        planImport(files::log(kLog), files::people(kPeople), rows(), idsFrom(100));
    EXPECT_TRUE(got.isClean());
    EXPECT_FALSE(got.edit.isEmpty());
    EXPECT_EQ(got.edit, direct.edit);
    EXPECT_EQ(got.counts, direct.counts);
    EXPECT_THAT(roster.sessionsReadOf, ElementsAre(LifterId{1})) << "of no one else";
}

TEST_F(ImportFilesTest, TheProblemsAreThoseOfTheTables)
{
    const QByteArray bad = kLog + "Ada,2026-04-01,feetup,80,5,5,11,0\n";
    const ImportPlan got =
        readImport({write("log.csv", bad), {}}, idsFrom(100), files::kToday, roster);
    EXPECT_EQ(got.problems.items(),
        planImport(files::log(bad), {}, rows(), idsFrom(100)).problems.items());
    EXPECT_EQ(got.problems.count(), 2u);
    EXPECT_TRUE(got.edit.isEmpty());
}

TEST_F(ImportFilesTest, AFileThatHasGoneIsAProblem)
{
    const ImportPlan plan = readImport(
        {write("log.csv", kLog), QStringLiteral("gone.csv")}, idsFrom(100), files::kToday, roster);
    ASSERT_EQ(plan.problems.count(), 1u);
    EXPECT_EQ(plan.problems.items()[0].file, QStringLiteral("gone.csv"));
    EXPECT_TRUE(plan.edit.isEmpty());
}

TEST_F(ImportFilesTest, ReadingALogEndsAtTheLineWhereItIsStopped)
{
    QBuffer buffer;
    buffer.setData(kLog);
    buffer.open(QIODevice::ReadOnly);
    std::stop_source stop;
    int told = 0;
    const LogTable log = readLog(
        buffer, QStringLiteral("log.csv"), files::kToday, {stop.get_token(), [&](double share) {
                                                               EXPECT_GE(share, 0.0);
                                                               EXPECT_LE(share, 1.0);
                                                               if (++told == 3)
                                                                   stop.request_stop();
                                                           }});
    EXPECT_EQ(log.rows.size(), 2u);
}

TEST_F(ImportFilesTest, ReadingPeopleEndsWhenItIsStopped)
{
    QBuffer buffer;
    buffer.setData(kPeople);
    buffer.open(QIODevice::ReadOnly);
    std::stop_source stop;
    stop.request_stop();
    EXPECT_THAT(
        readPeople(buffer, QStringLiteral("people.csv"), files::kToday, stop.get_token()).rows,
        IsEmpty());
}

TEST_F(ImportFilesTest, AStopWhileTheRosterIsReadReadsNoFurtherAndPlansNothing)
{
    std::stop_source stop;
    roster.whenSessionsAreRead = [&stop] { stop.request_stop(); };
    const QByteArray both = kLog + "Bo,2026-04-01,comp,90,5,5,8,0\n";
    const ImportPlan plan = readImport(
        {write("log.csv", both), {}}, idsFrom(100), files::kToday, roster, {stop.get_token(), {}});
    EXPECT_THAT(roster.sessionsReadOf, ElementsAre(LifterId{1}));
    EXPECT_TRUE(plan.edit.isEmpty());
}

TEST_F(ImportFilesTest, ItTellsHowFarItIsAndNeverGoesBack)
{
    std::vector<double> told;
    const ImportPlan plan = readImport({write("log.csv", kLog), {}}, idsFrom(100), files::kToday,
        roster, {{}, [&told](double share) { told.push_back(share); }});
    EXPECT_TRUE(plan.isClean());
    EXPECT_GE(told.size(), 5u) << "a line or a lifter each";
    EXPECT_TRUE(std::is_sorted(told.begin(), told.end()));
    EXPECT_GE(told.back(), 0.5);
    EXPECT_LE(told.back(), 1.0);
}

TEST_F(ImportFilesTest, EachFileGoesWhereItsHeaderAsks)
{
    const QString log = write("a.csv", kLog);
    const QString people = write("b.csv", kPeople);
    QStringList unknown;
    const ImportFiles got =
        placed({}, {people, write("letter.csv", "Dear coach,\n"), log}, &unknown);
    EXPECT_EQ(got, (ImportFiles{log, people}));
    EXPECT_THAT(unknown, ElementsAre(QStringLiteral("letter.csv")));
}

TEST_F(ImportFilesTest, TheLogIsAHalfOfTheWorkByItsBytesAndTheRosterTheOther)
{
    QByteArray large = kLog;
    while (large.size() < 100'000)
        large += "Ada,2026-04-01,comp,102.5,5,5,8,0\n";
    std::vector<double> told;
    const ImportPlan plan = readImport({write("log.csv", large), {}}, idsFrom(100), files::kToday,
        roster, {{}, [&told](double share) { told.push_back(share); }});
    ASSERT_GT(told.size(), 2u);
    EXPECT_DOUBLE_EQ(told.front(), 0.5 * 65536.0 / double(large.size())) << "64 KiB are read first";
    EXPECT_EQ(told[told.size() - 3], 0.5) << "the whole log";
    EXPECT_EQ(told[told.size() - 2], 0.5) << "then the first of two lifters";
    EXPECT_EQ(told.back(), 0.75);
}
