#include "ui/review/measure_series.h"

#include "ui/charts/time_window.h"
#include "ui/review/measure_chart.h"
#include "ui/review/measure_panel.h"

#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QLabel>
#include <QSet>
#include <QTest>
#include <cmath>
#include <gtest/gtest.h>

using namespace ui;

namespace {

const core::VariationId kComp{1}, kPause{2};

core::SetEntry set(core::VariationId variation, double loadKg, int touch)
{
    core::SetEntry entry;
    entry.variation = variation;
    entry.loadKg = loadKg;
    entry.repsDone = 3;
    entry.rpe = 8.0;
    entry.touch = touch;
    return entry;
}

struct Measured : testing::Test
{
    Measured()
    {
        comp.id = kComp;
        comp.competition = true;
        pause.id = kPause;
        pause.name = QStringLiteral("Pause bench");
        catalogue = {comp, pause};
        lift.rows = {kComp, kPause};
        lift.priors = {{1.0, 0.0, 1.0}, {0.95, 0.03, 1.0}};
        lift.estimate.curve = {0.03, 1.0};
        lift.estimate.variations.resize(2);
        lift.estimate.variations[0].ratio = {1.0, 1.0, 1.0};
        lift.estimate.variations[1].ratio = {0.95, 0.93, 0.97};
        lift.estimate.variations[1].sets = 20;
        const QDate monday(2026, 1, 5);
        for (int week = 0; week < 12; ++week) {
            strength::WeekEstimate estimate;
            estimate.sunday = core::engineDay(monday.addDays(7 * week + 6));
            estimate.filtered = estimate.smoothed = {100, 97, 103};
            lift.estimate.weeks.push_back(estimate);
            core::LoggedSession session;
            session.day = monday.addDays(7 * week + 1);
            session.readiness = 3;
            // Light up to 85 kg, sinking beyond.
            session.sets = {
                set(kComp, 75.0 + week, 2), set(kComp, 88.0 + week % 6, 4), set(kPause, 85.0, 2)};
            lift.readings.push_back(session);
        }
    }
    [[nodiscard]] MeasureContent content(Measure measure) const
    {
        MeasureSources sources{lift, catalogue, cards, {}, touch, core::TouchStyle::soft};
        sources.compared = {{QStringLiteral("Ada"), &lift}, {QStringLiteral("Bo"), &lift}};
        return measureContent(measure, sources);
    }

    core::Variation comp, pause;
    std::vector<core::Variation> catalogue;
    std::vector<core::Card> cards;
    core::LiftEstimate lift;
    strength::TouchRoster touch = strength::learnTouch({});
};

} // namespace

TEST_F(Measured, EveryMeasureHasItsWordsAndSomethingToShowOrToSay)
{
    QSet<QString> said;
    for (int i = 0; i < kMeasures; ++i) {
        said << words(Measure(i)).name << words(Measure(i)).explanation;
        const MeasureContent shown = content(Measure(i));
        EXPECT_NE(shown.lines.empty(), shown.nothing.isEmpty()) << i;
        EXPECT_LE(shown.lines.size(), kMostLines);
        for (const MeasureLine &line : shown.lines)
            EXPECT_FALSE(line.points.empty());
    }
    EXPECT_EQ(said.size(), 2 * kMeasures);
}

TEST_F(Measured, ZonesAddUpToTheLiftsOfTheWeek)
{
    double lifts = 0.0;
    for (const MeasureLine &line : content(Measure::zones).lines)
        lifts += line.points.front().value;
    EXPECT_DOUBLE_EQ(lifts, 9.0);
    const MeasureContent planned = content(Measure::planned);
    ASSERT_EQ(planned.lines.size(), 1u) << "nothing was planned";
    EXPECT_DOUBLE_EQ(planned.lines[0].points[0].value, 9.0);
}

TEST_F(Measured, ARatioIsWhatTheVariationsOwnSetsSay)
{
    const MeasureContent ratios = content(Measure::ratios);
    ASSERT_EQ(ratios.lines.size(), 1u);
    EXPECT_EQ(ratios.lines[0].name.toStdString(), "Pause bench");
    // 85 kg for three with two in reserve: five reps could be done, so max = 85 exp(0.03 x 4).
    EXPECT_NEAR(ratios.lines[0].points[0].value, 0.85 * std::exp(0.12), 1e-9);
    EXPECT_LE(*ratios.lines[0].points[0].low90, ratios.lines[0].points[0].value);
}

TEST_F(Measured, TheTouchHoldHasItsInterval)
{
    const MeasureContent hold = content(Measure::touchHold);
    ASSERT_EQ(hold.lines.size(), 1u) << hold.nothing.toStdString();
    const MeasurePoint &last = hold.lines[0].points.back();
    EXPECT_GT(last.value, 80.0);
    EXPECT_LT(last.value, 92.0);
    EXPECT_LT(*last.low90, last.value);
    EXPECT_GT(*last.high90, last.value);
}

TEST_F(Measured, LiftersAreComparedInOneUnit)
{
    const MeasureContent compared = content(Measure::compare);
    ASSERT_EQ(compared.lines.size(), 2u);
    EXPECT_EQ(compared.lines[1].name.toStdString(), "Bo");
    EXPECT_DOUBLE_EQ(compared.lines[1].points[0].value, 100.0);
    EXPECT_DOUBLE_EQ(*compared.lines[1].points[0].low90, 97.0);
}

TEST_F(Measured, TheCsvHoldsEveryPointWithIsoDays)
{
    MeasureContent one;
    one.lines = {{QStringLiteral("a, b"), {{0.0, 1.5, 1.0, 2.0}, {1.0, 2.0, {}, {}}}}};
    EXPECT_EQ(measureCsv(one).toStdString(),
        "day,line,value,low90,high90\r\n1970-01-01,\"a, b\",1.5,1,2\r\n1970-01-02,\"a, "
        "b\",2,,\r\n");
}

TEST_F(Measured, ThePanelShowsWhatIsChosenAndCopiesIt)
{
    TimeWindow window;
    const double monday = core::engineDay(QDate(2026, 1, 5));
    window.setBounds({monday, monday + 90});
    window.showAll();
    MeasurePanel panel(window);
    panel.resize(800, 300);
    panel.show();
    panel.setSource([this](Measure measure) { return content(measure); });
    auto *choice = panel.findChild<QComboBox *>(QStringLiteral("measure"));
    ASSERT_EQ(choice->count(), kMeasures);
    choice->setCurrentIndex(int(Measure::readiness));
    panel.copyCsv();
    EXPECT_TRUE(
        QGuiApplication::clipboard()->text().contains(QStringLiteral("2026-01-06,Readiness,3")));
    // Values are read with the keys alone.
    panel.chart().setFocus();
    QTest::keyClick(&panel.chart(), Qt::Key_Right, Qt::ControlModifier);
    EXPECT_TRUE(panel.chart().shownValues().contains(QStringLiteral("Readiness")))
        << panel.chart().shownValues().toStdString();
    panel.setSource([](Measure) {
        MeasureContent none;
        none.nothing = QStringLiteral("Nothing yet");
        return none;
    });
    EXPECT_TRUE(panel.findChild<QLabel *>(QStringLiteral("measureNothing"))->isVisible());
}
