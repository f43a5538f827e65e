#include "core/strength/estimator.h"
#include "core/strength/forecast.h"
#include "tests/benchmarks/baselines.h"
#include "tests/benchmarks/local_level.h"
#include "tests/benchmarks/peak_memory.h"
#include "tests/simulators/truths.h"

#include <benchmark/benchmark.h>
#include <chrono>
#include <malloc.h>

// How fast the engine is, and how much memory it takes, on logs of the `mixed` world.

namespace {

using namespace benchmarks;
using strength::LifterLog;

const simulators::Truth &mixedWorld()
{
    for (const simulators::Truth &truth : simulators::truths())
        if (truth.name == "mixed")
            return truth;
    std::abort();
}

std::vector<LifterLog> logs(int lifters, int weeks)
{
    return simulators::simulateRoster(mixedWorld(), simulators::kTrainSeeds[0], lifters, weeks)
        .logs();
}

size_t countSets(const std::vector<LifterLog> &roster)
{
    size_t sets = 0;
    for (const LifterLog &log : roster)
        for (const strength::TrainingSession &session : log.sessions)
            sets += session.sets.size();
    return sets;
}

/// The last sessions of the log that together hold about `sets` sets.
LifterLog lastSets(LifterLog log, size_t sets)
{
    size_t kept = 0;
    auto first = log.sessions.end();
    while (first != log.sessions.begin() && kept < sets)
        kept += (--first)->sets.size();
    log.sessions.erase(log.sessions.begin(), first);
    return log;
}

/// Goal: 1,400 sets in 1 ms.
void oneLifterTwoYears(benchmark::State &state)
{
    const LifterLog log = lastSets(logs(1, 150).front(), 1400);
    const auto variations = simulators::benchVariations();
    for (auto _ : state)
        benchmark::DoNotOptimize(
            strength::estimateLifter(log, variations, strength::lastDayOf({&log, 1})));
    state.counters["sets"] = double(countSets({log}));
}
BENCHMARK(oneLifterTwoYears)->Unit(benchmark::kMillisecond);

/// Forecasting each session of two years of forty lifters from those before it.
void forecastingFortyLifters(benchmark::State &state)
{
    const std::vector<LifterLog> roster = logs(40, 104);
    const auto variations = simulators::benchVariations();
    for (auto _ : state)
        benchmark::DoNotOptimize(strength::forecastSessions(roster, variations));
    state.counters["sets"] = double(countSets(roster));
}
BENCHMARK(forecastingFortyLifters)->Unit(benchmark::kMillisecond)->UseRealTime();

/// Goal for the whole command on 50,000 sets: 5 s and 300 MB; this is the engine's part.
void fortyLiftersTwoYears(benchmark::State &state)
{
    const std::vector<LifterLog> roster = logs(40, 104);
    const auto variations = simulators::benchVariations();
    for (auto _ : state)
        benchmark::DoNotOptimize(
            strength::estimateRoster(roster, variations, strength::lastDayOf(roster)));
    state.counters["sets"] = double(countSets(roster));
}
BENCHMARK(fortyLiftersTwoYears)->Unit(benchmark::kMillisecond)->UseRealTime();

/// Goal: 3.5 million sets in 10 s on two cores and 500 MB, the logs themselves included.
void thousandLiftersFiveYears(benchmark::State &state)
{
    const std::vector<LifterLog> roster = logs(1000, 260);
    const auto variations = simulators::benchVariations();
    ::malloc_trim(0); // what the simulator used is not the engine's
    resetPeakMemory();
    const double before = memoryMb().value_or(0.0);
    for (auto _ : state)
        benchmark::DoNotOptimize(
            strength::estimateRoster(roster, variations, strength::lastDayOf(roster)));
    state.counters["sets"] = double(countSets(roster));
    state.counters["logs_MB"] = before;
    state.counters["peak_MB"] = peakMemoryMb().value_or(0.0);
}
BENCHMARK(thousandLiftersFiveYears)->Unit(benchmark::kSecond)->UseRealTime()->Iterations(1);

/// The local level by statsmodels on the weekly series of the same forty lifters, as a yardstick.
/// Its own clock, so neither its start nor the files count. `times_engine`: how many times longer
/// than the whole engine on the same logs.
void statsmodelsLocalLevel(benchmark::State &state)
{
    const std::vector<LifterLog> roster = logs(40, 104);
    const auto variations = simulators::benchVariations();
    std::vector<int> sundays;
    for (int week = 0; week < 104; ++week)
        sundays.push_back(simulators::kFirstDay + 7 * week + 6);
    std::vector<std::vector<double>> series;
    for (const LifterLog &log : roster)
        series.push_back(weeklyLogEpley(log, sundays));

    double theirs = 0.0;
    double ours = 0.0;
    for (auto _ : state) {
        const std::optional<LocalLevel> level = localLevel(series);
        if (!level) {
            state.SkipWithError("needs /usr/bin/python3 with statsmodels (python3-statsmodels)");
            return;
        }
        const double seconds = state.range(0) == 1 ? level->fitSeconds : level->smoothSeconds;
        state.SetIterationTime(seconds);
        theirs += seconds;
        const auto started = std::chrono::steady_clock::now();
        benchmark::DoNotOptimize(
            strength::estimateRoster(roster, variations, strength::lastDayOf(roster)));
        ours += std::chrono::duration<double>(std::chrono::steady_clock::now() - started).count();
    }
    state.counters["times_engine"] = theirs / ours;
}
BENCHMARK(statsmodelsLocalLevel)
    ->ArgName("fit")
    ->Arg(0)
    ->Arg(1)
    ->Unit(benchmark::kMillisecond)
    ->UseManualTime()
    ->Iterations(3);

} // namespace

BENCHMARK_MAIN();
