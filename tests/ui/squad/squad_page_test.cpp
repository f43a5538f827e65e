#include "ui/squad/squad_page.h"

#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "ui/roster/estimates.h"
#include "ui/squad/spark_line.h"
#include "ui/squad/squad_model.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

using namespace ui;

namespace {

core::SquadRow row(int id, double attention, std::optional<int> daysToMeet = {})
{
    core::SquadRow row;
    row.lifter = {id};
    row.name = QStringLiteral("Lifter %1").arg(id);
    row.attention = attention;
    row.daysToMeet = daysToMeet;
    row.trendKg = {100, 101, 102};
    return row;
}

struct SquadPageShown : testing::Test
{
    SquadPageShown()
        : roster(std::make_unique<core::RosterFile>(makeFile()), clock.today)
        , estimates(roster)
        , page(roster, estimates)
    {
        page.resize(1280, 600);
        page.show();
    }

    core::RosterFile makeFile()
    {
        core::RosterFile file =
            core::RosterFile::create(folder.path(QStringLiteral("squad.benchroster")));
        std::vector<core::Lifter> lifters{inventedLifter(QStringLiteral("Ada")),
            inventedLifter(QStringLiteral("Bo")), inventedLifter(QStringLiteral("Cy"))};
        lifters[1].meetDate = clock.today.date().addDays(5);
        addTo(file, lifters);
        bo = lifters[1].id;
        return file;
    }
    [[nodiscard]] QString shown(int row, int column) const
    {
        return const_cast<SquadPage &>(page).table().model()->index(row, column).data().toString();
    }

    PrivateFolder folder;
    SetClock clock;
    core::LifterId bo;
    OpenRoster roster;
    Estimates estimates;
    SquadPage page;
};

} // namespace

TEST(SparkLine, KeepsWithinItsBoxAndDoesNotBlowUpNoise)
{
    const QRectF box(10, 20, 60, 10);
    const double rising[] = {100, 105, 110};
    const QPolygonF line = sparkLine(rising, box);
    ASSERT_EQ(line.size(), 3);
    EXPECT_EQ(line.first(), QPointF(10, 30));
    EXPECT_EQ(line.last(), QPointF(70, 20));
    const double flat[] = {100, 100.1, 100};
    for (const QPointF &point : sparkLine(flat, box))
        EXPECT_NEAR(point.y(), 25.0, 0.3);
    EXPECT_TRUE(sparkLine(std::span(flat).first(1), box).isEmpty());
}

TEST(SquadModel, SortsByRawValuesWithTheEmptyOnesLast)
{
    SquadModel model;
    QAbstractItemModelTester tester(&model);
    SquadFilter filter;
    filter.setSourceModel(&model);
    model.setRows({row(1, 0.0), row(2, 30.0, 9), row(3, 12.0, 100)}, {});
    const auto first = [&] {
        return model.row(filter.mapToSource(filter.index(0, 0)).row()).lifter;
    };
    filter.sort(SquadModel::meetColumn, Qt::AscendingOrder);
    EXPECT_EQ(first(), core::LifterId{2});
    filter.sort(SquadModel::meetColumn, Qt::DescendingOrder);
    EXPECT_EQ(first(), core::LifterId{3}) << "100 days before 9, none last";
    filter.sort(SquadModel::attentionColumn, Qt::DescendingOrder);
    EXPECT_EQ(first(), core::LifterId{2});
    filter.setShow(SquadFilter::Show::attention);
    EXPECT_EQ(filter.rowCount(), 2);
    filter.setQuery(QStringLiteral("3"));
    EXPECT_EQ(filter.rowCount(), 1);
}

TEST(SquadModel, ShowsAndSortsWhatWasDoneOfThePlan)
{
    SquadModel model;
    SquadFilter filter;
    filter.setSourceModel(&model);
    const auto shown = [&](int row, int role) {
        return filter.index(row, SquadModel::doneColumn).data(role).toString().toStdString();
    };
    model.setRows({row(1, 0.0), row(2, 0.0), row(3, 0.0), row(4, 0.0)}, {});
    EXPECT_EQ(shown(0, Qt::DisplayRole), "\u2013") << "not worked out yet";
    model.setAdherence({{{1}, {10, 9, 0}}, {{2}, {}}, {{3}, {8, 4, 2}}});
    filter.sort(SquadModel::doneColumn, Qt::AscendingOrder);
    EXPECT_EQ(shown(0, Qt::DisplayRole), "50 %");
    EXPECT_EQ(shown(0, Qt::ToolTipRole),
        "Sets done in the last four weeks that are over: 4 of 8 planned. Beside the plan: 2.");
    EXPECT_EQ(shown(1, Qt::DisplayRole), "90 %");
    filter.sort(SquadModel::doneColumn, Qt::DescendingOrder);
    EXPECT_EQ(shown(0, Qt::DisplayRole), "90 %");
    model.setRows({row(2, 0.0)}, {});
    EXPECT_EQ(shown(0, Qt::DisplayRole), "no plan") << "kept for new rows";
    EXPECT_EQ(
        shown(0, Qt::ToolTipRole), "Nothing was planned in the last four weeks that are over.");
}

