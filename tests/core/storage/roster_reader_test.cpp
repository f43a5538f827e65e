#include "core/storage/roster_reader.h"

#include "tests/core/storage/roster_fixture.h"

using namespace core;

namespace {

class RosterReaderTest : public RosterFixture
{
protected:
    RosterReaderTest()
    {
        lifter = lifterNamed(file, QStringLiteral("Ada"));
        Edit edit;
        edit.lifters.after = {lifter};
        file.apply(edit);
        log(QDate(2026, 3, 2));
    }

    void log(QDate day)
    {
        Edit edit;
        edit.sessions.after = {sessionOn(file, lifter.id, day)};
        file.apply(edit);
    }

    RosterFile file = RosterFile::create(path);
    Lifter lifter;
};

} // namespace

TEST_F(RosterReaderTest, ReadsWhatTheOpenRosterHas)
{
    EXPECT_EQ(RosterReader(path).sessions(), file.sessions());
    EXPECT_EQ(RosterReader(path).sessions(lifter.id), file.sessions(lifter.id));
    EXPECT_EQ(RosterReader(path).checkIns(), file.checkIns());
}

TEST_F(RosterReaderTest, AllThatAReaderGivesIsOfOneMoment)
{
    RosterReader reader(path);
    const auto before = reader.sessions();
    log(QDate(2026, 3, 4));
    EXPECT_EQ(reader.sessions(), before);
    EXPECT_EQ(RosterReader(path).sessions().size(), before.size() + 1);
}

TEST_F(RosterReaderTest, AFileThatIsNotThereIsToldAndNotMade)
{
    const QString missing = folder.filePath(QStringLiteral("missing.benchwright"));
    EXPECT_THAT(wordsOf([&] { (void)RosterReader(missing).sessions(); }), Says("cannot be opened"));
    EXPECT_FALSE(QFile::exists(missing));
}
