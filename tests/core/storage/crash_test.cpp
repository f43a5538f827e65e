#include "tests/core/storage/roster_fixture.h"
#include "tests/support/days.h"

#include "core/storage/database.h"

#include <sys/wait.h>
#include <unistd.h>

using namespace core;
using namespace tests;
using testing::SizeIs;

namespace {

class CrashTest : public RosterFixture
{
protected:
    /// Runs `work` in a process that then dies at once: no destructor, nothing flushed.
    template <class Work> void inAProcessThatDies(Work work) const
    {
        const pid_t child = ::fork();
        ASSERT_GE(child, 0);
        if (child == 0) {
            try {
                work();
                ::_exit(0);
            } catch (...) {
                ::_exit(1);
            }
        }
        int status = 0;
        ASSERT_EQ(::waitpid(child, &status, 0), child);
        ASSERT_TRUE(WIFEXITED(status));
        ASSERT_EQ(WEXITSTATUS(status), 0);
    }
};

} // namespace

TEST_F(CrashTest, WhatWasCommittedIsThereAndWhatWasNotIsNot)
{
    (void)RosterFile::create(path);
    inAProcessThatDies([this] {
        auto *file = new RosterFile(RosterFile::open(path, kNow)); // never closed
        for (int i = 0; i < 20; ++i) {
            Edit edit;
            edit.lifters.after = {lifterNamed(*file, QStringLiteral("Lifter %1").arg(i))};
            edit.sessions.after = {sessionOn(*file, edit.lifters.after.front().id, kMonday)};
            file->apply(edit);
        }
        // A second connection stands for the rest of a program that is in the middle of a write.
        auto *db = new Database(path, Database::Access::readWrite);
        new Transaction(*db);
        db->run(QStringLiteral("DELETE FROM set_entry"));
        db->run(QStringLiteral("DELETE FROM session WHERE id > 5"));
    });
    ASSERT_GT(QFileInfo(path + QStringLiteral("-wal")).size(), 0) << "a log left by the crash";

    const RosterFile file = RosterFile::open(path, kNow);
    EXPECT_THAT(file.lifters(), SizeIs(20));
    const std::vector<LoggedSession> sessions = file.sessions();
    EXPECT_THAT(sessions, SizeIs(20));
    for (const LoggedSession &session : sessions)
        EXPECT_THAT(session.sets, SizeIs(2));
}

TEST_F(CrashTest, ATransactionTooLargeForMemoryIsTakenBackToo)
{
    (void)RosterFile::create(path);
    inAProcessThatDies([this] {
        auto *file = new RosterFile(RosterFile::open(path, kNow));
        Edit edit;
        edit.lifters.after = {lifterNamed(*file, QStringLiteral("Ann"))};
        file->apply(edit);
        auto *db = new Database(path, Database::Access::readWrite);
        (void)db->run(QStringLiteral("PRAGMA cache_size = 10")); // spills into the log at once
        new Transaction(*db);
        for (int i = 0; i < 2000; ++i)
            db->run(QStringLiteral("INSERT INTO session (lifter_id, day, number) VALUES (1, ?, 1)"),
                {toVariant(kMonday.addDays(i))});
    });
    const RosterFile file = RosterFile::open(path, kNow);
    EXPECT_THAT(file.lifters(), SizeIs(1));
    EXPECT_THAT(file.sessions(), SizeIs(0));
}

TEST_F(CrashTest, ADamagedFileWithALogIsLeftAsItIs)
{
    (void)RosterFile::create(path);
    inAProcessThatDies([this] {
        auto *file = new RosterFile(RosterFile::open(path, kNow));
        Edit edit;
        edit.lifters.after = {lifterNamed(*file, QStringLiteral("Ann"))};
        file->apply(edit);
    });
    QFile roster(path);
    ASSERT_TRUE(roster.resize(4096 * 2));
    QFile::remove(
        folder.filePath(QStringLiteral(".team.benchwright.lock"))); // taken over when opened
    const auto before = bytesOfFolder();
    EXPECT_THAT(wordsOf([this] { (void)RosterFile::open(path, kNow); }), Says("damaged"));
    EXPECT_EQ(bytesOfFolder(), before);
}

TEST_F(CrashTest, AHalfMadeRosterIsNoRosterAndIsNotWorkedOnWith)
{
    for (const char *suffix : {".part", ".part-journal"}) {
        QFile part(path + QLatin1String(suffix));
        ASSERT_TRUE(part.open(QIODevice::WriteOnly));
        part.write("half");
    }
    EXPECT_NO_THROW((void)RosterFile::create(path));
    EXPECT_THAT(bytesOfFolder(), SizeIs(1));
}

TEST_F(CrashTest, TheLogOfARosterThatWasRemovedIsNotWorkedIntoANewOne)
{
    (void)RosterFile::create(path);
    inAProcessThatDies([this] {
        auto *file = new RosterFile(RosterFile::open(path, kNow));
        Edit edit;
        edit.lifters.after = {lifterNamed(*file, QStringLiteral("Ann"))};
        file->apply(edit);
    });
    ASSERT_TRUE(QFile::remove(path));
    const auto before = bytesOfFolder();
    EXPECT_THAT(
        wordsOf([this] { (void)RosterFile::create(path); }), Says("remains of an earlier roster"));
    EXPECT_EQ(bytesOfFolder(), before);
}
