#include "core/storage/migrations.h"
#include "tests/core/storage/roster_fixture.h"

#include "core/csv/catalogue_csv.h"
#include "core/storage/backup.h"
#include "core/storage/database.h"
#include "core/storage/repositories.h"

#include <QDir>

using namespace core;
using testing::ElementsAre;
using testing::SizeIs;

namespace {

/// Codes of the built-in catalogue that the first rosters were made with.
constexpr auto kFirstCatalogue =
    "block_pull board_5cm box_squat_high close_grip comp dead_stop_pins deadlift "
    "deadlift_conventional deadlift_sumo dumbbell feet_up front_squat incline "
    "light_touch long_pause midway_hold off_chest_pause overhead_press "
    "paused_deadlift paused_squat slow_lowering speed squat stiff_leg_deadlift "
    "tempo_4_2_0 touch_and_go two_stage wide_grip";

/// A schema of three versions, told by what each leaves of one row.
const std::vector<Migration> kSteps = {
    {{QStringLiteral("CREATE TABLE note (words TEXT NOT NULL)")}},
    {{QStringLiteral("ALTER TABLE note ADD COLUMN length INTEGER NOT NULL DEFAULT 0"),
        QStringLiteral("UPDATE note SET length = length(words)")}},
    {{QStringLiteral("CREATE TABLE entry (words TEXT NOT NULL, length INTEGER NOT NULL)"),
        QStringLiteral("INSERT INTO entry SELECT words, length FROM note"),
        QStringLiteral("DROP TABLE note")}},
};

class MigrationTest : public RosterFixture
{
protected:
    Database db{path, Database::Access::readWrite};
    int backups = 0;

    void migrateTo(size_t version)
    {
        migrate(db, {kSteps.begin(), kSteps.begin() + qsizetype(version)}, [this] { ++backups; });
    }
    [[nodiscard]] QStringList schema()
    {
        QStringList sql;
        Rows rows = db.select(QStringLiteral("SELECT sql FROM sqlite_schema ORDER BY name"));
        while (rows.next())
            sql << rows.text();
        return sql;
    }
};

} // namespace

TEST(Statements, EndWhereSqlEndsThemNotAtEverySemicolon)
{
    const QStringList statements = statementsOf("-- a; comment\n"
                                                "CREATE TABLE a (b TEXT DEFAULT 'x;y');\n"
                                                "CREATE TRIGGER t AFTER INSERT ON a BEGIN\n"
                                                "  UPDATE a SET b = 1; DELETE FROM a;\n"
                                                "END;\n\n");
    ASSERT_THAT(statements, SizeIs(2));
    EXPECT_TRUE(statements[0].endsWith(QStringLiteral("'x;y');")));
    EXPECT_TRUE(statements[1].endsWith(QStringLiteral("END;")));
}

TEST(Statements, OfTheProgramsOwnScriptsAreWhole)
{
    for (const Migration &step : migrations())
        for (const QString &statement : step.statements)
            EXPECT_TRUE(statement.endsWith(u';')) << statement.toStdString();
}

TEST_F(MigrationTest, AFreshFileGetsEveryStepAndNoBackup)
{
    migrateTo(3);
    EXPECT_EQ(db.userVersion(), 3);
    EXPECT_THAT(schema(), SizeIs(1));
    EXPECT_EQ(backups, 0);
}

TEST_F(MigrationTest, EveryOldVersionKeepsItsRows)
{
    for (const size_t from : {1u, 2u}) {
        Database old(
            folder.filePath(QStringLiteral("old%1").arg(from)), Database::Access::readWrite);
        migrate(old, {kSteps.begin(), kSteps.begin() + qsizetype(from)}, [] {});
        old.run(QStringLiteral("INSERT INTO note (words) VALUES ('heavy')"));
        if (from == 2)
            old.run(QStringLiteral("UPDATE note SET length = 5"));
        int made = 0;
        migrate(old, kSteps, [&made] { ++made; });
        EXPECT_EQ(made, 1);
        EXPECT_EQ(old.userVersion(), 3);
        EXPECT_EQ(old.value(QStringLiteral("SELECT words FROM entry")).toString(),
            QStringLiteral("heavy"));
        EXPECT_EQ(old.value(QStringLiteral("SELECT length FROM entry")).toInt(), 5);
    }
}

TEST_F(MigrationTest, TheNewestIsLeftAlone)
{
    migrateTo(3);
    migrateTo(3);
    EXPECT_EQ(backups, 0);
}

