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
    EXPECT_EQ(file.readers()()->sessions(), file.sessions());
    EXPECT_EQ(file.readers()()->sessions(lifter.id), file.sessions(lifter.id));
    EXPECT_EQ(file.readers()()->checkIns(), file.checkIns());
}

TEST_F(RosterReaderTest, AllThatAReaderGivesIsOfOneMoment)
{
    const auto reader = file.readers()();
    const auto before = reader->sessions();
    log(QDate(2026, 3, 4));
    EXPECT_EQ(reader->sessions(), before);
    EXPECT_EQ(file.readers()()->sessions().size(), before.size() + 1);
}

TEST_F(RosterReaderTest, AFileThatIsNotThereIsToldAndNotMade)
{
    const auto readers = file.readers();
    QFile::remove(path);
    EXPECT_THAT(wordsOf([&] { (void)readers()->sessions(); }), Says("cannot be opened"));
    EXPECT_FALSE(QFile::exists(path));
}
