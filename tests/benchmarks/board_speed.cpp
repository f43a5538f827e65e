#include "core/storage/roster_file.h"
#include "tests/support/set_clock.h"
#include "ui/board/board_drag.h"
#include "ui/board/week_board_page.h"
#include "ui/board/week_grid.h"
#include "ui/roster/insights.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"
#include "ui/roster_week/roster_week_model.h"

#include <QApplication>
#include <QDragMoveEvent>
#include <QEventLoop>
#include <QMimeData>
#include <QTemporaryDir>
#include <benchmark/benchmark.h>
#include <map>
#include <memory>

// A roster of 40 lifters with half a year of log and 12 planned weeks each, open on the week board.
// Goals: a frame of a drag under 16 ms, switching the lifter under 50 ms, all loads anew after an
// estimate changed under 100 ms. Run with QT_QPA_PLATFORM=offscreen.

namespace {

constexpr int kLifters = 40;
constexpr int kLogWeeks = 26;
constexpr int kPlanWeeks = 12;
const QDate kMonday(2026, 11, 23);

core::VariationId idOf(const core::RosterFile &file, const char *code)
{
    for (const core::Variation &variation : file.variations())
        if (variation.code == QLatin1String(code))
            return variation.id;
    return {};
}

core::RosterFile roster(const QString &path)
{
    core::RosterFile file = core::RosterFile::create(path);
    const core::VariationId comp = idOf(file, "comp");
    const core::VariationId feetUp = idOf(file, "feet_up");
    core::Edit edit;
    for (int i = 0; i < kLifters; ++i) {
        core::Lifter lifter;
        lifter.id = file.newId<core::Lifter>();
        lifter.name = QStringLiteral("Lifter %1").arg(i);
        lifter.gear = core::usualGear(core::Unit::kilogram);
        edit.lifters.after.push_back(lifter);
        for (int week = 1; week <= kLogWeeks; ++week)
            for (const int day : {0, 2, 4}) {
                core::LoggedSession session;
                session.id = file.newId<core::LoggedSession>();
                session.lifter = lifter.id;
                session.day = kMonday.addDays(day - 7 * week);
                for (int set = 0; set < 6; ++set) {
                    core::SetEntry entry;
                    entry.variation = set < 4 ? comp : feetUp;
                    entry.loadKg = set == 0 ? 110.0 : 90.0 + 2.5 * set;
                    entry.repsDone = set == 0 ? 1 : 5;
                    entry.rpe = 8.0;
                    session.sets.push_back(entry);
                }
                edit.sessions.after.push_back(session);
            }
        for (int week = 0; week < kPlanWeeks; ++week)
            for (const int day : {0, 2, 4})
                for (int position = 0; position < 3; ++position)
                    edit.cards.after.push_back({file.newId<core::Card>(), lifter.id,
                        kMonday.addDays(day + 7 * week), position, position == 1 ? feetUp : comp,
                        QStringLiteral("1x1 @8 / 4x3 -10%"), {}});
    }
    file.apply(edit);
    return file;
}

/// Opened once for all benchmarks.
struct Desk
{
    Desk()
    {
        QEventLoop loop;
        QObject::connect(&estimates, &ui::Estimates::changed, &loop, &QEventLoop::quit);
        loop.exec();
        selection.setWeekOf(kMonday);
        selection.setLifter(session.lifters().front().id);
        page.resize(1366, 768);
        page.show();
        QApplication::processEvents();
        grid = page.findChild<ui::WeekGrid *>();
    }
    static Desk &open()
    {
        if (!s_open)
            s_open = std::make_unique<Desk>();
        return *s_open;
    }
    /// Before the application goes.
    static void close() { s_open.reset(); }

    QTemporaryDir folder;
    SetClock clock{kMonday};
    ui::OpenRoster session{std::make_unique<core::RosterFile>(
                               roster(folder.filePath(QStringLiteral("team.benchwright")))),
        clock.today};
    ui::Estimates estimates{session};
    ui::Insights insights{session, estimates};
    ui::Selection selection{session};
    ui::LifterHistory history{session, selection};
    ui::WeekBoardPage page{session, estimates, insights, history, selection};
    ui::WeekGrid *grid = nullptr;

private:
    static inline std::unique_ptr<Desk> s_open;
};

/// One move of a drag into the next gap, with what it would weigh, painted.
void dragFrame(benchmark::State &state)
{
    Desk &desk = Desk::open();
    const auto mime = ui::mimeOf(desk.session.variations().front().id);
    const auto columns = ui::boardColumns(desk.grid->width(), 1);
    QDragEnterEvent enter({10, 10}, Qt::CopyAction, mime.get(), Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(desk.grid, &enter);
    for (int frame = 0; auto _ : state) {
        const QPoint at(columns[size_t(frame % 7)].center().x(), 20 + 90 * (frame % 3));
        QDragMoveEvent move(at, Qt::CopyAction, mime.get(), Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(desk.grid, &move);
        QApplication::processEvents();
        desk.page.grab(); // offscreen paints nothing by itself
        ++frame;
    }
    QDragLeaveEvent leave;
    QApplication::sendEvent(desk.grid, &leave);
}
BENCHMARK(dragFrame)->Unit(benchmark::kMillisecond);

/// Another lifter: plan, history, advice and checks read and shown.
void switchingLifter(benchmark::State &state)
{
    Desk &desk = Desk::open();
    for (size_t next = 0; auto _ : state) {
        desk.selection.setLifter(desk.session.lifters()[++next % kLifters].id);
        QApplication::processEvents();
        desk.page.grab();
    }
}
BENCHMARK(switchingLifter)->Unit(benchmark::kMillisecond);

/// The loads of all 40 x 12 weeks, as after their estimates changed.
void resolvingAllLoads(benchmark::State &state)
{
    Desk &desk = Desk::open();
    const std::vector<core::Card> cards =
        desk.session.cards(kMonday, kMonday.addDays(7 * kPlanWeeks - 1));
    std::map<core::LifterId, std::vector<core::Card>> byLifter;
    for (const core::Card &card : cards)
        byLifter[card.lifter].push_back(card);
    for (auto _ : state)
        for (const core::Lifter &lifter : desk.session.lifters())
            benchmark::DoNotOptimize(core::resolveCards(byLifter[lifter.id],
                {lifter, desk.session.variations(),
                    [&](core::Lift lift) { return desk.estimates.of(lifter.id, lift); },
                    core::noCheckIns(), {}, {}}));
    state.counters["cards"] = double(cards.size());
}
BENCHMARK(resolvingAllLoads)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char **argv)
{
    QApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    Desk::close();
    return 0;
}
