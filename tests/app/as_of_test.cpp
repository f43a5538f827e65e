#include "tests/app/program.h"

#include "core/storage/roster_file.h"

#include <QImage>
#include <QRegularExpression>

// As of a day, every command answers what it would have answered had nothing later happened. The
// logs and rosters of these tests hold later sets, and beside each stands one that is cut off.

namespace {

const QDate kThen(2026, 3, 11); ///< a week before the day that the demo rosters are of
const QString kAsOf = kThen.toString(Qt::ISODate);
const QString kWeek = QStringLiteral("2026-03-16"); ///< planned in the demo

} // namespace

class AsOf : public Program
{
protected:
    /// Makes d/demo.benchwright, its log, and the same cut off after kThen: cut/demo.benchwright
    /// and cut.csv.
    void makeDemo()
    {
        ASSERT_EQ(run({"demo", "d", "--as-of", kDay}).code, 0);
        ASSERT_TRUE(QDir(path("")).mkpath(QStringLiteral("cut")));
        ASSERT_TRUE(QFile::copy(path("d/demo.benchwright"), path("cut/demo.benchwright")));
        core::RosterFile roster =
            core::RosterFile::open(path("cut/demo.benchwright"), QDateTime(kThen, QTime(12, 0)));
        core::Edit edit;
        for (const core::LoggedSession &session : roster.sessions())
            if (session.day > kThen)
                edit.sessions.before.push_back(session);
        for (const core::CheckIn &checkIn : roster.checkIns())
            if (checkIn.day > kThen)
                edit.checkIns.before.push_back(checkIn);
        ASSERT_FALSE(edit.sessions.before.empty());
        ASSERT_FALSE(edit.checkIns.before.empty());
        roster.apply(edit);
        const QString log = QString::fromUtf8(read("d/log.csv"));
        QStringList kept;
        for (const QString &line : log.split(QStringLiteral("\r\n")))
            if (line.split(u',').value(1) <= kAsOf || line.startsWith(QStringLiteral("lifter,")))
                kept << line;
        write("cut.csv", kept.join(QStringLiteral("\r\n")).toUtf8());
        ASSERT_LT(read("cut.csv").size(), log.size());
    }

    /// What all files of a folder say; of a PDF what it draws, which are its streams: around them
    /// stand the moment it was made at and its fonts, in another order each time.
    QByteArray contentsOf(const QString &folder) const
    {
        static const QRegularExpression kStream(QStringLiteral("\\bstream\\r?\\n(.*?)endstream"),
            QRegularExpression::DotMatchesEverythingOption);
        QByteArray all;
        for (const QString &name : QDir(path(folder)).entryList(QDir::Files, QDir::Name)) {
            const QByteArray bytes = read(folder + u'/' + name);
            all += name.toUtf8();
            if (!name.endsWith(QStringLiteral(".pdf"))) {
                all += bytes;
                continue;
            }
            QStringList streams;
            for (const auto &match : kStream.globalMatch(QString::fromLatin1(bytes)))
                streams << match.captured(1);
            EXPECT_FALSE(streams.isEmpty());
            streams.sort();
            all += streams.join(u'\n').toLatin1();
        }
        EXPECT_FALSE(all.isEmpty()) << folder.toStdString();
        return all;
    }

    /// Runs the command that writes into a folder, and gives what it has written.
    QByteArray written(QStringList arguments, const QString &folder)
    {
        const Run got = run(arguments << QStringLiteral("--out") << folder);
        EXPECT_EQ(got.code, 0) << got.err.toStdString();
        return contentsOf(folder);
    }

    QString out(const QStringList &arguments)
    {
        const Run got = run(arguments);
        EXPECT_EQ(got.code, 0) << got.err.toStdString();
        return got.out;
    }
};

TEST_F(AsOf, IsInTheHelpOfEveryCommandThatFollowsTheClock)
{
    for (const char *command :
        {"estimate", "import", "print", "handout", "return", "check", "score", "demo", "picture"})
        EXPECT_TRUE(run({command, "--help"}).out.contains(QStringLiteral("--as-of"))) << command;
    EXPECT_TRUE(run({"estimate", "--help"})
                    .out.simplified()
                    .contains(QStringLiteral("last day of the log")));
    EXPECT_FALSE(run({"export", "--help"}).out.contains(QStringLiteral("--as-of")));
    const Run wrong = run({"check", "x", "--as-of", "31.3.2026"});
    EXPECT_EQ(wrong.code, 2);
    EXPECT_TRUE(wrong.err.contains(QStringLiteral("31.3.2026 is not a day such as 2026-03-31")));
}

