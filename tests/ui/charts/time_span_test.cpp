#include "ui/charts/time_span.h"

#include <QDate>
#include <QLocale>
#include <gmock/gmock.h>

using namespace ui;

namespace {

const TimeSpan kYear{19000.0, 19365.0};

double day(int year, int month, int dayOfMonth)
{
    return double(QDate(1970, 1, 1).daysTo(QDate(year, month, dayOfMonth)));
}

QStringList labels(const QList<TimeTick> &ticks)
{
    QStringList all;
    for (const TimeTick &tick : ticks)
        all << tick.label;
    return all;
}

} // namespace

TEST(TimeSpan, ZoomKeepsTheAnchorInItsPlace)
{
    const TimeSpan span = zoomed({19100.0, 19200.0}, 0.5, 19125.0, kYear);
    EXPECT_DOUBLE_EQ(span.days(), 50.0);
    EXPECT_DOUBLE_EQ((19125.0 - span.from) / span.days(), 0.25);
}

TEST(TimeSpan, ZoomStopsAtTwoWeeksAndAtTheBounds)
{
    EXPECT_DOUBLE_EQ(zoomed({19100.0, 19120.0}, 0.1, 19110.0, kYear).days(), kShortestSpan);
    EXPECT_EQ(zoomed({19100.0, 19300.0}, 10.0, 19110.0, kYear), kYear);
}

TEST(TimeSpan, PanStopsAtTheBoundsAndKeepsItsLength)
{
    EXPECT_EQ(panned({19010.0, 19110.0}, -50.0, kYear), (TimeSpan{19000.0, 19100.0}));
    EXPECT_EQ(panned({19200.0, 19300.0}, 500.0, kYear), (TimeSpan{19265.0, 19365.0}));
    EXPECT_EQ(panned({19100.0, 19200.0}, 20.0, kYear), (TimeSpan{19120.0, 19220.0}));
}

TEST(TimeSpan, LastDaysOfAShortLogAreAllOfIt)
{
    EXPECT_EQ(lastDays(56.0, kYear), (TimeSpan{19309.0, 19365.0}));
    EXPECT_EQ(lastDays(3650.0, kYear), kYear);
    const TimeSpan threeDays{19000.0, 19003.0};
    EXPECT_EQ(lastDays(56.0, threeDays), threeDays);
}

TEST(TimeTicks, StandOnMondaysForWeeks)
{
    QLocale::setDefault(QLocale::c());
    const QList<TimeTick> ticks = timeTicks({day(2026, 3, 1), day(2026, 3, 31)}, 8);
    EXPECT_EQ(labels(ticks), (QStringList{"2 Mar", "9 Mar", "16 Mar", "23 Mar", "30 Mar"}));
    for (const TimeTick &tick : ticks)
        EXPECT_EQ(QDate(1970, 1, 1).addDays(qint64(tick.day)).dayOfWeek(), Qt::Monday);
}

TEST(TimeTicks, StandOnFirstsOfMonthsForAYear)
{
    QLocale::setDefault(QLocale::c());
    EXPECT_EQ(labels(timeTicks({day(2025, 11, 15), day(2026, 11, 14)}, 6)),
        (QStringList{"Jan 2026", "Mar 2026", "May 2026", "Jul 2026", "Sep 2026", "Nov 2026"}));
}

TEST(TimeTicks, StandStillWhileTheSpanMoves)
{
    const QList<TimeTick> before = timeTicks({19100.0, 19160.0}, 5);
    const QList<TimeTick> after = timeTicks({19101.0, 19161.0}, 5);
    ASSERT_GE(before.size(), 3);
    EXPECT_EQ(before.last().day, after.last().day);
}

TEST(TimeTicks, NeverExceedTheMostAndNeverRepeatALabel)
{
    for (double days = 14.0; days < 15000.0; days *= 1.3)
        for (const int most : {1, 3, 8, 14}) {
            const QList<TimeTick> ticks = timeTicks({18000.3, 18000.3 + days}, most);
            EXPECT_LE(ticks.size(), most) << days;
            QStringList unique = labels(ticks);
            unique.removeDuplicates();
            EXPECT_EQ(unique.size(), ticks.size()) << days;
        }
}
