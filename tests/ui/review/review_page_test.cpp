#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "tests/ui/review/sample_season.h"
#include "ui/review/review_page.h"
#include "ui/review/strength_chart.h"
#include "ui/review/touch_panel.h"
#include "ui/review/work_chart.h"
#include "ui/roster/estimates.h"
#include "ui/roster/insights.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/selection.h"

#include <QClipboard>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>
#include <QValueAxis>
#include <gmock/gmock.h>

using namespace core;
using namespace ui;
using testing::HasSubstr;

namespace {

const QDate kLastSunday(2026, 5, 10);

/// A roster of three: Ada in kg with a year of bench sets, Bo in lb with half a year, Cy without.
RosterFile makeRoster(const QString &path)
{
    RosterFile file = RosterFile::create(path);
    std::vector<Lifter> lifters{inventedLifter(QStringLiteral("Ada")),
        inventedLifter(QStringLiteral("Bo")), inventedLifter(QStringLiteral("Cy"))};
    lifters[1].unit = Unit::pound;
    lifters[0].meetDate = kLastSunday.addDays(20);
    addTo(file, lifters);

    std::map<QString, VariationId> byCode;
    for (const Variation &variation : file.variations())
        byCode.emplace(variation.code, variation.id);
    const std::map<VariationId, VariationId> stored{
        {sample::kCompetition, byCode.at(QStringLiteral("comp"))},
        {sample::kOffChest, byCode.at(QStringLiteral("off_chest_pause"))},
        {sample::kSink, byCode.at(QStringLiteral("long_pause"))},
        {sample::kFeetUp, byCode.at(QStringLiteral("feet_up"))}};
    Edit edit;
    for (const auto &[lifter, weeks, startKg] :
        {std::tuple{lifters[0].id, 52, 120.0}, {lifters[1].id, 26, 90.0}})
        for (LoggedSession session : sample::season(kLastSunday, weeks, startKg, 0.3).sessions) {
            session.id = file.newId<LoggedSession>();
            session.lifter = lifter;
            for (SetEntry &set : session.sets)
                set.variation = stored.at(set.variation);
            edit.sessions.after.push_back(session);
        }
    file.apply(edit);
    return file;
}

class ReviewPageTest : public testing::Test
{
protected:
    ReviewPageTest()
    {
        QLocale::setDefault(QLocale::c());
        QSignalSpy fitted(&estimates, &Estimates::changed);
        EXPECT_TRUE(fitted.wait());
        page.resize(1100, 680);
        page.show();
    }

    void choose(const QString &name)
    {
        for (const Lifter &lifter : roster.lifters())
            if (lifter.name == name)
                selection.setLifter(lifter.id);
    }
    void press(const QString &words)
    {
        for (QAbstractButton *button : page.findChildren<QAbstractButton *>())
            if (button->text() == words)
                QTest::mouseClick(button, Qt::LeftButton, {}, QPoint(10, button->height() / 2));
    }
    bool isDown(const QString &words) const
    {
        for (const QAbstractButton *button : page.findChildren<QAbstractButton *>())
            if (button->text() == words)
                return button->isChecked();
        return false;
    }
    std::string label(const QString &name) const
    {
        const auto *found = page.findChild<QLabel *>(name);
        return found && found->isVisible() ? found->text().toStdString() : std::string();
    }
    std::string message() const { return label(QStringLiteral("reviewMessage")); }
    std::string trend() const { return label(QStringLiteral("trend")); }

    TimeChart &strengthChart() const { return *page.findChild<StrengthChart *>(); }
    TimeChart &workChart() const { return *page.findChild<WorkChart *>(); }
    static double daysShown(const TimeChart &chart)
    {
        const auto *axis = qobject_cast<QValueAxis *>(chart.chart()->axes(Qt::Horizontal).first());
        return axis->max() - axis->min();
    }

    PrivateFolder folder;
    SetClock clock;
    OpenRoster roster{std::make_unique<core::RosterFile>(
                          makeRoster(folder.path(QStringLiteral("r.benchwright")))),
        clock.today};
    Estimates estimates{roster};
    Selection selection{roster};
    Insights insights{roster, estimates};
    LifterHistory history{roster, selection};
    ReviewPage page{roster, estimates, insights, history, selection};
};

} // namespace

TEST_F(ReviewPageTest, InvitesToChooseALifter)
{
    EXPECT_THAT(message(), HasSubstr("Choose a lifter"));
}

TEST_F(ReviewPageTest, SaysWhatIsMissingAndWhatToDo)
{
    choose(QStringLiteral("Cy"));
    EXPECT_THAT(message(), HasSubstr("No bench sets logged yet. Import a training log"));
    choose(QStringLiteral("Ada"));
    EXPECT_EQ(message(), "");
    press(QStringLiteral("Squat"));
    EXPECT_THAT(message(), HasSubstr("No squat sets logged yet"));
    press(QStringLiteral("Bench press"));
    EXPECT_EQ(message(), "");
}

TEST_F(ReviewPageTest, FollowsTheLifterInTheirUnit)
{
    choose(QStringLiteral("Ada"));
    EXPECT_THAT(label(QStringLiteral("standing")), HasSubstr("Ada"));
    EXPECT_THAT(trend(), testing::ContainsRegex("Estimated max 1[0-9.]+ kg"));
    choose(QStringLiteral("Bo"));
    EXPECT_THAT(label(QStringLiteral("standing")), HasSubstr("Bo"));
    EXPECT_THAT(trend(), testing::ContainsRegex("Estimated max 2[0-9.]+ lb"));
    EXPECT_EQ(strengthChart().chart()->axes(Qt::Vertical).first()->titleText(), u"lb");
    EXPECT_EQ(workChart().chart()->axes(Qt::Vertical).first()->titleText(), u"1000 lb");
}