TEST(SquadModel, SaysFromWhenOnSomethingIsPlanned)
{
    SquadModel model;
    core::SquadRow later = row(1, 0.0);
    later.plannedWeeks = 4;
    later.plannedFrom = QDate(2026, 3, 23);
    model.setRows({later}, {});
    const QModelIndex cell = model.index(0, SquadModel::plannedColumn);
    EXPECT_EQ(cell.data().toString().toStdString(), "4 wk");
    EXPECT_EQ(cell.data(Qt::ToolTipRole).toString().toStdString(),
        "Planned weeks: 4, from 23 Mar 2026 on.");
}

TEST_F(SquadPageShown, WorksOutWhatWasDoneOfThePlans)
{
    core::Card card{roster.newId<core::Card>(), bo, core::mondayOf(clock.today.date()).addDays(-7),
        0, core::competitionOf(roster.variations(), core::Lift::bench)->id,
        QStringLiteral("3x5 80kg"), {}};
    core::Edit edit;
    edit.cards.after = {card};
    ASSERT_TRUE(roster.perform(QStringLiteral("Plan"), edit));
    QTRY_COMPARE_WITH_TIMEOUT(shown(0, SquadModel::doneColumn), QStringLiteral("0 %"), 20000);
}

TEST_F(SquadPageShown, CutsNoReasonAtTheSmallestWidth)
{
    page.resize(1040, 600);
    for (int row = 0; row < page.table().model()->rowCount(); ++row) {
        const QModelIndex cell = page.table().model()->index(row, SquadModel::attentionColumn);
        EXPECT_LE(page.table().fontMetrics().horizontalAdvance(cell.data().toString()),
            page.table().visualRect(cell).width());
    }
}

TEST_F(SquadPageShown, PutsWhoeverNeedsTheCoachOnTopAndSaysWhy)
{
    EXPECT_EQ(shown(0, SquadModel::lifterColumn).toStdString(), "Bo");
    EXPECT_TRUE(shown(0, SquadModel::attentionColumn).contains(QStringLiteral("meet: 5")));
    auto *why = page.findChild<QLabel *>(QStringLiteral("squadWhy"));
    EXPECT_TRUE(why->text().startsWith(QStringLiteral("Bo: "))) << why->text().toStdString();
    QTest::keyClick(&page.table(), Qt::Key_Down);
    EXPECT_FALSE(why->text().startsWith(QStringLiteral("Bo: ")));
}

TEST_F(SquadPageShown, EnterAndADoubleClickOpenTheReason)
{
    QSignalSpy asked(&page, &SquadPage::reasonAskedFor);
    QTest::keyClick(&page.table(), Qt::Key_Return);
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked[0][0].value<core::LifterId>(), bo);
    EXPECT_TRUE(asked[0][1].toBool());
}

TEST_F(SquadPageShown, FiltersByWordsAndByKind)
{
    page.findChild<QLineEdit *>(QStringLiteral("squadQuery"))->setText(QStringLiteral("cy"));
    EXPECT_EQ(page.table().model()->rowCount(), 1);
    page.findChild<QLineEdit *>(QStringLiteral("squadQuery"))->clear();
    page.findChild<QComboBox *>(QStringLiteral("squadShow"))->setCurrentIndex(4);
    EXPECT_EQ(page.table().model()->rowCount(), 1);
    EXPECT_EQ(shown(0, SquadModel::lifterColumn).toStdString(), "Bo");
}

TEST_F(SquadPageShown, FollowsTheRoster)
{
    core::Edit edit;
    core::Lifter before = *roster.lifter(bo);
    core::Lifter after = before;
    after.archived = true;
    edit.lifters.before = {before};
    edit.lifters.after = {after};
    ASSERT_TRUE(roster.perform(QStringLiteral("Archive"), edit));
    EXPECT_EQ(page.table().model()->rowCount(), 2);
}
