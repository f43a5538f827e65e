#include "tests/ui/review/sample_season.h"
#include "ui/review/strength_chart.h"
#include "ui/review/work_chart.h"

#include <QTest>
#include <QValueAxis>
#include <QWheelEvent>
#include <gmock/gmock.h>

using namespace ui;
using testing::HasSubstr;

namespace {

const QDate kSeasonEnd(2026, 5, 10);

/// Both charts over one window, a year of log.
class Charts : public testing::Test
{
protected:
    Charts()
    {
        QLocale::setDefault(QLocale::c());
        content.series =
            strengthSeries(season.lift, sample::catalogue(), Knowledge::now, core::Unit::kilogram);
        content.sessions = season.lift.readings;
        content.variations = sample::catalogue();
        const double end = core::engineDay(kSeasonEnd);
        window.setBounds({end - 364.0, end + 4.0});
        window.showAll();
        strength.setContent(content);
        work.setContent(core::weekLoads(season.sessions, sample::catalogue(), core::Lift::bench),
            core::Unit::kilogram);
        strength.setGeometry(0, 0, 900, 300);
        work.setGeometry(0, 300, 900, 300);
        page.resize(900, 600);
        page.show();
    }

    /// Where a day is on the screen.
    double xOf(double day) const
    {
        const QRectF plot = strength.plotArea();
        return plot.left() + (day - window.span().from) / window.span().days() * plot.width();
    }

    double lowestTick() const
    {
        return qobject_cast<QValueAxis *>(strength.chart()->axes(Qt::Vertical).front())->min();
    }

    const sample::Season season = sample::season(kSeasonEnd, 52, 120.0, 0.5);
    StrengthContent content;
    TimeWindow window;
    QWidget page;
    StrengthChart strength{window, &page};
    WorkChart work{window, &page};
};

/// As a hand does: the pointer enters first, then comes to rest.
void hover(TimeChart &chart, const QPoint &at)
{
    QTest::mouseMove(chart.viewport(), at - QPoint(3, 3));
    QTest::mouseMove(chart.viewport(), at);
}

std::string shown(const TimeChart &chart)
{
    return chart.shownValues().toStdString();
}

} // namespace

TEST_F(Charts, AWarmUpDoesNotStretchTheAxisAndIsSeenAtItsEdge)
{
    const double before = lowestTick();
    ASSERT_GT(before, 60.0);
    ReadingPoint warmUp = content.series.readings.back();
    warmUp.value = 60.0;
    warmUp.day = core::engineDay(kSeasonEnd) - 180.0;
    content.series.readings.push_back(warmUp);
    strength.setContent(content);
    EXPECT_EQ(lowestTick(), before);
    hover(strength, QPoint(int(xOf(warmUp.day)), int(strength.plotArea().bottom())));
    EXPECT_THAT(shown(strength), HasSubstr("60")) << "what it spoke for is still told";
}

TEST_F(Charts, ShareTheTimeAxisToThePixel)
{
    EXPECT_EQ(strength.plotArea(), work.plotArea());
}

TEST_F(Charts, HoverShowsTheWeekUnderTheMouseAndFollowsIt)
{
    const int bottom = int(strength.plotArea().bottom()) - 2;
    const double last = core::engineDay(kSeasonEnd);
    hover(strength, QPoint(int(xOf(last)), bottom));
    EXPECT_THAT(shown(strength), HasSubstr("Week to Sun 10 May 2026"));
    EXPECT_THAT(shown(strength), HasSubstr("Estimated max 145.5 kg"));
    EXPECT_THAT(shown(strength), HasSubstr("90 % interval 142.6 to 148.4 kg"));
    hover(strength, QPoint(int(xOf(last - 70)), bottom));
    EXPECT_THAT(shown(strength), HasSubstr("Week to Sun 1 Mar 2026"));
    EXPECT_THAT(shown(strength), HasSubstr("Estimated max 140.5 kg"));
}

TEST_F(Charts, HoverOnTheWorkChartShowsTonnageAndLifts)
{
    const double middle = core::engineDay(kSeasonEnd) - 2.5;
    hover(work, QPoint(int(xOf(middle)), 150));
    EXPECT_THAT(shown(work), HasSubstr("Week from Mon 4 May 2026"));
    EXPECT_THAT(shown(work), HasSubstr("Number of lifts 21 in 6 sets"));
}

