#include "core/storage/roster_file.h"
#include "tests/support/set_clock.h"
#include "ui/roster/estimates.h"
#include "ui/roster/open_roster.h"

#include <QApplication>
#include <QEventLoop>
#include <QTemporaryDir>
#include <benchmark/benchmark.h>

// What a set logged costs in a roster of 300 lifters with five years of three sessions a week, four
// sets each: how long the window stands still, and how long it is until the estimate has moved. The
// baseline reads the whole log on the screen's thread and fits every lifter. Run with
// QT_QPA_PLATFORM=offscreen; making the roster takes a minute.

namespace {

constexpr int kLifters = 300;
constexpr int kSessions = 5 * 52 * 3;
constexpr int kSets = 4;
const QDate kToday(2026, 3, 2);

core::LoggedSession session(
    core::RosterFile &file, core::LifterId lifter, int number, core::VariationId bench)
{
    core::LoggedSession session;
    session.id = file.newId<core::LoggedSession>();
    session.lifter = lifter;
    session.day = kToday.addDays(-(kSessions - number) / 3 * 7 - number % 3 * 2 - 1);
    for (int i = 0; i < kSets; ++i) {
        core::SetEntry set;
        set.variation = bench;
        set.loadKg = 90.0 + 0.01 * number + 2.5 * ((number + i) % 5);
        set.repsDone = 5;
        set.rpe = 6.5 + 0.5 * ((number + i) % 5);
        session.sets.push_back(set);
    }
    return session;
}

core::VariationId benchOf(const core::RosterFile &file)
{
    for (const core::Variation &variation : file.variations())
        if (variation.lift == core::Lift::bench && variation.competition)
            return variation.id;
    return {};
}

core::RosterFile roster(const QString &path)
{
    core::RosterFile file = core::RosterFile::create(path);
    const core::VariationId bench = benchOf(file);
    for (int i = 0; i < kLifters; ++i) {
        core::Lifter lifter;
        lifter.id = file.newId<core::Lifter>();
        lifter.name = QStringLiteral("Lifter %1").arg(i);
        lifter.gear = core::usualGear(core::Unit::kilogram);
        core::Edit edit;
        edit.lifters.after.push_back(lifter);
        for (int number = 0; number < kSessions; ++number)
            edit.sessions.after.push_back(session(file, lifter.id, number, bench));
        file.apply(edit);
    }
    return file;
}

struct Opened
{
    Opened() { waitFor(&ui::Estimates::rosterFitted); }

    template <class Signal> void waitFor(Signal signal)
    {
        QEventLoop loop;
        QObject::connect(&estimates, signal, &loop, &QEventLoop::quit);
        loop.exec();
    }

    /// One set more for the first lifter, on the day after the last.
    void logSet()
    {
        core::SetEntry set;
        set.variation = session.variations().front().id;
        set.loadKg = 100.0;
        set.repsDone = 3;
        set.rpe = 8.0;
        core::LoggedSession done;
        done.id = session.newId<core::LoggedSession>();
        done.lifter = session.lifters().front().id;
        done.day = kToday;
        done.number = ++logged;
        done.sets = {set};
        core::Edit edit;
        edit.sessions.after = {done};
        session.perform(QStringLiteral("Log"), edit);
    }

    QTemporaryDir folder;
    SetClock clock;
    ui::OpenRoster session{std::make_unique<core::RosterFile>(
                               roster(folder.filePath(QStringLiteral("r.benchwright")))),
        clock.today};
    ui::Estimates estimates{session};
    int logged = 0;
};

Opened &opened()
{
    static Opened all;
    return all;
}

void standStill(benchmark::State &state)
{
    Opened &all = opened();
    for (auto _ : state) {
        all.logSet();
        state.PauseTiming();
        all.waitFor(&ui::Estimates::changed);
        state.ResumeTiming();
    }
}

void untilTheEstimateMoves(benchmark::State &state)
{
    Opened &all = opened();
    for (auto _ : state) {
        all.logSet();
        all.waitFor(&ui::Estimates::changed);
    }
}

void baselineStandStill(benchmark::State &state)
{
    Opened &all = opened();
    for (auto _ : state)
        benchmark::DoNotOptimize(all.session.sessions());
}

void baselineUntilTheEstimateMoves(benchmark::State &state)
{
    Opened &all = opened();
    for (auto _ : state)
        benchmark::DoNotOptimize(core::estimateAll(all.session.lifters(), all.session.variations(),
            all.session.sessions(), core::lastDayOf(all.session.sessions())));
}

BENCHMARK(standStill)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(50);
BENCHMARK(untilTheEstimateMoves)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(50);
BENCHMARK(baselineStandStill)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(baselineUntilTheEstimateMoves)->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace

int main(int argc, char **argv)
{
    QApplication app(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
}
