#include "tests/benchmarks/evaluation.h"

#include <CLI/CLI.hpp>
#include <cmath>
#include <cstdio>
#include <iostream>

// Prints how well the engine and the baselines find the true max, one table a world.
//
//     accuracy                    on the train seeds
//     accuracy --seeds held-out   on the seeds that nobody tunes on
//
// Estimates are judged at the end of each week after a warm-up of four weeks.

namespace {

using namespace benchmarks;
using strength::ReliabilityRow;
using strength::Score;

void printRow(const std::string &name, const Measures &m)
{
    std::printf("| %-22s | %6d | %6.2f | %+6.2f | %6.2f |", name.c_str(), m.count, m.rmse, m.bias,
        m.worstDecile);
    if (std::isnan(m.coverage90))
        std::printf("      - |");
    else
        std::printf(" %6.1f |", m.coverage90);
    std::printf(" %6.2f |\n", m.crps);
}

/// Best among the baselines that know only the past, as the engine's filtered estimate does.
double bestFilteredBaseline(const Evaluation &evaluation)
{
    double best = INFINITY;
    for (const Method &method : evaluation.methods)
        if (!method.name.starts_with("engine") && !method.name.starts_with("told")
            && !method.name.ends_with("smoothed"))
            best = std::min(best, measure(method.judged).rmse);
    return best;
}

/// What the engine expected of the next session's sets beside what came: needs no truth.
void printForecasts(const Score &score)
{
    std::printf("next session's ratings: off by %.2f RIR on average (lifter's usual RIR: %.2f), "
                "said - expected %+.2f\n",
        score.rirError, score.usualError, score.rirBias);
    std::printf(
        "next session's misses: Brier %.4f (miss rate known: %.4f); chance -> came of sets:",
        score.brier, score.baseBrier);
    for (const ReliabilityRow &row : score.reliability)
        std::printf(" %.2f -> %.3f of %d;", row.meanChance, row.observed, row.sets);
    std::printf("\n");
}

void print(const simulators::Truth &truth, const Evaluation &evaluation)
{
    std::printf("\n%s: %s\n\n", truth.name.data(), truth.what.data());
    std::printf("| %-22s | %6s | %6s | %6s | %6s | %6s | %6s |\n", "method", "weeks", "RMSE %",
        "bias %", "decile", "cover", "CRPS");
    std::printf(
        "| ---------------------- | -----: | -----: | -----: | -----: | -----: | -----: |\n");
    for (const Method &method : evaluation.methods)
        printRow(method.name, measure(method.judged));
    const RefitSummary refits = summarise(evaluation.refits);
    printRow("engine, run then", refits.then);
    std::printf("\nfiltered RMSE / best baseline's: %.2f (goal 0.60)\n",
        measure(evaluation.methods.front().judged).rmse / bestFilteredBaseline(evaluation));
    std::printf("filtered path of the whole log against the engine run then: %.2f %% RMS\n",
        refits.hindsight);
    std::printf(
        "standing 'enough': %.0f %% of those run then; largest error %.1f %%, %d beyond 8 %% "
        "(goal 0)\n",
        refits.saidEnough, refits.worstEnough, refits.beyondEight);
    printForecasts(strength::score(evaluation.forecasts));
}

} // namespace

int main(int argc, char **argv)
{
    CLI::App app("Judges the strength engine on simulated worlds whose truth is known.");
    std::string seeds = "train";
    std::string world;
    EvaluationSize size;
    bool withoutStatsmodels = false;
    app.add_option("--seeds", seeds, "train or held-out")
        ->check(CLI::IsMember({"train", "held-out"}));
    app.add_option("--world", world, "only the world of this name");
    app.add_option("--lifters", size.lifters, "lifters in each roster")
        ->check(CLI::Range(1, 10000));
    app.add_option("--weeks", size.weeks, "weeks of each log")->check(CLI::Range(12, 1000));
    app.add_flag("--no-statsmodels", withoutStatsmodels, "leave the local level out");
    CLI11_PARSE(app, argc, argv);
    size.statsmodels = !withoutStatsmodels;

    const std::span<const std::uint64_t> chosen = seeds == "train"
        ? std::span<const std::uint64_t>(simulators::kTrainSeeds)
        : std::span<const std::uint64_t>(simulators::kHeldOutSeeds);
    std::printf("%zu rosters of %d lifters, %d weeks, %s seeds; judged weekly after %d weeks\n"
                "errors in %% of the true max; decile: RMSE of the lifter whom 90 %% beat\n",
        chosen.size(), size.lifters, size.weeks, seeds.c_str(), kWarmUpWeeks);
    for (const simulators::Truth &truth : simulators::truths())
        if (world.empty() || truth.name == world)
            print(truth, evaluate(truth, chosen, size));
    return 0;
}
