#include "core/storage/backup.h"
#include "core/storage/database.h"
#include "core/storage/roster_file.h"

#include <QCoreApplication>
#include <QTemporaryDir>
#include <benchmark/benchmark.h>

// The roster of a busy coach: 300 lifters, five years, three sessions a week of eight sets, which
// is 234,000 sessions and 1.87 million sets. Numbers are of the warm file.

namespace {

constexpr int kLifters = 300;
constexpr int kSessions = 5 * 52 * 3;
constexpr int kSets = 8;
const QDate kFirstDay(2021, 11, 22);

core::LoggedSession session(core::SessionId id, core::LifterId lifter, int number)
{
    core::LoggedSession session;
    session.id = id;
    session.lifter = lifter;
    session.day = kFirstDay.addDays(number / 3 * 7 + number % 3 * 2);
    for (int i = 0; i < kSets; ++i) {
        core::SetEntry set;
        set.variation = {1 + (number + i) % 10};
        set.loadKg = 80.0 + 2.5 * ((number + i) % 20);
        set.repsPlanned = 5;
        set.repsDone = 5;
        if (i % 4 != 0)
            set.rpe = 6.0 + 0.5 * (i % 6);
        session.sets.push_back(set);
    }
    return session;
}

/// Made once for all benchmarks, and removed at the end.
class Roster
{
public:
    static Roster &large()
    {
        static Roster roster;
        return roster;
    }
    core::RosterFile &file() { return m_file; }
    core::LifterId anyLifter() const { return m_lifter; }

private:
    Roster()
    {
        for (int i = 0; i < kLifters; ++i) {
            core::Edit edit;
            core::Lifter lifter;
            lifter.id = m_file.newId<core::Lifter>();
            lifter.name = QStringLiteral("Lifter %1").arg(i);
            lifter.gear = core::usualGear(core::Unit::kilogram);
            edit.lifters.after = {lifter};
            for (int number = 0; number < kSessions; ++number)
                edit.sessions.after.push_back(
                    session(m_file.newId<core::LoggedSession>(), lifter.id, number));
            m_file.apply(edit);
            m_lifter = lifter.id;
        }
    }

    QTemporaryDir m_folder;
    core::RosterFile m_file =
        core::RosterFile::create(m_folder.filePath(QStringLiteral("large.benchwright")));
    core::LifterId m_lifter;
};

void readAllSessions(benchmark::State &state)
{
    const core::RosterFile &file = Roster::large().file();
    for (auto _ : state)
        benchmark::DoNotOptimize(file.sessions());
    state.counters["sets/s"] = benchmark::Counter(
        double(kLifters) * kSessions * kSets, benchmark::Counter::kIsIterationInvariantRate);
}
BENCHMARK(readAllSessions)->Unit(benchmark::kMillisecond);

void readSessionsOfOneLifter(benchmark::State &state)
{
    const core::RosterFile &file = Roster::large().file();
    for (auto _ : state)
        benchmark::DoNotOptimize(file.sessions(Roster::large().anyLifter()));
}
BENCHMARK(readSessionsOfOneLifter)->Unit(benchmark::kMillisecond);

void readLifters(benchmark::State &state)
{
    const core::RosterFile &file = Roster::large().file();
    for (auto _ : state)
        benchmark::DoNotOptimize(file.lifters());
}
BENCHMARK(readLifters)->Unit(benchmark::kMillisecond);

/// One coach action with its flush to the disk, there and back.
void moveACard(benchmark::State &state)
{
    core::RosterFile &file = Roster::large().file();
    core::Card card;
    card.id = file.newId<core::Card>();
    card.lifter = Roster::large().anyLifter();
    card.day = kFirstDay;
    card.variation = {1};
    core::Edit add;
    add.cards.after = {card};
    file.apply(add);
    core::Edit move;
    move.cards.before = {card};
    ++card.position;
    move.cards.after = {card};
    for (auto _ : state) {
        file.apply(move);
        move = core::inverse(move);
    }
    core::Edit remove;
    remove.cards.before = move.cards.before;
    file.apply(remove);
}
BENCHMARK(moveACard)->Unit(benchmark::kMillisecond);

void importSessions(benchmark::State &state)
{
    core::RosterFile &file = Roster::large().file();
    core::Edit edit;
    for (int number = 0; number < 1000; ++number)
        edit.sessions.after.push_back(session(
            file.newId<core::LoggedSession>(), Roster::large().anyLifter(), kSessions + number));
    for (auto _ : state) {
        file.apply(edit);
        state.PauseTiming();
        file.apply(core::inverse(edit));
        state.ResumeTiming();
    }
    state.counters["sets/s"] =
        benchmark::Counter(1000.0 * kSets, benchmark::Counter::kIsIterationInvariantRate);
}
BENCHMARK(importSessions)->Unit(benchmark::kMillisecond);

const QDateTime kNow(QDate(2026, 11, 25), QTime(12, 0));

/// Probing, checking and opening; the file is closed in between.
void openRoster(benchmark::State &state)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("copy.benchwright"));
    {
        core::Database db(Roster::large().file().path(), core::Database::Access::readWrite);
        core::backUpDaily(db, path, kNow.date()); // so that opening makes none
        QFile::copy(core::backupsOf(path).at(0).path, path);
    }
    state.counters["MB"] = double(QFileInfo(path).size()) / 1e6;
    for (auto _ : state)
        benchmark::DoNotOptimize(core::RosterFile::open(path, kNow));
}
BENCHMARK(openRoster)->Unit(benchmark::kMillisecond);

void backUp(benchmark::State &state)
{
    core::Database db(Roster::large().file().path(), core::Database::Access::readWrite);
    for (auto _ : state) {
        state.PauseTiming();
        const QTemporaryDir folder;
        state.ResumeTiming();
        core::backUpDaily(db, folder.filePath(QStringLiteral("large.benchwright")), kFirstDay);
    }
}
BENCHMARK(backUp)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication app(argc, argv);
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv))
        return 1;
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
