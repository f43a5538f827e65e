#include "core/storage/backup.h"
#include "tests/core/storage/roster_fixture.h"

#include "core/storage/database.h"

#include <QDir>

using namespace core;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

const QDate kToday(2026, 11, 25);

class BackupTest : public RosterFixture
{
protected:
    void backUpOn(QDate day) const
    {
        Database db(path, Database::Access::readWrite);
        backUpDaily(db, path, day);
    }
    [[nodiscard]] std::vector<QDate> days() const
    {
        std::vector<QDate> found;
        for (const Backup &backup : backupsOf(path))
            found.push_back(backup.day);
        return found;
    }
};

} // namespace

TEST(Superfluous, KeepsTheNewestSevenAndTheFirstOfEachMonth)
{
    std::vector<QDate> days;
    for (QDate day(2026, 10, 5); day <= kToday; day = day.addDays(1))
        days.push_back(day);
    const std::vector<QDate> old = superfluous(days);
    std::vector<QDate> kept;
    std::copy_if(days.begin(), days.end(), std::back_inserter(kept),
        [&old](QDate day) { return std::find(old.begin(), old.end(), day) == old.end(); });
    EXPECT_THAT(kept,
        ElementsAre(QDate(2026, 10, 5), QDate(2026, 11, 1), QDate(2026, 11, 19),
            QDate(2026, 11, 20), QDate(2026, 11, 21), QDate(2026, 11, 22), QDate(2026, 11, 23),
            QDate(2026, 11, 24), QDate(2026, 11, 25)));
}

TEST(Superfluous, LetsGoOfMonthsBeyondTheTwelfth)
{
    std::vector<QDate> days;
    for (int month = 0; month < 30; ++month)
        days.push_back(QDate(2024, 1, 15).addMonths(month));
    const std::vector<QDate> old = superfluous(days);
    EXPECT_THAT(old, SizeIs(18));
    EXPECT_EQ(*std::max_element(old.begin(), old.end()), QDate(2025, 6, 15));
    EXPECT_THAT(superfluous({}), IsEmpty());
}

TEST_F(BackupTest, IsTheRosterAtThatMoment)
{
    Contents before;
    {
        RosterFile file = RosterFile::create(path);
        Edit edit;
        edit.lifters.after = {lifterNamed(file, QStringLiteral("Ann"))};
        edit.sessions.after = {sessionOn(file, edit.lifters.after.front().id, kToday)};
        file.apply(edit);
        before = contentsOf(file);
    }
    backUpOn(kToday);
    const std::vector<Backup> backups = backupsOf(path);
    ASSERT_THAT(backups, SizeIs(1));
    EXPECT_EQ(
        backups[0].path, folder.filePath(QStringLiteral("team backups/2026-11-25.benchwright")));

    const QString copy = copyOutOfBackups(backups[0].path);
    EXPECT_EQ(copy, folder.filePath(QStringLiteral("team of 2026-11-25.benchwright")));
    EXPECT_EQ(contentsOf(RosterFile::open(copy, kNow)), before);
    EXPECT_EQ(copyOutOfBackups(backups[0].path),
        folder.filePath(QStringLiteral("team of 2026-11-25 (2).benchwright")));
    EXPECT_THAT(wordsOf([&] {
        (void)copyOutOfBackups(folder.filePath(QStringLiteral("team backups/gone.benchwright")));
    }),
        Says("could not be copied"));
}

TEST_F(BackupTest, OneADayAndTheFirstStands)
{
    (void)RosterFile::create(path);
    backUpOn(kToday);
    QFile first(backupsOf(path).at(0).path);
    ASSERT_TRUE(first.open(QIODevice::ReadOnly));
    const QByteArray bytes = first.readAll();
    first.close();
    {
        RosterFile file = RosterFile::open(path, kNow);
        Edit edit;
        edit.lifters.after = {lifterNamed(file, QStringLiteral("Ann"))};
        file.apply(edit);
    }
    backUpOn(kToday);
    ASSERT_TRUE(first.open(QIODevice::ReadOnly));
    EXPECT_EQ(first.readAll(), bytes);
}

TEST_F(BackupTest, OldOnesAreThinnedOutAndStrangersLeftAlone)
{
    (void)RosterFile::create(path);
    for (int day = -30; day <= 0; ++day)
        backUpOn(kToday.addDays(day));
    EXPECT_THAT(days(),
        ElementsAre(kToday, kToday.addDays(-1), kToday.addDays(-2), kToday.addDays(-3),
            kToday.addDays(-4), kToday.addDays(-5), kToday.addDays(-6), QDate(2026, 11, 1),
            QDate(2026, 10, 26)));
    const QString mine = folder.filePath(QStringLiteral("team backups/keep me.benchwright"));
    ASSERT_TRUE(QFile::copy(path, mine));
    for (int day = 1; day <= 10; ++day)
        backUpOn(kToday.addDays(day));
    EXPECT_TRUE(QFile::exists(mine));
    EXPECT_EQ(QDir(folder.filePath(QStringLiteral("team backups")))
                  .entryList({QStringLiteral("*.part")})
                  .size(),
        0);
}

TEST_F(BackupTest, IsMadeAtOpeningButNotForANewRoster)
{
    (void)RosterFile::create(path);
    EXPECT_THAT(backupsOf(path), IsEmpty());
    const RosterFile file = RosterFile::open(path, kNow);
    EXPECT_THAT(days(), ElementsAre(kNow.date()));
    EXPECT_EQ(file.backupTrouble(), QString());
}

TEST_F(BackupTest, IsMadeWhileTheLogHoldsTheNewestRows)
{
    RosterFile file = RosterFile::create(path);
    Edit edit;
    edit.lifters.after = {lifterNamed(file, QStringLiteral("Ann"))};
    file.apply(edit);
    ASSERT_GT(QFileInfo(path + QStringLiteral("-wal")).size(), 0);
    backUpOn(kToday);
    Database backup(backupsOf(path).at(0).path, Database::Access::frozen);
    EXPECT_EQ(
        backup.value(QStringLiteral("SELECT name FROM lifter")).toString(), QStringLiteral("Ann"));
}

TEST_F(BackupTest, ThatFailsIsToldAndKeepsNobodyFromWork)
{
    (void)RosterFile::create(path);
    // A file where the folder should be.
    QFile inTheWay(folder.filePath(QStringLiteral("team backups")));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    RosterFile file = RosterFile::open(path, kNow);
    EXPECT_THAT(file.backupTrouble(), Says("No backup could be made"));
    Edit edit;
    edit.lifters.after = {lifterNamed(file, QStringLiteral("Ann"))};
    EXPECT_NO_THROW(file.apply(edit));
}

TEST_F(BackupTest, IsNotWorkedIn)
{
    (void)RosterFile::create(path);
    backUpOn(kToday);
    const QString backup = backupsOf(path).at(0).path;
    EXPECT_THAT(
        wordsOf([&] { (void)RosterFile::open(backup, kNow); }), Says("is a backup. Copy it out"));
}
