#include "core/storage/backup.h"
#include "core/storage/database.h"
#include "tests/core/storage/roster_fixture.h"

using namespace core;

namespace {

/// A roster whose file is then tampered with.
class ProbeBounds : public RosterFixture
{
protected:
    ProbeBounds() { (void)RosterFile::create(path); }

    [[nodiscard]] QString words() const
    {
        return wordsOf([this] { (void)RosterFile::open(path, kNow); });
    }
    void writeByte(qint64 at, char to) const
    {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        file.seek(at);
        file.write(&to, 1);
    }
};

} // namespace

// SQLite database file format, section 1.3: 100 bytes, the magic in the first 16 with its zero, the
// application id from 68 on.

TEST_F(ProbeBounds, AHeaderIsAHundredBytes)
{
    ASSERT_TRUE(QFile(path).resize(100));
    EXPECT_THAT(words(), Says("damaged")) << "a roster's header, and nothing behind it";
    ASSERT_TRUE(QFile(path).resize(99));
    EXPECT_THAT(words(), Says("is not a roster of Benchwright"));
}

TEST_F(ProbeBounds, TheMagicEndsWithAZero)
{
    writeByte(15, 'x');
    EXPECT_THAT(words(), Says("is not a roster of Benchwright"));
}

TEST_F(ProbeBounds, EachByteOfTheApplicationIdCounts)
{
    for (const qint64 at : {68, 71}) {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        file.seek(at);
        char before = 0;
        ASSERT_TRUE(file.getChar(&before));
        file.close();
        writeByte(at, char(before ^ 1));
        EXPECT_THAT(words(), Says("is not a roster of Benchwright")) << at;
        writeByte(at, before);
        EXPECT_EQ(words(), QStringLiteral("nothing thrown"));
    }
}

TEST_F(ProbeBounds, CopiesOutOfABackupAreNumberedOn)
{
    {
        Database db(path, Database::Access::readWrite);
        backUpDaily(db, path, kNow.date());
    }
    const QString backup = backupsOf(path).at(0).path;
    for (const char *number : {"", " (2)", " (3)"})
        EXPECT_EQ(copyOutOfBackups(backup),
            folder.filePath(
                QStringLiteral("team of 2026-11-25%1.benchwright").arg(QLatin1String(number))));
}
