#include "tests/app/program.h"

#include <QRegularExpression>

using CommandLine = Program;

TEST_F(CommandLine, VersionAndHelpGoToTheOutput)
{
    const Run version = run({"--version"});
    EXPECT_EQ(version.code, 0);
    EXPECT_TRUE(version.out.startsWith(QStringLiteral("benchwright 0.")));

    for (const char *command :
        {"estimate", "import", "print", "check", "score", "demo", "picture"}) {
        const Run help = run({command, "--help"});
        EXPECT_EQ(help.code, 0);
        EXPECT_TRUE(help.err.isEmpty());
        EXPECT_TRUE(help.out.contains(QStringLiteral("Example: benchwright %1 ").arg(command)))
            << help.out.toStdString();
    }
}

TEST_F(CommandLine, WrongUsageEndsWith2)
{
    for (const QStringList &arguments : {QStringList{"estimate"}, {"estimate", "--log", "x"},
             {"nonsense", "--frobnicate"}, {"import", "x.benchwright"}, {"check"},
             {"estimate", "--log", "a", "--out", "b", "--loud"}}) {
        const Run got = run(arguments);
        EXPECT_EQ(got.code, 2) << arguments.join(u' ').toStdString();
        EXPECT_TRUE(got.out.isEmpty());
        EXPECT_FALSE(got.err.isEmpty());
    }
}

TEST_F(CommandLine, AFileThatIsNotThereEndsWith3AndIsNamed)
{
    for (const QStringList &arguments :
        {QStringList{"estimate", "--log", "gone.csv", "--out", "-"}, {"check", "gone.csv"},
            {"import", "new.benchwright", "--create", "--log", "gone.csv"}}) {
        const Run got = run(arguments);
        EXPECT_EQ(got.code, 3) << arguments.join(u' ').toStdString();
        EXPECT_TRUE(got.err.contains(QStringLiteral("gone.csv"))) << got.err.toStdString();
    }
    EXPECT_THAT(names(), testing::IsEmpty());
}

TEST_F(CommandLine, EstimatesAreOneLineALifterAViewAndAWeek)
{
    write("log.csv", kSoundLog);
    const Run got = run({"estimate", "--log", "log.csv", "--out", "estimates.csv"});
    ASSERT_EQ(got.code, 0) << got.err.toStdString();
    EXPECT_TRUE(got.out.isEmpty());
    const QStringList lines =
        QString::fromUtf8(read("estimates.csv")).split(QStringLiteral("\r\n"));
    // Ada trains two weeks, Bo one; two views each; header and the end of the last line.
    ASSERT_EQ(lines.size(), 1 + 2 * 3 + 1);
    EXPECT_EQ(lines[0], QStringLiteral("lifter,date,view,estimate_kg,low90_kg,high90_kg"));
    const QRegularExpression form(QStringLiteral("^(Ada|Bo),2026-04-(05|12),(filtered|smoothed),"
                                                 "\\d+\\.\\d\\d,\\d+\\.\\d\\d,\\d+\\.\\d\\d$"));
    for (const QString &line : lines.mid(1, 6)) {
        EXPECT_TRUE(form.match(line).hasMatch()) << line.toStdString();
        const QStringList fields = line.split(u',');
        EXPECT_LT(fields[4].toDouble(), fields[3].toDouble());
        EXPECT_GT(fields[5].toDouble(), fields[3].toDouble());
        EXPECT_GT(fields[3].toDouble(), fields[0] == QStringLiteral("Ada") ? 105.0 : 80.0);
    }
}

TEST_F(CommandLine, EstimateReadsStandardInputAndWritesStandardOutput)
{
    write("log.csv", kSoundLog);
    ASSERT_EQ(run({"estimate", "--log", "log.csv", "--out", "estimates.csv"}).code, 0);
    const Run piped = run({"estimate", "--log", "-", "--out", "-"}, kSoundLog);
    EXPECT_EQ(piped.code, 0);
    EXPECT_EQ(piped.out.toUtf8(), read("estimates.csv"));

    const Run bad = run({"estimate", "--log", "-", "--out", "-"}, kHeader + "Ada\n");
    EXPECT_EQ(bad.code, 1);
    EXPECT_TRUE(bad.out.isEmpty());
    EXPECT_TRUE(bad.err.contains(QStringLiteral("(standard input):2:"))) << bad.err.toStdString();
}

TEST_F(CommandLine, AnEstimateThatCannotBeWrittenLeavesTheOldOne)
{
    write("log.csv", kSoundLog);
    write("estimates.csv", "what was there");
    EXPECT_EQ(run({"estimate", "--log", "log.csv", "--out", "no/such/folder.csv"}).code, 3);
    write("bad.csv", kHeader + "Ada\n");
    EXPECT_EQ(run({"estimate", "--log", "bad.csv", "--out", "estimates.csv"}).code, 1);
    EXPECT_EQ(read("estimates.csv"), "what was there");
}

TEST_F(CommandLine, OutputToADeviceLeavesTheDevice)
{
    write("log.csv", kSoundLog);
    EXPECT_EQ(run({"estimate", "--log", "log.csv", "--out", "/dev/null"}).code, 0);
    EXPECT_FALSE(QFileInfo(QStringLiteral("/dev/null")).isFile());
}

TEST_F(CommandLine, ManyProblemsAreCappedOnTheScreenAndCountedWhole)
{
    write("log.csv", kHeader + QByteArray("Ada,2026-03-30,comp,100,5,5,11,0\n").repeated(5000));
    const Run got = run({"estimate", "--log", "log.csv", "--out", "-"});
    EXPECT_EQ(got.code, 1);
    EXPECT_EQ(got.err.count(u'\n'), 101);
    EXPECT_TRUE(got.err.contains(QStringLiteral("5000 problems in all")));
}

TEST_F(CommandLine, CheckSaysWhatAFileIs)
{
    write("log.csv", kSoundLog);
    write("people.csv", "lifter,sex,bodyweight_kg\nAda,f,62\n");
    write("letter.txt", "Dear coach,\n");
    Run got = run({"check", "log.csv"});
    EXPECT_EQ(got.code, 0);
    EXPECT_TRUE(got.out.contains(QStringLiteral("4 sets from 2026-03-30 to 2026-04-06")));
    got = run({"check", "people.csv"});
    EXPECT_EQ(got.code, 0);
    EXPECT_TRUE(got.out.contains(QStringLiteral("1 lifter")));
    got = run({"check", "letter.txt"});
    EXPECT_EQ(got.code, 1);
    EXPECT_TRUE(got.err.contains(QStringLiteral("neither a roster")));
}
