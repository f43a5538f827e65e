#include "core/csv/catalogue_csv.h"
#include "core/exchange/estimates_csv.h"
#include "core/exchange/import_plan.h"

#include <QBuffer>
#include <benchmark/benchmark.h>

// How fast a log goes through the program: 40 lifters, 104 weeks, 4 sessions of 3 sets a week,
// 49,920 lines. The window reads and plans an import off the screen's thread.

namespace {

using namespace core;

constexpr int kLifters = 40;
constexpr int kWeeks = 104;
constexpr int kSessionsAWeek = 4;
constexpr int kSetsASession = 3;
const QDate kFirstMonday(2024, 1, 1);

QByteArray bigLog()
{
    static const char *const kVariations[] = {"comp", "off_chest_pause", "feet_up"};
    QByteArray text = "lifter,date,variation,load_kg,reps_planned,reps_done,rpe,failed\n";
    for (int lifter = 0; lifter < kLifters; ++lifter)
        for (int session = 0; session < kWeeks * kSessionsAWeek; ++session) {
            const QDate day =
                kFirstMonday.addDays(session / kSessionsAWeek * 7 + session % kSessionsAWeek * 2);
            for (int set = 0; set < kSetsASession; ++set)
                text += "Lifter " + QByteArray::number(lifter) + ','
                    + day.toString(Qt::ISODate).toLatin1() + ',' + kVariations[set] + ','
                    + QByteArray::number(80.0 + lifter + 2.5 * (session % 5), 'f', 1) + ",5,5,"
                    + QByteArray::number(7.0 + 0.5 * (session % 4), 'f', 1) + ",0\n";
        }
    return text;
}

LogTable readBigLog(const QByteArray &text)
{
    QBuffer buffer;
    buffer.setData(text);
    buffer.open(QIODevice::ReadOnly);
    return readLog(buffer, QStringLiteral("log.csv"), kFirstMonday.addYears(10));
}

void readALog(benchmark::State &state)
{
    const QByteArray text = bigLog();
    for (auto _ : state)
        benchmark::DoNotOptimize(readBigLog(text));
    state.SetBytesProcessed(state.iterations() * text.size());
}

void planANewLog(benchmark::State &state)
{
    const LogTable log = readBigLog(bigLog());
    const RosterRows empty{{}, builtInCatalogue(), {}};
    for (auto _ : state)
        benchmark::DoNotOptimize(planImport(log, {}, empty, countingIds()));
}

void planALogThatIsKnown(benchmark::State &state)
{
    const LogTable log = readBigLog(bigLog());
    RosterRows roster{{}, builtInCatalogue(), {}};
    const Edit edit = planImport(log, {}, roster, countingIds()).edit;
    roster.lifters = edit.lifters.after;
    roster.sessions = edit.sessions.after;
    for (auto _ : state)
        benchmark::DoNotOptimize(planImport(log, {}, roster, countingIds()));
}

/// What `benchwright estimate` does, without the disk. Goal: 5 s.
void fromLogToEstimates(benchmark::State &state)
{
    const QByteArray text = bigLog();
    const std::vector<Variation> &catalogue = builtInCatalogue();
    for (auto _ : state) {
        const Edit edit = planImport(readBigLog(text), {}, {{}, catalogue, {}}, countingIds()).edit;
        const std::vector<LoggedSession> &sessions = edit.sessions.after;
        benchmark::DoNotOptimize(writeEstimates(edit.lifters.after,
            estimateAll(edit.lifters.after, catalogue, sessions, lastDayOf(sessions))));
    }
}

BENCHMARK(readALog)->Unit(benchmark::kMillisecond);
BENCHMARK(planANewLog)->Unit(benchmark::kMillisecond);
BENCHMARK(planALogThatIsKnown)->Unit(benchmark::kMillisecond);
BENCHMARK(fromLogToEstimates)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