TEST_F(Charts, WheelZoomsAtTheMouseAndBothChartsFollow)
{
    const TimeSpan before = window.span();
    const QPointF at = strength.plotArea().center();
    QWheelEvent wheel(at, strength.mapToGlobal(at), {}, QPoint(0, 120), Qt::NoButton,
        Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(strength.viewport(), &wheel);
    EXPECT_NEAR(window.span().days(), before.days() / 1.25, 1e-9);
    EXPECT_NEAR((window.span().from + window.span().to) / 2, (before.from + before.to) / 2, 1e-6);
    for (const TimeChart *chart :
        {static_cast<TimeChart *>(&strength), static_cast<TimeChart *>(&work)}) {
        const auto *axis =
            qobject_cast<QValueAxis *>(chart->chart()->axes(Qt::Horizontal).value(0));
        ASSERT_NE(axis, nullptr);
        EXPECT_DOUBLE_EQ(axis->min(), window.span().from);
        EXPECT_DOUBLE_EQ(axis->max(), window.span().to);
    }
}

TEST_F(Charts, KeysZoomMoveAndShowAll)
{
    const TimeSpan all = window.span();
    QTest::keyClick(&strength, Qt::Key_Plus);
    QTest::keyClick(&strength, Qt::Key_Plus);
    const TimeSpan near = window.span();
    EXPECT_NEAR(near.days(), all.days() / (1.25 * 1.25), 1e-9);
    QTest::keyClick(&strength, Qt::Key_Left);
    EXPECT_NEAR(window.span().from, near.from - 0.1 * near.days(), 1e-9);
    QTest::keyClick(&strength, Qt::Key_End);
    EXPECT_DOUBLE_EQ(window.span().to, all.to);
    QTest::keyClick(&strength, Qt::Key_Minus);
    EXPECT_GT(window.span().days(), near.days());
    QTest::keyClick(&strength, Qt::Key_Home);
    EXPECT_EQ(window.span(), all);
}

TEST_F(Charts, CtrlWithArrowsReadsWeekByWeek)
{
    QTest::keyClick(&strength, Qt::Key_Left, Qt::ControlModifier);
    EXPECT_THAT(shown(strength), HasSubstr("Sun 10 May 2026"));
    QTest::keyClick(&strength, Qt::Key_Left, Qt::ControlModifier);
    EXPECT_THAT(shown(strength), HasSubstr("Sun 3 May 2026"));
    EXPECT_EQ(strength.accessibleDescription(), strength.shownValues());
    QTest::keyClick(&strength, Qt::Key_Escape);
    EXPECT_EQ(shown(strength), "");
}

TEST_F(Charts, DraggingMovesTheSpanAndShiftPicksOne)
{
    window.showLast(100.0);
    const TimeSpan before = window.span();
    const double pixelsPerDay = strength.plotArea().width() / before.days();
    QWidget *screen = strength.viewport();
    QTest::mousePress(screen, Qt::LeftButton, {}, {300, 150});
    QTest::mouseMove(screen, {400, 150});
    QTest::mouseRelease(screen, Qt::LeftButton, {}, {400, 150});
    EXPECT_NEAR(window.span().from, before.from - 100.0 / pixelsPerDay, 1e-6);
    EXPECT_NEAR(window.span().days(), before.days(), 1e-9);

    window.showAll();
    const double from = window.span().from;
    const double daysPerPixel = window.span().days() / strength.plotArea().width();
    const double left = strength.plotArea().left();
    QTest::mousePress(screen, Qt::LeftButton, Qt::ShiftModifier, {300, 150});
    QTest::mouseMove(screen, {500, 150});
    QTest::mouseRelease(screen, Qt::LeftButton, Qt::ShiftModifier, {500, 150});
    EXPECT_NEAR(window.span().from, from + (300 - left) * daysPerPixel, daysPerPixel);
    EXPECT_NEAR(window.span().days(), 200 * daysPerPixel, 2 * daysPerPixel);
}

TEST_F(Charts, DoubleClickShowsAll)
{
    window.showLast(60.0);
    QTest::mouseDClick(strength.viewport(), Qt::LeftButton, {}, {300, 150});
    EXPECT_EQ(window.span(), window.bounds());
}
