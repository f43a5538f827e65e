#include "core/storage/roster_file.h"
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
    const Run got = run({"handout", "d/demo.benchwright", "--as-of", kDay, "--out", "out", "--pdf",
        "--calendar", "--draft"});
    ASSERT_EQ(got.code, 0) << got.err.toStdString();
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
    EXPECT_EQ(run({"handout", "d/demo.benchwright", "--as-of", kDay, "--out", "out", "--lifter",
                      "Marit Oskedal"})
                  .code,
        3);
    EXPECT_EQ(read("out"), "a file of the coach's");
}

class StoppedHandOut : public HandOut
{
protected:
    void SetUp() override
    {
        HandOut::SetUp();
        core::RosterFile roster = core::RosterFile::open(path(kRoster), noon());
        core::CheckIn said;
        for (const core::Lifter &lifter : roster.lifters())
            if (lifter.name == kName)
                said.lifter = lifter.id;
        said.day = QDate::fromString(kDay, Qt::ISODate);
        core::Edit edit;
        for (const core::CheckIn &other : roster.checkIns(said.lifter))
            if (other.day == said.day)
                edit.checkIns.before = {other};
        said.id = edit.checkIns.before.empty() ? roster.newId<core::CheckIn>()
                                               : edit.checkIns.before[0].id;
        said.pain = core::PainFlag{core::BodyArea::shoulders, {}};
        edit.checkIns.after = {said};
        roster.apply(edit);
    }
    static QDateTime noon() { return {QDate::fromString(kDay, Qt::ISODate), QTime(12, 0)}; }
    Run write(const QStringList &more)
    {
        return run(QStringList{"print", kRoster, "--as-of", kDay, "--out", "out", "--lifter", kName}
            + more);
    }
    std::vector<core::Waiver> waivers() const
    {
        const core::RosterFile roster = core::RosterFile::open(path(kRoster), noon());
        std::vector<core::Waiver> found;
        for (const core::Lifter &lifter : roster.lifters())
            for (const core::Waiver &waiver : roster.waivers(lifter.id))
                if (lifter.name == kName)
                    found.push_back(waiver);
        return found;
    }

    static inline const QString kRoster = QStringLiteral("d/demo.benchwright");
    static inline const QString kName = QStringLiteral("Marit Oskedal");
};

TEST_F(StoppedHandOut, IsRefusedWithTheWordsUntilANoteAcceptsIt)
{
    const size_t before = waivers().size();
    Run got = write({});
    EXPECT_EQ(got.code, 1);
    EXPECT_TRUE(got.err.contains(QStringLiteral("Pain was flagged"))) << got.err.toStdString();
    EXPECT_TRUE(got.err.contains(kName));
    EXPECT_TRUE(got.err.contains(QStringLiteral("--accept")));
    EXPECT_FALSE(QFileInfo::exists(path("out")));
    EXPECT_EQ(waivers().size(), before);

    EXPECT_EQ(write({"--accept", "  "}).code, 2) << "a note has words";
    EXPECT_EQ(write({"--accept", "\u200B"}).code, 2) << "and some that can be seen";
    EXPECT_EQ(write({"--accept", "cleared", "--draft"}).code, 2) << "a draft accepts nothing";
    got = write({"--accept", "cleared by the physician"});
    EXPECT_EQ(got.code, 0) << got.err.toStdString();
    EXPECT_EQ(files(".pdf").size(), 1);
    ASSERT_GT(waivers().size(), before);
    EXPECT_EQ(waivers().back().note, QStringLiteral("cleared by the physician"));
    EXPECT_EQ(write({}).code, 0) << "accepted for good";
}

TEST_F(StoppedHandOut, ADraftIsWrittenWithTheWordsAndAcceptsNothing)
{
    const size_t before = waivers().size();
    const Run got = write({"--draft"});
    EXPECT_EQ(got.code, 0);
    EXPECT_TRUE(got.err.contains(QStringLiteral("Pain was flagged")));
    EXPECT_EQ(files(".pdf").size(), 1);
    EXPECT_EQ(waivers().size(), before);
}