TEST_F(AsOf, EstimateAndScoreSeeNoLaterSet)
{
    makeDemo();
    for (const char *command : {"estimate", "score"}) {
        QStringList whole{command, "--log", "d/log.csv"}, cut{command, "--log", "cut.csv"};
        if (whole.front() == QStringLiteral("estimate")) {
            whole << QStringLiteral("--out") << QStringLiteral("-");
            cut << QStringLiteral("--out") << QStringLiteral("-");
        }
        const QString then = out(whole + QStringList{"--as-of", kAsOf});
        EXPECT_EQ(then, out(cut + QStringList{"--as-of", kAsOf})) << command;
        EXPECT_NE(then, out(whole)) << command;
    }
}

TEST_F(AsOf, EstimateStandsOnTheLastDayOfTheLogAndCarriesItOnWhenAskedTo)
{
    write("log.csv", kSoundLog);
    const QStringList estimate{"estimate", "--log", "log.csv", "--out", "-"};
    const QString last = out(estimate);
    EXPECT_EQ(last, out(estimate + QStringList{"--as-of", "2026-04-06"}));
    const QString later = out(estimate + QStringList{"--as-of", "2028-01-05"});
    // One line more in each view of each lifter: the last Sunday up to that day.
    EXPECT_EQ(later.count(u'\n'), last.count(u'\n') + 4);
    const auto band = [&later](const QString &begin) {
        const qsizetype at = later.indexOf(begin);
        return later.mid(at, later.indexOf(u'\r', at) - at).split(u',').mid(3);
    };
    const QStringList then = band(QStringLiteral("Ada,2026-04-12,filtered"));
    const QStringList now = band(QStringLiteral("Ada,2028-01-02,filtered"));
    ASSERT_EQ(now.size(), 3) << later.toStdString();
    EXPECT_LT(now[0].toDouble(), then[0].toDouble()) << "a layoff shows";
    EXPECT_GT(now[2].toDouble() / now[1].toDouble(), then[2].toDouble() / then[1].toDouble());
}

TEST_F(AsOf, ALaterSetCannotBeWrong)
{
    write("log.csv", kSoundLog + "Ada,2062-01-01,comp,100,5,5,8,0\n");
    Run got = run({"estimate", "--log", "log.csv", "--out", "-"});
    EXPECT_EQ(got.code, 1);
    EXPECT_TRUE(got.err.contains(QStringLiteral("2062-01-01 has not come yet")));
    got = run({"estimate", "--log", "log.csv", "--out", "-", "--as-of", "2026-04-06"});
    EXPECT_EQ(got.code, 0) << got.err.toStdString();
    write("sound.csv", kSoundLog);
    EXPECT_EQ(got.out, out({"estimate", "--log", "sound.csv", "--out", "-"}));
}

TEST_F(AsOf, CheckCountsNoLaterSetOrSession)
{
    write("log.csv", kSoundLog);
    EXPECT_TRUE(out({"check", "log.csv"}).contains(QStringLiteral("4 sets")));
    EXPECT_TRUE(out({"check", "log.csv", "--as-of", "2026-03-30"})
                    .contains(QStringLiteral("2 sets from 2026-03-30 to 2026-03-30")));
    makeDemo();
    const QString whole = out({"check", "d/demo.benchwright"});
    const QString then = out({"check", "d/demo.benchwright", "--as-of", kAsOf});
    EXPECT_NE(whole, then);
    EXPECT_EQ(then.section(u':', 1), out({"check", "cut/demo.benchwright"}).section(u':', 1));
}

TEST_F(AsOf, ImportTakesNoLaterSet)
{
    write("log.csv", kSoundLog);
    out({"import", "r.benchwright", "--create", "--log", "log.csv", "--as-of", "2026-03-31"});
    const QString log = out({"export", "r.benchwright", "--log", "-"});
    EXPECT_EQ(log.count(u'\n'), 1 + 3);
    EXPECT_FALSE(log.contains(QStringLiteral("2026-04-06")));
    out({"import", "r.benchwright", "--log", "log.csv"});
    EXPECT_EQ(out({"export", "r.benchwright", "--log", "-"}).count(u'\n'), 1 + 4);
}

