#include "tests/app/program.h"

#include <QImage>

class Print : public Program
{
protected:
    void SetUp() override { ASSERT_EQ(run({"demo", "d", "--as-of", kDay}).code, 0); }

    QStringList pdfs(const QString &folder) const
    {
        return QDir(path(folder)).entryList({QStringLiteral("*.pdf")}, QDir::Files, QDir::Name);
    }
};

TEST_F(Print, WritesOnePdfALifterWithoutADisplayAndAsADraftLeavesTheRosterAlone)
{
    const QByteArray before = read("d/demo.benchwright");
    const Run got =
        run({"print", "d/demo.benchwright", "--as-of", kDay, "--out", "plans", "--draft"});
    ASSERT_EQ(got.code, 0) << got.err.toStdString();
    EXPECT_EQ(pdfs("plans").size(), 12);
    EXPECT_EQ(got.out.count(u'\n'), 12);
    for (const QString &name : pdfs("plans"))
        EXPECT_TRUE(read("plans/" + name).startsWith("%PDF-")) << name.toStdString();
    EXPECT_EQ(read("d/demo.benchwright"), before);
    EXPECT_EQ(QDir(path("d")).entryList(QDir::Files | QDir::Hidden).size(), 3);
}

TEST_F(Print, OneLifterIsFoundByNameWhateverTheCase)
{
    ASSERT_EQ(run({"print", "d/demo.benchwright", "--as-of", kDay, "--out", "plans", "--lifter",
                      "MARIT oskedal", "--paper", "Letter"})
                  .code,
        0);
    ASSERT_EQ(pdfs("plans").size(), 1);
    EXPECT_TRUE(pdfs("plans").front().startsWith(QStringLiteral("Marit Oskedal")));
    // Letter is 612 x 792 points (ANSI A).
    EXPECT_TRUE(read("plans/" + pdfs("plans").front()).contains("612"));
}

TEST_F(Print, SaysWhatStandsInTheWayAndMakesNoFolder)
{
    Run got = run({"print", "d/demo.benchwright", "--as-of", kDay, "--out", "plans", "--lifter",
        "Marit Oskedahl"});
    EXPECT_EQ(got.code, 1);
    EXPECT_TRUE(got.err.contains(QStringLiteral("Did you mean Marit Oskedal?")));
    got = run(
        {"print", "d/demo.benchwright", "--as-of", kDay, "--out", "plans", "--week", "1999-01-01"});
    EXPECT_EQ(got.code, 1);
    EXPECT_TRUE(got.err.contains(QStringLiteral("week of 1998-12-28")));
    EXPECT_EQ(run({"print", "d/demo.benchwright", "--as-of", kDay, "--out", "plans", "--week",
                      "2026-02-31"})
                  .code,
        2);
    EXPECT_EQ(
        run({"print", "d/demo.benchwright", "--as-of", kDay, "--out", "plans", "--paper", "A5"})
            .code,
        2);
    EXPECT_EQ(run({"print", "gone.benchwright", "--out", "plans"}).code, 3);
    EXPECT_EQ(run({"print", "d/log.csv", "--out", "plans"}).code, 3);
    EXPECT_FALSE(QFileInfo::exists(path("plans")));
}

TEST_F(Print, APictureShowsTheWindowAtTheSizeAskedFor)
{
    const Run got = run({"picture", "d/demo.benchwright", "--as-of", kDay, "--out", "w.png",
        "--width", "1920", "--height", "1080"});
    ASSERT_EQ(got.code, 0) << got.err.toStdString();
    EXPECT_TRUE(got.err.isEmpty()) << got.err.toStdString();
    EXPECT_EQ(QImage(path("w.png")).size(), QSize(1920, 1080));
}

TEST_F(Print, ScoreMeasuresTheDemoLog)
{
    const Run got = run({"score", "--log", "d/log.csv", "--people", "d/people.csv"});
    ASSERT_EQ(got.code, 0) << got.err.toStdString();
    EXPECT_TRUE(got.out.contains(QStringLiteral("mean error, reps")));
    EXPECT_TRUE(got.out.contains(QStringLiteral("Brier score")));
    EXPECT_FALSE(got.out.contains(QStringLiteral("nan")));
    EXPECT_EQ(run({"score", "--log", "-"}, kHeader).code, 0) << "a log without sets is no problem";
}
