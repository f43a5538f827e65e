#include "core/storage/database.h"

#include "tests/core/storage/roster_fixture.h"

using namespace core;

namespace {

/// One table in a file of its own.
class DatabaseTest : public RosterFixture
{
protected:
    DatabaseTest()
    {
        db.run(QStringLiteral("CREATE TABLE note (id INTEGER PRIMARY KEY CHECK (id < 1000), "
                              "text TEXT, real REAL, day TEXT)"));
    }

    /// What a coach is told when the statement fails.
    [[nodiscard]] static QString wordsOn(Database &db, const char *sql)
    {
        return wordsOf([&] { db.run(QString::fromLatin1(sql)); });
    }

    Database db{path, Database::Access::readWrite};
};

constexpr auto kInsert = "INSERT INTO note (text) VALUES ('a')";

} // namespace

// Each failure is made, not pretended: the words have to lead a coach to what is the matter.

TEST_F(DatabaseTest, SaysThatAnotherProgramHoldsTheFile)
{
    Database other(path, Database::Access::readWrite);
    other.run(QStringLiteral("PRAGMA busy_timeout = 10"));
    const Transaction held(db);
    EXPECT_THAT(wordsOn(other, kInsert), Says("Another program"));
}

TEST_F(DatabaseTest, SaysThatTheFileMayNotBeWritten)
{
    Database reader(path, Database::Access::readOnly);
    EXPECT_THAT(wordsOn(reader, kInsert), Says("cannot be written"));
    Database frozen(path, Database::Access::frozen);
    EXPECT_THAT(wordsOn(frozen, kInsert), Says("cannot be written"));
}

TEST_F(DatabaseTest, SaysThatTheFileIsDamaged)
{
    const QString stranger = folder.filePath(QStringLiteral("stranger"));
    QFile file(stranger);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray(4096, 'x'));
    file.close();
    Database no(stranger, Database::Access::readWrite);
    EXPECT_THAT(wordsOn(no, kInsert), Says("damaged"));
}

TEST_F(DatabaseTest, SaysThatADamagedPageIsDamage)
{
    Transaction tx(db);
    for (int i = 0; i < 500; ++i)
        db.run(QStringLiteral("INSERT INTO note (text) VALUES (?)"), {QString(200, u'x')});
    tx.commit();
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    file.seek(4096); // the first page holds the schema, the next the table's root
    file.write(QByteArray(int(file.size()) - 4096, '\xff'));
    file.close();
    Database again(path, Database::Access::readWrite);
    EXPECT_THAT(
        wordsOf([&] { (void)again.value(QStringLiteral("SELECT sum(length(text)) FROM note")); }),
        Says("damaged"));
}

TEST_F(DatabaseTest, SaysThatTheDiskIsFull)
{
    (void)db.value(QStringLiteral("PRAGMA max_page_count = 3"));
    EXPECT_THAT(wordsOn(db, "INSERT INTO note (text) VALUES (zeroblob(1000000))"), Says("full"));
}

TEST_F(DatabaseTest, SaysThatThereIsNoSuchFolder)
{
    const QString nowhere = folder.filePath(QStringLiteral("no/where.benchwright"));
    EXPECT_THAT(
        wordsOf([&] { Database(nowhere, Database::Access::readWrite); }), Says("cannot be opened"));
}

TEST_F(DatabaseTest, SaysThatOtherRowsDependOnIt)
{
    EXPECT_THAT(wordsOn(db, "INSERT INTO note (id) VALUES (1000)"), Says("refused the change"));
}

TEST_F(DatabaseTest, KeepsStatementAndDriverTextForWhoeverMendsIt)
{
    try {
        db.run(QStringLiteral("INSERT INTO nowhere VALUES (1)"));
        FAIL();
    } catch (const StorageError &error) {
        EXPECT_THAT(error.words(), Says("could not be read or written"));
        EXPECT_THAT(error.detail(), Says("INSERT INTO nowhere"));
        EXPECT_THAT(error.detail(), Says("no such table"));
    }
}

TEST_F(DatabaseTest, GivesBackWhatWasPutInAndAbsenceAsAbsence)
{
    const QString insert = QStringLiteral("INSERT INTO note (text, real, day) VALUES (?, ?, ?)");
    EXPECT_EQ(db.run(insert,
                  {toVariant(QString()), toVariant(std::optional<double>()),
                      toVariant(std::optional<QDate>())}),
        1);
    EXPECT_EQ(db.run(insert,
                  {toVariant(QStringLiteral("a")), toVariant(std::optional(2.5)),
                      toVariant(std::optional(QDate(2026, 3, 2)))}),
        1);
    Rows rows =
        db.select(QStringLiteral("SELECT id, text, real, day, id > 1 FROM note ORDER BY id"));
    ASSERT_TRUE(rows.next());
    EXPECT_EQ(rows.id(), 1);
    EXPECT_FALSE(rows.isNull()) << "no text is an empty text";
    EXPECT_EQ(rows.text(), QString());
    EXPECT_TRUE(rows.isNull());
    EXPECT_EQ(rows.maybe<double>(), std::nullopt);
    EXPECT_EQ(rows.maybe<QDate>(), std::nullopt);
    EXPECT_FALSE(rows.boolean());
    ASSERT_TRUE(rows.next()) << "and begins at the left again";
    EXPECT_EQ(rows.maybe<int>(), 2);
    rows.skip(1);
    EXPECT_EQ(rows.maybe<double>(), 2.5);
    EXPECT_EQ(rows.maybe<QDate>(), QDate(2026, 3, 2));
    EXPECT_TRUE(rows.boolean());
    EXPECT_FALSE(rows.next());
}

TEST_F(DatabaseTest, AValueOfNoRowIsInvalid)
{
    EXPECT_FALSE(db.value(QStringLiteral("SELECT id FROM note")).isValid());
    db.run(QString::fromLatin1(kInsert));
    EXPECT_EQ(db.value(QStringLiteral("SELECT id FROM note")).toInt(), 1);
    EXPECT_EQ(db.run(QStringLiteral("DELETE FROM note WHERE id > 1")), 0);
}

TEST_F(DatabaseTest, ATransactionThatIsNotCommittedNeverWas)
{
    {
        Transaction tx(db);
        db.run(QString::fromLatin1(kInsert));
    }
    EXPECT_EQ(db.value(QStringLiteral("SELECT count(*) FROM note")).toInt(), 0);
    {
        Transaction tx(db);
        db.run(QString::fromLatin1(kInsert));
        tx.commit();
    }
    EXPECT_EQ(db.value(QStringLiteral("SELECT count(*) FROM note")).toInt(), 1);
}