TEST_F(AsOf, TheDemoOfADayIsAlwaysTheSame)
{
    out({"demo", "a", "--as-of", kAsOf});
    out({"demo", "b", "--as-of", kAsOf});
    EXPECT_EQ(read("a/log.csv"), read("b/log.csv"));
    out({"demo", "c"});
    EXPECT_NE(read("a/log.csv"), read("c/log.csv"));
}

TEST_F(AsOf, HandOutsAndPrintsKnowNoLaterSet)
{
    makeDemo();
    for (const char *command : {"handout", "print"}) {
        const QString name = QString::fromLatin1(command);
        const QStringList whole{name, "d/demo.benchwright", "--week", kWeek, "--draft"};
        const QStringList cut{name, "cut/demo.benchwright", "--week", kWeek, "--draft"};
        const QByteArray then = written(whole + QStringList{"--as-of", kAsOf}, name + u'1');
        EXPECT_EQ(then, written(cut + QStringList{"--as-of", kAsOf}, name + u'2'));
        EXPECT_NE(then, written(whole + QStringList{"--as-of", kDay}, name + u'3'));
        EXPECT_NE(then, written(whole, name + u'4')) << "today they have long been idle";
    }
}

namespace {

/// Every load of hand-out pages, in their order.
QStringList loadsOf(const QByteArray &pages)
{
    static const QRegularExpression kLoad(QStringLiteral("\"loadKg\":([0-9.]+)"));
    QStringList loads;
    for (const auto &match : kLoad.globalMatch(QString::fromUtf8(pages)))
        loads << match.captured(1);
    return loads;
}

} // namespace

TEST_F(AsOf, WhatAHandOutGaveStaysThoughLaterSetsAreKnown)
{
    makeDemo();
    const QStringList later{"handout", "d/demo.benchwright", "--week", kWeek, "--as-of", kDay,
        QStringLiteral("--draft")};
    const QStringList byEstimate = loadsOf(written(later, "a"));
    const QStringList given =
        loadsOf(written({"handout", "d/demo.benchwright", "--week", kWeek, "--as-of", kAsOf,
                            "--accept", "what the checks stop is not what this is about"},
            "b"));
    ASSERT_FALSE(given.isEmpty());
    EXPECT_NE(byEstimate, given);
    EXPECT_EQ(loadsOf(written(later, "c")), given);
}

TEST_F(AsOf, NothingIsGivenWhileAWindowHasTheRosterOpen)
{
    makeDemo();
    const QStringList print{"print", "d/demo.benchwright", "--as-of", kDay, "--out", "plans"};
    const core::RosterFile open =
        core::RosterFile::open(path("d/demo.benchwright"), QDateTime(kThen, QTime(12, 0)));
    const Run refused = run(print);
    EXPECT_EQ(refused.code, 3);
    EXPECT_TRUE(refused.err.contains(QStringLiteral("open in another window")));
    EXPECT_FALSE(QDir(path("plans")).exists());
    EXPECT_EQ(run(print + QStringList{"--draft"}).code, 0);
}

TEST_F(AsOf, TheWeekOfTheDayIsThisWeek)
{
    makeDemo();
    EXPECT_EQ(
        written({"handout", "d/demo.benchwright", "--as-of", kDay, "--calendar", "--draft"}, "a"),
        written({"handout", "d/demo.benchwright", "--as-of", kDay, "--calendar", "--week", kWeek,
                    "--draft"},
            "b"))
        << "the stamp of the calendar too";
    const Run today = run({"handout", "d/demo.benchwright", "--out", "c"});
    EXPECT_EQ(today.code, 1);
    EXPECT_TRUE(today.err.contains(QStringLiteral("Nothing is planned in the week of")));
}

TEST_F(AsOf, APictureShowsNoLaterSet)
{
    makeDemo();
    const auto picture = [this](const QStringList &arguments) {
        const QString name = QStringLiteral("picture.png");
        const Run got =
            run(QStringList{"picture"} + arguments + QStringList{"--out", name, "--page", "3"});
        EXPECT_EQ(got.code, 0) << got.err.toStdString();
        QImage image;
        EXPECT_TRUE(image.loadFromData(read(name)));
        return image;
    };
    const QImage then = picture({"d/demo.benchwright", "--as-of", kAsOf});
    EXPECT_EQ(then, picture({"cut/demo.benchwright", "--as-of", kAsOf}));
    EXPECT_NE(then, picture({"d/demo.benchwright", "--as-of", kDay}));
    EXPECT_NE(then, picture({"d/demo.benchwright"}));
}
