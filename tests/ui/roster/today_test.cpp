#include "tests/support/set_clock.h"

#include <QGuiApplication>
#include <QSignalSpy>
#include <gmock/gmock.h>

using ui::Today;

TEST(Today, IsTheDayOfTheClockThatItWasGiven)
{
    SetClock clock(QDate(2026, 3, 4));
    EXPECT_EQ(clock.today.date(), QDate(2026, 3, 4));
    EXPECT_EQ(clock.today.now().date(), QDate(2026, 3, 4));
}

TEST(Today, AnotherDayIsToldOnceForwardOrBack)
{
    SetClock clock(QDate(2026, 3, 4));
    QSignalSpy changed(&clock.today, &Today::changed);
    clock.today.check();
    EXPECT_EQ(changed.count(), 0);
    clock.set(QDate(2026, 3, 5));
    clock.today.check();
    ASSERT_EQ(changed.count(), 1);
    EXPECT_EQ(changed[0][0].toDate(), QDate(2026, 3, 5));
    clock.set(QDate(2026, 2, 1));
    ASSERT_EQ(changed.count(), 2);
    EXPECT_EQ(clock.today.date(), QDate(2026, 2, 1));
}

TEST(Today, StandsUntilTheChangeIsTold)
{
    QDateTime now({2026, 3, 4}, {23, 59, 59});
    Today today([&now] { return now; });
    now = now.addSecs(2);
    EXPECT_EQ(today.date(), QDate(2026, 3, 4)) << "all pages speak of one day";
    EXPECT_EQ(today.now(), now);
}

TEST(Today, AsksTheClockByItselfAndWhenTheWindowIsComeBackTo)
{
    QDateTime now({2026, 3, 4}, {23, 59, 59});
    Today soon([&now] { return now; }, std::chrono::milliseconds(10));
    Today late([&now] { return now; }, std::chrono::hours(1));
    QSignalSpy byItself(&soon, &Today::changed), atReturn(&late, &Today::changed);
    now = now.addSecs(2);
    EXPECT_TRUE(byItself.wait(5000));
    EXPECT_EQ(atReturn.count(), 0);
    Q_EMIT qGuiApp->applicationStateChanged(Qt::ApplicationActive);
    EXPECT_EQ(atReturn.count(), 1);
}
