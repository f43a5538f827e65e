#include "tests/core/storage/roster_fixture.h"

#include "core/csv/catalogue_csv.h"
#include "core/storage/database.h"

#include <QDir>
#include <QProcess>
#include <QSet>
#include <unistd.h>

using namespace core;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

class RosterFileTest : public RosterFixture
{
protected:
    void write(const QByteArray &bytes) const
    {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }
    void changeByte(qint64 at, char to) const
    {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        file.seek(at);
        file.write(&to, 1);
    }
    /// The words of open(), and that they left everything as it was.
    [[nodiscard]] QString refusal() const
    {
        const auto before = bytesOfFolder();
        const QString words = wordsOf([this] { (void)RosterFile::open(path, kNow); });
        EXPECT_EQ(bytesOfFolder(), before);
        return words;
    }
};

} // namespace

TEST_F(RosterFileTest, ANewOneHoldsTheCatalogueAndNobody)
{
    const RosterFile file = RosterFile::create(path);
    EXPECT_EQ(file.path(), path);
    EXPECT_EQ(file.variations(), builtInCatalogue());
    EXPECT_THAT(file.lifters(), IsEmpty());
    EXPECT_THAT(file.sessions(), IsEmpty());
}

TEST_F(RosterFileTest, KeepsEveryFieldOverClosing)
{
    Lifter lifter;
    Card card;
    LoggedSession session;
    Variation variation;
    {
        RosterFile file = RosterFile::create(path);
        lifter = lifterNamed(file, QStringLiteral("Zoë Ωmega"));
        lifter.sex = Sex::female;
        lifter.birthYear = 1999;
        lifter.bodyweightKg = 63.35;
        lifter.unit = Unit::pound;
        lifter.touchStyle = TouchStyle::sinking;
        lifter.gripNote = QStringLiteral("rings on the marks; it's \"wide\"");
        lifter.gear = usualGear(Unit::pound);
        lifter.gear.collarsKg = 5.0;
        lifter.groups = QStringList{QStringLiteral("juniors"), QStringLiteral("team")};
        lifter.meetDate = QDate(2027, 2, 28);
        lifter.notes = QStringLiteral("two\nlines");
        lifter.archived = true;
        card = cardOn(file, lifter.id, QDate(2026, 11, 25), 0);
        card.note = QStringLiteral("no grind");
        session = sessionOn(file, lifter.id, QDate(2026, 11, 24));
        session.number = 2;
        session.readiness = 4;
        session.sets.push_back(
            {{2}, 112.5, 3, 0, 10.0, true, 0.13, 5, QStringLiteral("sank"), LeadReps{{3}, 1}});
        session.sets.push_back({{3}, 1.0 / 3.0, 1, 1, 6.5, false, {}, 1, {}, {}});
        variation = builtInCatalogue().front();
        variation.id = file.newId<Variation>();
        variation.code = QStringLiteral("mine");
        variation.competition = false;
        variation.serves = Serves::soft;
        variation.stance = QStringLiteral("odd");
        variation.tempo = {6, 3, 1};
        variation.fatigue = Fatigue::high;
        variation.retired = true;
        Edit edit;
        edit.lifters.after = {lifter};
        edit.cards.after = {card};
        edit.sessions.after = {session};
        edit.variations.after = {variation};
        file.apply(edit);
    }
    const RosterFile file = RosterFile::open(path, kNow);
    EXPECT_THAT(file.lifters(), ElementsAre(lifter));
    EXPECT_THAT(file.cards(lifter.id, card.day, card.day), ElementsAre(card));
    EXPECT_THAT(file.sessions(), ElementsAre(session));
    EXPECT_EQ(file.variations().back(), variation);
}

TEST_F(RosterFileTest, GivesRowsInTheOrderPromised)
{
    RosterFile file = RosterFile::create(path);
    const Lifter bea = lifterNamed(file, QStringLiteral("bea"));
    const Lifter ann = lifterNamed(file, QStringLiteral("Ann"));
    const QDate monday(2026, 11, 23);
    const QDate tuesday = monday.addDays(1);
    Edit edit;
    edit.lifters.after = {bea, ann};
    const Card late = cardOn(file, bea.id, tuesday, 0);
    const Card second = cardOn(file, bea.id, monday, 1);
    const Card first = cardOn(file, bea.id, monday, 0);
    edit.cards.after = {late, second, first, cardOn(file, ann.id, monday, 0)};
    LoggedSession evening = sessionOn(file, bea.id, monday);
    evening.number = 2;
    const LoggedSession morning = sessionOn(file, bea.id, monday);
    const LoggedSession other = sessionOn(file, ann.id, monday.addYears(-1));
    LoggedSession withoutSets = sessionOn(file, bea.id, tuesday);
    withoutSets.sets.clear();
    edit.sessions.after = {withoutSets, evening, other, morning};
    file.apply(edit);

    EXPECT_THAT(file.lifters(), ElementsAre(ann, bea));
    EXPECT_THAT(file.cards(bea.id, monday, tuesday), ElementsAre(first, second, late));
    EXPECT_THAT(file.cards(bea.id, tuesday, tuesday), ElementsAre(late));
    EXPECT_THAT(file.sessions(bea.id), ElementsAre(morning, evening, withoutSets));
    EXPECT_THAT(file.sessions(), ElementsAre(morning, evening, withoutSets, other));
}

