#include "app/command_line.h"

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <gmock/gmock.h>

// The commands by a clock that a test sets: in the program itself it is the computer's.

namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

class Clock : public testing::Test
{
protected:
    struct Ran
    {
        int code = -1;
        std::string out, err;
    };

    Ran run(QDate day, std::vector<std::string> arguments)
    {
        for (std::string &argument : arguments)
            if (argument.starts_with('/'))
                argument = m_folder.path().toStdString() + argument;
        QBuffer in, out, err;
        in.open(QIODevice::ReadOnly);
        out.open(QIODevice::WriteOnly);
        err.open(QIODevice::WriteOnly);
        app::Console console{in, out, err};
        const app::Request request = app::parseCommandLine(
            std::move(arguments), [day] { return QDateTime(day, QTime(12, 0)); });
        const int code = app::runRequest(request, console);
        return {code, out.data().toStdString(), err.data().toStdString()};
    }
    /// A roster of two weeks of sets, the last one of 12 March 2026.
    void makeRoster()
    {
        QByteArray log = "lifter,date,variation,load_kg,reps_planned,reps_done,rpe,failed\n";
        for (const char *day : {"2026-03-02", "2026-03-05", "2026-03-09", "2026-03-12"})
            log += QByteArray("Ada,") + day + ",comp,100,3,3,8,0\n";
        write(QStringLiteral("log.csv"), log);
        write(QStringLiteral("people.csv"), "lifter,sex,bodyweight_kg\nAda,f,62\n");
        const Ran made = run(kMarch, {"import", "/r.benchwright", "--create", "--log", "/log.csv"});
        ASSERT_EQ(made.code, 0) << made.err;
        EXPECT_THAT(made.err, IsEmpty());
    }

    QString path(const QString &name) const { return m_folder.filePath(name); }
    void write(const QString &name, const QByteArray &contents) const
    {
        QFile file(path(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(contents), contents.size());
    }

    const QDate kMarch{2026, 3, 12};
    const QDate kSetBack{2026, 1, 5};

private:
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(Clock, OneThatIsBehindTheNewestSetIsPointedOut)
{
    makeRoster();
    const auto said = HasSubstr("This computer's clock says 5 January 2026, but the newest set is "
                                "of 12 March 2026.");
    for (const std::vector<std::string> &command :
        {std::vector<std::string>{"check", "/r.benchwright"},
            {"picture", "/r.benchwright", "--out", "/r.png"},
            {"import", "/r.benchwright", "--people", "/people.csv", "--dry-run"}}) {
        EXPECT_THAT(run(kMarch, command).err, Not(said)) << command.front();
        EXPECT_THAT(run(kSetBack, command).err, said) << command.front();
    }
}

TEST_F(Clock, WithADayAskedForItCountsForNothing)
{
    makeRoster();
    const std::vector<std::string> check{"check", "/r.benchwright", "--as-of", "2026-03-10"};
    const Ran then = run(kMarch, check);
    EXPECT_EQ(then.code, 0);
    EXPECT_THAT(then.out, HasSubstr("3 sessions"));
    for (const QDate day : {kSetBack, QDate(2031, 7, 7)}) {
        const Ran ran = run(day, check);
        EXPECT_EQ(ran.out, then.out);
        EXPECT_THAT(ran.err, IsEmpty());
    }
}

TEST_F(Clock, EstimateAndScoreDoNotFollowIt)
{
    makeRoster();
    for (const std::vector<std::string> &command :
        {std::vector<std::string>{"estimate", "--log", "/log.csv", "--out", "-"},
            {"score", "--log", "/log.csv"}}) {
        const Ran then = run(kMarch, command);
        EXPECT_EQ(then.code, 0) << then.err;
        EXPECT_THAT(then.out, Not(IsEmpty()));
        EXPECT_EQ(run(QDate(2031, 7, 7), command).out, then.out);
    }
}

TEST_F(Clock, ASetOfADayThatHasNotComeIsAProblem)
{
    makeRoster();
    EXPECT_EQ(run(QDate(2026, 3, 11), {"check", "/log.csv"}).code, 0) << "today somewhere";
    const Ran early = run(QDate(2026, 3, 10), {"check", "/log.csv"});
    EXPECT_EQ(early.code, 1);
    EXPECT_THAT(early.err, HasSubstr("2026-03-12 has not come yet"));
    EXPECT_EQ(run(QDate(2026, 3, 10), {"check", "/log.csv", "--as-of", "2026-03-12"}).code, 0);
}

TEST_F(Clock, HandOutsAreOfItsWeek)
{
    makeRoster();
    EXPECT_THAT(run(kMarch, {"handout", "/r.benchwright", "--out", "/out"}).err,
        HasSubstr("Nothing is planned in the week of 2026-03-09"));
    EXPECT_THAT(
        run(kMarch, {"handout", "/r.benchwright", "--out", "/out", "--as-of", "2026-03-08"}).err,
        HasSubstr("Nothing is planned in the week of 2026-03-02"));
}

TEST_F(Clock, TheDayOfABackupIsItsDayWhateverIsAskedFor)
{
    makeRoster();
    EXPECT_EQ(
        run(kMarch, {"import", "/r.benchwright", "--log", "/log.csv", "--as-of", "2026-03-02"})
            .code,
        0);
    const QDir backups(path(QStringLiteral("r backups")));
    EXPECT_EQ(
        backups.entryList(QDir::Files), QStringList{QStringLiteral("2026-03-12.benchwright")});
}
