#include "tests/app/program.h"

using Import = Program;

TEST_F(Import, MakesARosterAndTheSecondTimeAddsNothing)
{
    write("log.csv", kSoundLog);
    write("people.csv", "lifter,sex,bodyweight_kg,unit\nAda,f,62,lb\n");
    const QStringList files{"--log", "log.csv", "--people", "people.csv"};
    const Run first = run(QStringList{"import", "club.benchwright", "--create"} + files);
    ASSERT_EQ(first.code, 0) << first.err.toStdString();
    EXPECT_TRUE(first.out.contains(QStringLiteral("New lifters: 2")));
    EXPECT_TRUE(first.out.contains(QStringLiteral("New sets: 4")));

    const Run second = run(QStringList{"import", "club.benchwright"} + files);
    ASSERT_EQ(second.code, 0) << second.err.toStdString();
    EXPECT_TRUE(second.out.contains(QStringLiteral("New sets: 0")));
    EXPECT_TRUE(second.out.contains(QStringLiteral("already: 4")));

    const Run checked = run({"check", "club.benchwright"});
    EXPECT_EQ(checked.code, 0) << checked.err.toStdString();
    EXPECT_TRUE(checked.out.contains(QStringLiteral("2 lifters and 3 sessions")));
}

TEST_F(Import, ADryRunChangesNothing)
{
    write("log.csv", kSoundLog);
    const Run dry =
        run({"import", "club.benchwright", "--create", "--log", "log.csv", "--dry-run"});
    EXPECT_EQ(dry.code, 0) << dry.err.toStdString();
    EXPECT_TRUE(dry.out.contains(QStringLiteral("Nothing was changed")));
    EXPECT_EQ(names(), QStringList{"log.csv"});

    ASSERT_EQ(run({"import", "club.benchwright", "--create", "--log", "log.csv"}).code, 0);
    write("more.csv", kHeader + "Cleo,2026-04-08,comp,60,5,5,8,0\n");
    ASSERT_EQ(run({"import", "club.benchwright", "--log", "more.csv", "--dry-run"}).code, 0);
    EXPECT_TRUE(run({"check", "club.benchwright"}).out.contains(QStringLiteral("2 lifters")));
}

TEST_F(Import, CreateWritesOverNothingAndWithoutItTheRosterMustBeThere)
{
    write("log.csv", kSoundLog);
    write("club.benchwright", "something of the coach's");
    EXPECT_EQ(run({"import", "club.benchwright", "--create", "--log", "log.csv"}).code, 3);
    EXPECT_EQ(run({"import", "club.benchwright", "--log", "log.csv"}).code, 3);
    EXPECT_EQ(read("club.benchwright"), "something of the coach's");
    EXPECT_EQ(run({"import", "gone.benchwright", "--log", "log.csv"}).code, 3);
    EXPECT_FALSE(names().contains(QStringLiteral("gone.benchwright")));
}

TEST_F(Import, ABadLineLeavesTheRosterAsItWas)
{
    write("log.csv", kSoundLog);
    ASSERT_EQ(run({"import", "club.benchwright", "--create", "--log", "log.csv"}).code, 0);
    write("more.csv",
        kHeader + "Cleo,2026-04-08,comp,60,5,5,8,0\nCleo,2026-04-08,comp,60,5,5,11,0\n");
    const Run got = run({"import", "club.benchwright", "--log", "more.csv"});
    EXPECT_EQ(got.code, 1);
    EXPECT_TRUE(got.err.contains(QStringLiteral("Nothing was imported")));
    EXPECT_TRUE(run({"check", "club.benchwright"}).out.contains(QStringLiteral("2 lifters")));
}

TEST_F(Import, TheDemoRosterComesBackFromItsOwnFiles)
{
    ASSERT_EQ(run({"demo", "."}).code, 0);
    EXPECT_EQ(run({"demo", "."}).code, 3) << "a second run has to ask";
    EXPECT_EQ(run({"demo", ".", "--force"}).code, 0);
    const Run again =
        run({"import", "demo.benchwright", "--log", "log.csv", "--people", "people.csv"});
    EXPECT_EQ(again.code, 0) << again.err.toStdString();
    EXPECT_EQ(again.out.count(QStringLiteral(": 0\n")), 5) << again.out.toStdString();
    EXPECT_EQ(run({"check", "demo.benchwright"}).code, 0);
}