TEST_F(MigrationTest, AStepThatFailsHalfWayLeavesTheFileAsItWas)
{
    migrateTo(1);
    db.run(QStringLiteral("INSERT INTO note (words) VALUES ('heavy')"));
    const QStringList before = schema();
    std::vector<Migration> faulty = kSteps;
    faulty[2].statements[2] = QStringLiteral("DROP TABLE never_was");
    EXPECT_THAT(
        wordsOf([&] { migrate(db, faulty, [] {}); }), Says("could not be brought to this version"));
    EXPECT_EQ(db.userVersion(), 1) << "the second step, which worked, is taken back too";
    EXPECT_EQ(schema(), before);
    EXPECT_EQ(
        db.value(QStringLiteral("SELECT words FROM note")).toString(), QStringLiteral("heavy"));
}

TEST_F(MigrationTest, NoStepIsTakenWithoutItsBackup)
{
    migrateTo(1);
    EXPECT_THAT(wordsOf([this] {
        migrate(db, kSteps, [] { throw StorageError(QStringLiteral("no room")); });
    }),
        Says("no room"));
    EXPECT_EQ(db.userVersion(), 1);
}

TEST_F(MigrationTest, ANewerFileIsRefused)
{
    migrateTo(3);
    const QStringList before = schema();
    EXPECT_THAT(wordsOf([this] { migrateTo(2); }), Says("newer version"));
    EXPECT_EQ(schema(), before);
    EXPECT_EQ(db.userVersion(), 3);
}

TEST_F(MigrationTest, TheBackupBeforeAStepIsAWholeFileOfTheOldVersion)
{
    migrateTo(1);
    db.run(QStringLiteral("INSERT INTO note (words) VALUES ('heavy')"));
    migrate(db, kSteps, [this] {
        backUpBeforeMigration(db, path, db.userVersion(), QDateTime({2026, 11, 25}, {8, 5, 9}));
    });
    const QDir backupFolder(folder.filePath(QStringLiteral("team backups")));
    const QStringList names = backupFolder.entryList(QDir::Files);
    ASSERT_THAT(names, SizeIs(1));
    EXPECT_EQ(names[0], QStringLiteral("before version 2 on 2026-11-25 080509.benchwright"));
    Database backup(backupFolder.filePath(names[0]), Database::Access::frozen);
    EXPECT_EQ(backup.userVersion(), 1);
    EXPECT_EQ(
        backup.value(QStringLiteral("SELECT words FROM note")).toString(), QStringLiteral("heavy"));
    EXPECT_THAT(backupsOf(path), SizeIs(0))
        << "it is none of the daily ones, which are thinned out";
}

TEST_F(MigrationTest, ASlashBetweenSetLinesBecomesARowAndOneInANoteStays)
{
    const std::vector<Migration> &steps = migrations();
    migrate(db, {steps.begin(), steps.begin() + 5}, [] {});
    db.run(QStringLiteral("INSERT INTO variation VALUES (1, 'speed', 'Speed bench', 'bench', 0,"
                          " 'both', '', '', 0, 0, 0, 1, 5, 1, 0, '', 1, 'low',"
                          " 'about half to two thirds of the max', '', 0, '')"));
    db.run(
        QStringLiteral("INSERT INTO lifter VALUES (1, 'Ada', 'ada', '', NULL, NULL, 'kg', 'soft',"
                       " '', 20, 0, NULL, '', 0, 0, NULL)"));
    const std::pair<const char *, const char *> kLines[] = {
        {"1x1 @8 / 3x3 -10%", "1x1 @8 \n 3x3 -10%"}, {"3x3 @8", "3x3 @8"},
        {"1x1 @8 ; a/b\n3x3/2x2 @7 ; c/d", "1x1 @8 ; a/b\n3x3\n2x2 @7 ; c/d"},
        {"3x3 @8 ; 2/3 speed", "3x3 @8 ; 2/3 speed"}};
    for (int id = 0; const auto &[was, now] : kLines) {
        ++id;
        db.run(QStringLiteral("INSERT INTO card VALUES (?, 1, '2026-03-02', ?, 1, ?, '')"),
            {id, id, QString::fromLatin1(was)});
    }
    migrate(db, steps, [] {});
    const std::vector<Card> cards = Repository<Card>::select(db);
    ASSERT_EQ(cards.size(), std::size(kLines));
    for (size_t i = 0; i < cards.size(); ++i)
        EXPECT_EQ(cards[i].setLine, QString::fromLatin1(kLines[i].second));
    EXPECT_EQ(Repository<Variation>::select(db).front().usualPercent, 60.0);
    EXPECT_FALSE(Repository<Variation>::select(db).front().assistance);
}

