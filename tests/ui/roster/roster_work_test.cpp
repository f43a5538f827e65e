#include "ui/roster/roster_work.h"

#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"

#include <QSemaphore>
#include <QSignalSpy>
#include <QTest>
#include <gmock/gmock.h>
#include <thread>

using testing::ElementsAre;
using testing::IsEmpty;
using ui::OpenRoster;
using ui::RosterWork;

namespace {

class RosterWorkTest : public testing::Test
{
protected:
    /// Work that only a stop can end.
    auto endless()
    {
        return [this](const core::RosterReader &, const core::Watch &watch) {
            m_begun.release();
            while (watch.goesOn(0.5))
                std::this_thread::yield();
            return -1;
        };
    }
    void waitUntilItRuns() { m_begun.acquire(); }

    PrivateFolder folder;
    SetClock clock;
    OpenRoster session{std::make_unique<core::RosterFile>(core::RosterFile::create(
                           folder.path(QStringLiteral("club.benchwright")))),
        clock.today};
    std::vector<std::optional<int>> told;
    RosterWork<int>::Done keep = [this](std::optional<int> result) { told.push_back(result); };

private:
    QSemaphore m_begun;
};

} // namespace

TEST_F(RosterWorkTest, ReadsTheStoredRosterAndTellsHowFarItIs)
{
    RosterWork<int> work(session, keep);
    QSignalSpy progress(&work.progress(), &QFutureWatcherBase::progressValueChanged);
    work.start([](const core::RosterReader &reader, const core::Watch &watch) {
        EXPECT_TRUE(watch.goesOn(0.25));
        return int(reader.variations().size());
    });
    EXPECT_TRUE(work.isRunning());
    ASSERT_TRUE(QTest::qWaitFor([this] { return !told.empty(); }, 10'000));
    EXPECT_THAT(told, ElementsAre(int(session.variations().size())));
    EXPECT_FALSE(work.isRunning());
    ASSERT_FALSE(progress.isEmpty());
    EXPECT_EQ(progress.last().front().toInt(), 25);
}

TEST_F(RosterWorkTest, TheEndOfItEndsTheWorkAndNothingIsTold)
{
    {
        RosterWork<int> work(session, keep);
        work.start(endless());
        waitUntilItRuns();
    } // comes back only because the work was asked to stop
    QCoreApplication::processEvents();
    EXPECT_THAT(told, IsEmpty());
}

TEST_F(RosterWorkTest, NewWorkTakesThePlaceOfWhatRuns)
{
    RosterWork<int> work(session, keep);
    work.start(endless());
    waitUntilItRuns();
    work.start([](const core::RosterReader &, const core::Watch &) { return 2; });
    ASSERT_TRUE(QTest::qWaitFor([this] { return !told.empty(); }, 10'000));
    QCoreApplication::processEvents();
    EXPECT_THAT(told, ElementsAre(2));
}

TEST_F(RosterWorkTest, WorkThatWasDoneButNotToldYetIsNotToldAfterAStop)
{
    RosterWork<int> work(session, keep);
    QSemaphore done;
    work.start([&done](const core::RosterReader &, const core::Watch &) {
        done.release();
        return 3;
    });
    done.acquire();
    work.stop();
    QCoreApplication::processEvents();
    EXPECT_THAT(told, IsEmpty());
}

TEST_F(RosterWorkTest, AfterItWasToldTheNextWorkCanStart)
{
    RosterWork<int> work(session, keep);
    for (const int result : {4, 5}) {
        work.start([result](const core::RosterReader &, const core::Watch &) { return result; });
        ASSERT_TRUE(
            QTest::qWaitFor([&] { return !told.empty() && told.back() == result; }, 10'000));
    }
    EXPECT_THAT(told, ElementsAre(4, 5));
}

TEST_F(RosterWorkTest, WhatIsGivenUpIsNotToldAndTheLastOneOfTheNextBeginsWhenItHasEnded)
{
    RosterWork<int> work(session, keep);
    work.startNext(endless());
    waitUntilItRuns();
    for (const int result : {6, 7})
        work.startNext(
            [result](const core::RosterReader &, const core::Watch &) { return result; });
    ASSERT_TRUE(QTest::qWaitFor([this] { return !told.empty(); }, 10'000));
    work.start(endless());
    waitUntilItRuns();
    work.giveUp();
    ASSERT_TRUE(QTest::qWaitFor([&work] { return !work.isRunning(); }, 10'000));
    QCoreApplication::processEvents();
    EXPECT_THAT(told, ElementsAre(7));
}

TEST_F(RosterWorkTest, WhateverTheWorkThrowsIsToldWithItsText)
{
    RosterWork<int> work(session, keep, QStringLiteral("The log is odd."));
    QString words, detail;
    QObject::connect(
        &session, &OpenRoster::failed, &session, [&](const QString &said, const QString &why) {
            words = said;
            detail = why;
        });
    work.start([](const core::RosterReader &, const core::Watch &) -> int {
        throw std::invalid_argument("a load below zero");
    });
    ASSERT_TRUE(QTest::qWaitFor([&words] { return !words.isEmpty(); }, 10'000));
    EXPECT_THAT(told, ElementsAre(std::nullopt));
    EXPECT_EQ(words, QStringLiteral("The log is odd."));
    EXPECT_EQ(detail, QStringLiteral("a load below zero"));
}

TEST_F(RosterWorkTest, AskedToStopItTellsWhatItHas)
{
    RosterWork<int> work(session, keep);
    work.start(endless());
    waitUntilItRuns();
    work.askToStop();
    ASSERT_TRUE(QTest::qWaitFor([this] { return !told.empty(); }, 10'000));
    EXPECT_THAT(told, ElementsAre(-1));
}

TEST_F(RosterWorkTest, ARosterThatCannotBeReadIsToldAfterTheWorkHasEnded)
{
    RosterWork<int> work(session, keep);
    QString words;
    QObject::connect(&session, &OpenRoster::failed, &session, [&](const QString &said) {
        EXPECT_THAT(told, ElementsAre(std::nullopt));
        words = said;
    });
    work.start([](const core::RosterReader &, const core::Watch &) -> int {
        throw core::StorageError(QStringLiteral("The disk cannot be read."));
    });
    ASSERT_TRUE(QTest::qWaitFor([&words] { return !words.isEmpty(); }, 10'000));
    EXPECT_EQ(words, QStringLiteral("The disk cannot be read."));
}
