#include "app/demo/demo_roster.h"
#include "core/storage/roster_file.h"
#include "tests/support/set_clock.h"
#include "ui/board/card_widget.h"
#include "ui/board/variation_shelf.h"
#include "ui/board/week_grid.h"
#include "ui/look/theme.h"
#include "ui/window/main_window.h"
#include "ui/window/roster_view.h"

#include <QApplication>
#include <QListView>
#include <QProcess>
#include <QSettings>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>
#include <gmock/gmock.h>

// A real window on a real X server, a real mouse moved by xdotool from outside of the program: what
// no event made by QTest can show. Runs under xvfb-run; see CMakeLists.txt.

using namespace core;

namespace {

void xdotool(const QStringList &arguments)
{
    QProcess process;
    process.start(QStringLiteral("xdotool"), arguments);
    // The window has to go on while the mouse moves: a drag runs an event loop of its own.
    while (process.state() != QProcess::NotRunning)
        QTest::qWait(5);
    ASSERT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
}

QStringList moveTo(QPoint p)
{
    return {QStringLiteral("mousemove"), QString::number(p.x()), QString::number(p.y())};
}

/// Press, move in steps as a hand does, release: one xdotool call, so that nothing comes between.
void dragWithTheMouse(QPoint from, QPoint to)
{
    const QStringList pause{QStringLiteral("sleep"), QStringLiteral("0.05")};
    QStringList script = moveTo(from);
    script << QStringLiteral("mousedown") << QStringLiteral("1");
    constexpr int kSteps = 12;
    for (int step = 1; step <= kSteps; ++step)
        script << pause << moveTo(from + (to - from) * step / kSteps);
    script << pause << pause << QStringLiteral("mouseup") << QStringLiteral("1");
    xdotool(script);
}

class RealWindow : public testing::Test
{
protected:
    void SetUp() override
    {
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, dir.path());
        const QString path = dir.filePath(QStringLiteral("demo.benchwright"));
        {
            RosterFile file = RosterFile::create(path);
            Edit edit = demo::demoRoster(file.variations(), clock.today.date(),
                {[&] { return file.newId<Lifter>(); }, [&] { return file.newId<LoggedSession>(); },
                    [&] { return file.newId<Card>(); }, [&] { return file.newId<Block>(); },
                    [&] { return file.newId<CheckIn>(); }});
            edit.cards = {}; // an empty board to drop on
            file.apply(edit);
        }
        theme = std::make_unique<ui::Theme>(*qApp);
        window = std::make_unique<ui::MainWindow>(*theme, clock.today);
        window->resize(1366, 768);
        window->move(0, 0);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        ASSERT_TRUE(window->openFile(path));
        roster = window->roster();
        roster->selection().setLifter(roster->openRoster().lifters().front().id);
        ASSERT_TRUE(QTest::qWaitFor([&] { return !roster->estimates().isBusy(); }, 20'000));
        shelf = window->findChild<ui::VariationShelf *>();
        grid = window->findChild<ui::WeekGrid *>();
        ASSERT_NE(shelf, nullptr);
        ASSERT_NE(grid, nullptr);
    }

    std::vector<Card> cards() const
    {
        const QDate monday = roster->selection().monday();
        return roster->openRoster().cards(roster->selection().lifter(), monday, monday.addDays(6));
    }

    /// The middle of the first variation on the shelf.
    QPoint firstOnShelf() const
    {
        auto *list = shelf->findChild<QListView *>();
        for (int row = 0; row < list->model()->rowCount(); ++row) {
            const QModelIndex index = list->model()->index(row, 0);
            if (index.flags().testFlag(Qt::ItemIsDragEnabled))
                return list->viewport()->mapToGlobal(list->visualRect(index).center());
        }
        return {};
    }
    QPoint onDay(int day) const
    {
        return grid->mapToGlobal(QPoint(grid->width() * (2 * day + 1) / 14, 60));
    }

    QTemporaryDir dir;
    std::unique_ptr<ui::Theme> theme;
    SetClock clock;
    std::unique_ptr<ui::MainWindow> window;
    ui::RosterView *roster = nullptr;
    ui::VariationShelf *shelf = nullptr;
    ui::WeekGrid *grid = nullptr;
};

} // namespace

TEST_F(RealWindow, AMouseDragFromTheShelfDropsACardThatWeighsSomethingAndUndoTakesItBack)
{
    ASSERT_TRUE(cards().empty());
    dragWithTheMouse(firstOnShelf(), onDay(2));
    ASSERT_TRUE(QTest::qWaitFor([&] { return cards().size() == 1; }, 5'000));
    EXPECT_EQ(cards().front().day, roster->selection().monday().addDays(2));

    auto *card = grid->findChild<ui::CardWidget *>();
    ASSERT_NE(card, nullptr);
    if (const QByteArray folder = qgetenv("PICTURES"); !folder.isEmpty())
        window->grab().save(QString::fromLocal8Bit(folder) + QStringLiteral("/after-drag.png"));
    EXPECT_THAT(card->accessibleName().toStdString() + card->accessibleDescription().toStdString(),
        testing::HasSubstr("kg"));

    roster->openRoster().undo();
    EXPECT_TRUE(cards().empty());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !grid->findChild<ui::CardWidget *>(); }, 2'000));
}

TEST_F(RealWindow, AMouseDragMovesACardToAnotherDay)
{
    dragWithTheMouse(firstOnShelf(), onDay(0));
    ASSERT_TRUE(QTest::qWaitFor([&] { return cards().size() == 1; }, 5'000));
    const Card before = cards().front();
    auto *card = grid->findChild<ui::CardWidget *>();
    ASSERT_NE(card, nullptr);
    dragWithTheMouse(card->mapToGlobal(QPoint(card->width() / 2, 14)), onDay(4));
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return !cards().empty() && cards().front().day != before.day; }, 5'000));
    EXPECT_EQ(cards().front().day, before.day.addDays(4));
    EXPECT_EQ(cards().front().id, before.id);
}
