#include "core/storage/roster_file.h"
#include "tests/support/set_clock.h"
#include "ui/review/measure_chart.h"
#include "ui/review/review_page.h"
#include "ui/review/strength_chart.h"
#include "ui/roster/estimates.h"
#include "ui/roster/insights.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"
#include "ui/squad/squad_page.h"

#include <QApplication>
#include <QComboBox>
#include <QEventLoop>
#include <QTemporaryDir>
#include <QTest>
#include <benchmark/benchmark.h>

// The review of one lifter with five years of three bench sessions a week, eight sets each, and the
// squad page of 300 lifters. Goals: the review opens in under 100 ms and follows the mouse in under
// 16 ms. Run with QT_QPA_PLATFORM=offscreen.

namespace {

constexpr int kSquad = 300;
constexpr int kSessions = 5 * 52 * 3;
constexpr int kSets = 8;
const QDate kToday(2026, 11, 25);

core::LoggedSession session(core::SessionId id, core::LifterId lifter, int number,
    const std::vector<core::VariationId> &benches)
{
    core::LoggedSession session;
    session.id = id;
    session.lifter = lifter;
    session.day = kToday.addDays(-(kSessions - number) / 3 * 7 - number % 3 * 2 - 1);
    session.number = 1;
    session.readiness = 1 + number % 5;
    for (int i = 0; i < kSets; ++i) {
        core::SetEntry set;
        set.variation = benches[size_t(i < 4 ? 0 : number % int(benches.size()))];
        set.loadKg = 90.0 + 0.01 * number + 2.5 * ((number + i) % 5);
        set.repsDone = 5;
        set.rpe = 6.5 + 0.5 * ((number + i) % 5);
        set.touch = 1 + (number + i) % 5;
        session.sets.push_back(set);
    }
    return session;
}

/// A roster of 300, the first of whom has the log.
core::RosterFile roster(const QString &path)
{
    core::RosterFile file = core::RosterFile::create(path);
    std::vector<core::VariationId> benches;
    for (const core::Variation &variation : file.variations())
        if (variation.lift == core::Lift::bench) {
            benches.push_back(variation.id);
            if (variation.competition)
                std::swap(benches.front(), benches.back());
        }
    core::Edit edit;
    for (int i = 0; i < kSquad; ++i) {
        core::Lifter lifter;
        lifter.id = file.newId<core::Lifter>();
        lifter.name = QStringLiteral("Lifter %1").arg(i);
        lifter.gear = core::usualGear(core::Unit::kilogram);
        edit.lifters.after.push_back(lifter);
    }
    for (int number = 0; number < kSessions; ++number)
        edit.sessions.after.push_back(session(
            file.newId<core::LoggedSession>(), edit.lifters.after.front().id, number, benches));
    file.apply(edit);
    return file;
}

struct Opened
{
    Opened()
    {
        QEventLoop loop;
        QObject::connect(&insights, &ui::Insights::changed, &loop, &QEventLoop::quit);
        loop.exec();
    }
    QTemporaryDir folder;
    SetClock clock{kToday};
    ui::OpenRoster session{std::make_unique<core::RosterFile>(
                               roster(folder.filePath(QStringLiteral("r.benchwright")))),
        clock.today};
    ui::Estimates estimates{session};
    ui::Insights insights{session, estimates};
    ui::Selection selection{session};
    ui::LifterHistory history{session, selection};
};

Opened &opened()
{
    static Opened all;
    return all;
}

void openReview(benchmark::State &state)
{
    Opened &all = opened();
    ui::ReviewPage page(all.session, all.estimates, all.insights, all.history, all.selection);
    page.resize(1366, 700);
    page.show();
    page.findChild<QComboBox *>(QStringLiteral("measure"))->setCurrentIndex(int(state.range(0)));
    const auto &lifters = all.session.lifters();
    for (auto _ : state) {
        state.PauseTiming();
        all.selection.setLifter(lifters[1].id);
        QCoreApplication::processEvents();
        state.ResumeTiming();
        all.selection.setLifter(lifters[0].id);
        benchmark::DoNotOptimize(page.grab());
    }
    state.SetLabel(ui::words(ui::Measure(state.range(0))).name.toStdString());
}

void hover(benchmark::State &state)
{
    Opened &all = opened();
    ui::ReviewPage page(all.session, all.estimates, all.insights, all.history, all.selection);
    page.resize(1366, 700);
    page.show();
    all.selection.setLifter(all.session.lifters()[0].id);
    auto *chart = page.findChild<ui::StrengthChart *>();
    benchmark::DoNotOptimize(page.grab());
    int x = 100;
    for (auto _ : state) {
        x = x > 700 ? 100 : x + 7;
        QTest::mouseMove(chart->viewport(), QPoint(x, 80));
        QCoreApplication::processEvents();
    }
}

void openSquad(benchmark::State &state)
{
    Opened &all = opened();
    for (auto _ : state) {
        ui::SquadPage page(all.session, all.estimates);
        page.resize(1366, 700);
        page.show();
        benchmark::DoNotOptimize(page.grab());
    }
}

BENCHMARK(openReview)
    ->DenseRange(0, ui::kMeasures - 1)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();
BENCHMARK(hover)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(openSquad)->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace

int main(int argc, char **argv)
{
    QApplication app(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
}
