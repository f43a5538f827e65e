#include "tests/app/program.h"

class HandOut : public Program
{
protected:
    void SetUp() override { ASSERT_EQ(run({"demo", "d", "--as-of", kDay}).code, 0); }

    QStringList files(const QString &ending) const
    {
        return QDir(path("out")).entryList({u'*' + ending}, QDir::Files, QDir::Name);
    }
};

TEST_F(HandOut, WritesAPageALifterAndWhatElseIsAskedForAndAsADraftLeavesTheRosterAlone)
{
    const QByteArray before = read("d/demo.benchwright");
    const Run got = run(
        {"handout", "d/demo.benchwright", "--as-of", kDay, "--out", "out", "--pdf", "--calendar", "--draft"});
    ASSERT_EQ(got.code, 0) << got.err.toStdString();
    EXPECT_TRUE(got.err.isEmpty()) << got.err.toStdString();
    EXPECT_EQ(files(".html").size(), 12);
    EXPECT_EQ(files(".pdf").size(), 12);
    EXPECT_EQ(files(".ics").size(), 12);
    EXPECT_EQ(got.out.count(u'\n'), 36);
    EXPECT_EQ(QDir(path("out")).entryList(QDir::Files | QDir::Hidden).size(), 36)
        << "nothing half written is left";
    for (const QString &name : files(".html"))
        EXPECT_TRUE(read("out/" + name).startsWith("<!DOCTYPE html>")) << name.toStdString();
    EXPECT_EQ(read("d/demo.benchwright"), before);
}

TEST_F(HandOut, OneLifterAndOneWeek)
{
    ASSERT_EQ(run({"handout", "d/demo.benchwright", "--as-of", kDay, "--out", "out", "--lifter",
                      "marit oskedal"})
                  .code,
        0);
    ASSERT_EQ(files(".html").size(), 1);
    EXPECT_TRUE(files(".pdf").isEmpty());
    EXPECT_TRUE(read("out/" + files(".html").front()).contains("Marit Oskedal"));
}

TEST_F(HandOut, SaysWhatStandsInTheWayAndMakesNoFolder)
{
    Run got = run({"handout", "d/demo.benchwright", "--as-of", kDay, "--out", "out", "--lifter",
        "Marit Oskedahl"});
    EXPECT_EQ(got.code, 1);
    EXPECT_TRUE(got.err.contains(QStringLiteral("Did you mean Marit Oskedal?")));
    got = run(
        {"handout", "d/demo.benchwright", "--as-of", kDay, "--out", "out", "--week", "1999-01-01"});
    EXPECT_EQ(got.code, 1);
    EXPECT_TRUE(got.err.contains(QStringLiteral("week of 1998-12-28")));
    EXPECT_EQ(run({"handout", "d/demo.benchwright"}).code, 2) << "--out is required";
    EXPECT_FALSE(QFileInfo::exists(path("out")));
    write("out", "a file of the coach's");
    EXPECT_EQ(run({"handout", "d/demo.benchwright", "--as-of", kDay, "--out", "out"}).code, 3);
    EXPECT_EQ(read("out"), "a file of the coach's");
}