// A row that joins the built-in catalogue later comes to rosters that were made before it by a
// script.
TEST_F(MigrationTest, AnOlderRosterGetsTheRowsThatJoinedTheCatalogueAndKeepsItsOwn)
{
    const std::vector<Migration> &steps = migrations();
    migrate(db, {steps.begin(), steps.begin() + 6}, [] {});
    Variation own = *withCode(builtInCatalogue(), QStringLiteral("chains"));
    for (const QString &code : QString::fromLatin1(kFirstCatalogue).split(u' '))
        Repository<Variation>::insert(db, *withCode(builtInCatalogue(), code));
    own.id = {200};
    own.name = QStringLiteral("Our chains");
    own.retired = true;
    Repository<Variation>::insert(db, own);
    migrate(db, steps, [] {});
    const std::vector<Variation> all = Repository<Variation>::select(db);
    EXPECT_EQ(all.size(), builtInCatalogue().size());
    for (const Variation &row : builtInCatalogue()) {
        const Variation *had = withCode(all, row.code);
        ASSERT_TRUE(had) << row.code.toStdString();
        Variation expected = row.code == own.code ? own : row;
        expected.id = had->id;
        EXPECT_EQ(*had, expected) << row.code.toStdString();
    }
    EXPECT_EQ(withCode(all, own.code)->id, own.id);
    EXPECT_GT(withCode(all, QStringLiteral("bands"))->id, own.id) << "after the last";
}

TEST_F(MigrationTest, NoRowJoinsBesideOneThatTheCoachGaveItsName)
{
    const std::vector<Migration> &steps = migrations();
    migrate(db, {steps.begin(), steps.begin() + 6}, [] {});
    Variation own = *withCode(builtInCatalogue(), QStringLiteral("floor_press"));
    own.id = {1};
    own.code = QStringLiteral("my_floor");
    own.name = own.name.toUpper();
    Repository<Variation>::insert(db, own);
    migrate(db, steps, [] {});
    const std::vector<Variation> all = Repository<Variation>::select(db);
    EXPECT_FALSE(withCode(all, QStringLiteral("floor_press")));
    EXPECT_TRUE(withCode(all, QStringLiteral("my_floor")));
    EXPECT_TRUE(withCode(all, QStringLiteral("bands")));
}

TEST_F(MigrationTest, ARosterWithoutAVariationGetsNoneByAStep)
{
    migrate(db, migrations(), [] {});
    EXPECT_THAT(Repository<Variation>::select(db), SizeIs(0)) << "a new one gets them whole";
}

TEST_F(MigrationTest, AreasSparedBecomeGradesAndUnansweredPainStaysUnanswered)
{
    const std::vector<Migration> &steps = migrations();
    migrate(db, {steps.begin(), steps.begin() + 3}, [] {});
    const auto add = [this](int id, const char *lift, const char *spares) {
        db.run(
            QStringLiteral(
                "INSERT INTO variation VALUES (?, ?, 'V', ?, 0, 'both', '', '', 0, 0, 0, 1, 5, 1,"
                " 0, '', 1, 'low', ?, '', '', 0)"),
            {id, QStringLiteral("v%1").arg(id), QLatin1String(lift), QLatin1String(spares)});
    };
    add(1, "bench", "");
    add(2, "bench", "back legs");
    add(3, "bench", "shoulders");
    add(4, "squat", "legs");
    db.run(
        QStringLiteral("INSERT INTO lifter VALUES (1, 'Ada', 'ada', '', NULL, NULL, 'kg', 'soft',"
                       " '', 20, 0, NULL, '', 0)"));
    db.run(
        QStringLiteral("INSERT INTO check_in VALUES (1, 1, '2026-03-02', 3, NULL, NULL, 1, 'chest',"
                       " '', ''), (2, 1, '2026-03-04', 3, NULL, NULL, 0, '', '', '')"));
    migrate(db, steps, [] {});

    const std::vector<Variation> all = Repository<Variation>::select(db);
    ASSERT_GE(all.size(), 4u); // those of the catalogue that came later follow
    EXPECT_EQ(all[0].work, usualWork(Lift::bench));
    EXPECT_EQ(all[1].work[BodyArea::legs], Work::none);
    EXPECT_EQ(all[1].work[BodyArea::chest], Work::much);
    EXPECT_EQ(all[2].work[BodyArea::shoulders], Work::some) << "spared is not safe";
    EXPECT_EQ(all[2].work[BodyArea::wrists], Work::some);
    EXPECT_EQ(all[3].work[BodyArea::legs], Work::some);
    EXPECT_EQ(all[3].work[BodyArea::chest], Work::none);
    const std::vector<CheckIn> said = Repository<CheckIn>::select(db);
    ASSERT_EQ(said.size(), 2u);
    EXPECT_TRUE(said[0].pain);
    EXPECT_FALSE(said[1].isPainFree) << "nothing told no from not asked";
    EXPECT_FALSE(Repository<Lifter>::select(db).front().trainingSince);
}
