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

TEST_F(RosterReaderTest, TheCheckInsForSomeDaysAreTheirsAndThePainsThatStandBefore)
{
    const Lifter other = lifterNamed(file, QStringLiteral("Bo"));
    Edit edit;
    edit.lifters.after = {other};
    const auto say = [&](LifterId who, int day, bool hurts, bool isPainFree) {
        CheckIn checkIn;
        checkIn.id = file.newId<CheckIn>();
        checkIn.lifter = who;
        checkIn.day = QDate(2026, 3, 2).addDays(day);
        checkIn.sleep = 3;
        if (hurts)
            checkIn.pain = PainFlag{BodyArea::wrists, {}};
        checkIn.isPainFree = isPainFree;
        edit.checkIns.after.push_back(checkIn);
    };
    say(lifter.id, -200, true, false); // answered below
    say(lifter.id, -100, false, true);
    say(lifter.id, -50, true, false); // stands
    say(lifter.id, -10, false, false);
    say(lifter.id, 2, false, true);
    say(other.id, -60, true, false); // stands: the other's answers are no concern of it
    say(other.id, 7, false, true);
    file.apply(edit);
    const QDate monday(2026, 3, 2);
    std::vector<std::pair<LifterId, int>> read;
    for (const CheckIn &checkIn : file.checkInsFor(monday, monday.addDays(6)))
        read.emplace_back(checkIn.lifter, int(monday.daysTo(checkIn.day)));
    EXPECT_THAT(read,
        testing::ElementsAre(
            std::pair(lifter.id, -50), std::pair(lifter.id, 2), std::pair(other.id, -60)));
    EXPECT_EQ(file.readers()()->checkInsFor(monday, monday).size(), 2u);
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