TEST_F(ReviewPageTest, RangeButtonsShowTheLastWeeksInBothCharts)
{
    choose(QStringLiteral("Ada"));
    EXPECT_TRUE(isDown(QStringLiteral("All")));
    const double all = daysShown(strengthChart());
    press(QStringLiteral("8 weeks"));
    EXPECT_DOUBLE_EQ(daysShown(strengthChart()), 56.0);
    EXPECT_DOUBLE_EQ(daysShown(workChart()), 56.0);
    EXPECT_TRUE(isDown(QStringLiteral("8 weeks")));
    choose(QStringLiteral("Bo")); // the choice stays
    EXPECT_DOUBLE_EQ(daysShown(strengthChart()), 56.0);
    choose(QStringLiteral("Ada"));
    press(QStringLiteral("6 months"));
    EXPECT_DOUBLE_EQ(daysShown(workChart()), 183.0);
    press(QStringLiteral("All"));
    EXPECT_DOUBLE_EQ(daysShown(workChart()), all);
}

TEST_F(ReviewPageTest, ARangeButtonComesUpOnceAnotherSpanIsShown)
{
    choose(QStringLiteral("Ada"));
    press(QStringLiteral("8 weeks"));
    QTest::keyClick(&strengthChart(), Qt::Key_Left);
    EXPECT_FALSE(isDown(QStringLiteral("8 weeks")));
    QTest::keyClick(&strengthChart(), Qt::Key_End);
    press(QStringLiteral("8 weeks"));
    EXPECT_TRUE(isDown(QStringLiteral("8 weeks")));
}

TEST_F(ReviewPageTest, TheTrendSpeaksOfTheSpanThatIsShown)
{
    choose(QStringLiteral("Ada"));
    EXPECT_THAT(trend(), testing::ContainsRegex("Up [0-9.]+ kg from Sun 18 May 2025"));
    press(QStringLiteral("8 weeks"));
    EXPECT_THAT(trend(), Not(HasSubstr("2025")));
}

TEST_F(ReviewPageTest, KnownThenAndKnownNowAreTwoLines)
{
    choose(QStringLiteral("Ada"));
    const auto firstWeek = [this] {
        QTest::keyClick(&strengthChart(), Qt::Key_Right, Qt::ControlModifier);
        return strengthChart().shownValues().toStdString();
    };
    const std::string now = firstWeek();
    EXPECT_THAT(now, HasSubstr("known now"));
    press(QStringLiteral("Known then"));
    const std::string then = firstWeek();
    EXPECT_THAT(then, HasSubstr("known then"));
    EXPECT_NE(now.substr(0, now.find("Sets")), then.substr(0, then.find("Sets")));
}

TEST_F(ReviewPageTest, AHiddenPageCatchesUpWhenShown)
{
    choose(QStringLiteral("Ada"));
    page.hide();
    choose(QStringLiteral("Cy"));
    page.show();
    EXPECT_THAT(message(), HasSubstr("No bench sets logged yet"));
}

TEST_F(ReviewPageTest, ANewSetIsInTheChartWithoutAsking)
{
    choose(QStringLiteral("Ada"));
    const double before = daysShown(workChart());
    LoggedSession session;
    session.id = roster.newId<LoggedSession>();
    session.lifter = selection.lifter();
    session.day = kLastSunday.addDays(30);
    SetEntry set;
    set.variation = roster.variations().front().id;
    set.loadKg = 100.0;
    set.repsDone = 3;
    session.sets = {set};
    Edit edit;
    edit.sessions.after = {session};
    QSignalSpy fitted(&estimates, &Estimates::changed);
    ASSERT_TRUE(roster.perform(QStringLiteral("Log"), edit));
    ASSERT_TRUE(fitted.wait());
    EXPECT_GT(daysShown(workChart()), before);
}

TEST_F(ReviewPageTest, CopiesBothChartsAsAPicture)
{
    choose(QStringLiteral("Ada"));
    QGuiApplication::clipboard()->clear();
    page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    strengthChart().setFocus();
    QTest::keyClick(&strengthChart(), Qt::Key_C, Qt::ControlModifier);
    const QImage picture = QGuiApplication::clipboard()->image();
    EXPECT_GE(picture.height(), strengthChart().height() + workChart().height());
}

TEST_F(ReviewPageTest, SaysHowTheTouchHoldsAndTheCoachConfirmsTheStyle)
{
    choose(QStringLiteral("Ada"));
    EXPECT_THAT(label(QStringLiteral("holds")), HasSubstr("All bench work: "));
    const QPushButton *confirm = page.findChild<QPushButton *>(QStringLiteral("confirmTouch"));
    ASSERT_TRUE(confirm);
    EXPECT_FALSE(confirm->isVisible()) << "nothing is suggested without scores";

    Q_EMIT page.findChild<TouchPanel *>()->confirmed(TouchStyle::sinking);
    EXPECT_EQ(roster.lifter(selection.lifter())->touchStyle, TouchStyle::sinking);
    roster.undo();
    EXPECT_NE(roster.lifter(selection.lifter())->touchStyle, TouchStyle::sinking);
    page.showLift(Lift::squat);
    EXPECT_TRUE(label(QStringLiteral("holds")).empty());
}