TEST_F(RosterFileTest, NeverGivesAnIdOutTwice)
{
    RosterFile file = RosterFile::create(path);
    QSet<VariationId> ids;
    for (const Variation &v : file.variations())
        ids << v.id;
    for (int i = 0; i < 100; ++i) {
        const auto id = file.newId<Variation>();
        EXPECT_FALSE(ids.contains(id));
        ids << id;
    }
}

TEST_F(RosterFileTest, CreateNeverWritesOverAFile)
{
    write("something dear");
    const auto before = bytesOfFolder();
    EXPECT_THAT(wordsOf([this] { (void)RosterFile::create(path); }), Says("already"));
    EXPECT_EQ(bytesOfFolder(), before);
}

TEST_F(RosterFileTest, CreateLeavesOneFileWhenClosed)
{
    (void)RosterFile::create(path);
    EXPECT_THAT(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden),
        ElementsAre(QStringLiteral("team.benchwright")));
}

TEST_F(RosterFileTest, SaysThatAFileIsNotThere)
{
    EXPECT_THAT(refusal(), Says("There is no file"));
}

TEST_F(RosterFileTest, SaysThatAFolderIsNoRoster)
{
    ASSERT_TRUE(QDir(folder.path()).mkdir(path));
    EXPECT_THAT(refusal(), Says("is not a file"));
}

TEST_F(RosterFileTest, RefusesOtherPeoplesFiles)
{
    write("lifter,date,variation,load_kg\n");
    EXPECT_THAT(refusal(), Says("is not a roster of Benchwright"));
    write("");
    EXPECT_THAT(refusal(), Says("is not a roster of Benchwright"));
}

TEST_F(RosterFileTest, RefusesOtherPeoplesDatabasesInWriteAheadMode)
{
    {
        Database foreign(path, Database::Access::readWrite);
        (void)foreign.value(QStringLiteral("PRAGMA journal_mode = WAL"));
        foreign.run(QStringLiteral("CREATE TABLE bookmark (address TEXT)"));
    }
    EXPECT_THAT(refusal(), Says("is not a roster of Benchwright"));
}

TEST_F(RosterFileTest, RefusesADamagedOne)
{
    (void)RosterFile::create(path);
    // The first bytes of the page that holds the schema's root: its cell pointers.
    for (qint64 at = 4096; at < 4200; ++at)
        changeByte(at, char(0xff));
    EXPECT_THAT(refusal(), Says("damaged"));
}

TEST_F(RosterFileTest, RefusesOneCutShort)
{
    (void)RosterFile::create(path);
    QFile file(path);
    ASSERT_TRUE(file.resize(file.size() / 2));
    EXPECT_THAT(refusal(), Says("damaged"));
    ASSERT_TRUE(file.resize(300));
    EXPECT_THAT(refusal(), Says("damaged"));
    ASSERT_TRUE(file.resize(60));
    EXPECT_THAT(refusal(), Says("is not a roster of Benchwright"));
}

TEST_F(RosterFileTest, RefusesOneOfANewerVersion)
{
    (void)RosterFile::create(path);
    {
        Database db(path, Database::Access::readWrite);
        db.setUserVersion(db.userVersion() + 1);
    }
    EXPECT_THAT(refusal(), Says("newer version"));
}

TEST_F(RosterFileTest, RefusesOneThatMayNotBeWritten)
{
    if (::geteuid() == 0)
        GTEST_SKIP() << "root may write everything";
    (void)RosterFile::create(path);
    ASSERT_TRUE(QFile::setPermissions(path, QFile::ReadOwner));
    EXPECT_THAT(refusal(), Says("read-only"));
}

TEST_F(RosterFileTest, IsHeldByOneWindow)
{
    {
        const RosterFile file = RosterFile::create(path);
        EXPECT_THAT(refusal(), Says("open in another window"));
        const QString link = folder.filePath(QStringLiteral("link.benchwright"));
        ASSERT_TRUE(QFile::link(path, link));
        EXPECT_THAT(
            wordsOf([&] { (void)RosterFile::open(link, kNow); }), Says("open in another window"));
    }
    EXPECT_NO_THROW((void)RosterFile::open(path, kNow)) << "closed, so free again";
}

TEST_F(RosterFileTest, IsFreeAgainWhenMovedFromAndDropped)
{
    RosterFile file = RosterFile::create(path);
    file = RosterFile::create(folder.filePath(QStringLiteral("other.benchwright")));
    EXPECT_NO_THROW((void)RosterFile::open(path, kNow));
}

TEST_F(RosterFileTest, TakesOverTheLockOfAProgramThatDied)
{
    (void)RosterFile::create(path);
    // A process that has ended, and whose number is free again with near certainty.
    QProcess gone;
    gone.start(QStringLiteral("true"), QStringList());
    const qint64 number = gone.processId();
    ASSERT_TRUE(gone.waitForFinished());
    QFile lock(folder.filePath(QStringLiteral(".team.benchwright.lock")));
    ASSERT_TRUE(lock.open(QIODevice::WriteOnly));
    // Process, program, host: the form of QLockFile, which only trusts a lock of this host.
    lock.write(QByteArray::number(number) + "\nstorage_test\n"
        + QSysInfo::machineHostName().toUtf8() + "\n\n\n");
    lock.close();
    EXPECT_NO_THROW((void)RosterFile::open(path, kNow));
}
