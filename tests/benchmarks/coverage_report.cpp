// Prints how often the review's 90 % intervals hold the simulated truth, on the held-out seeds.
#include "tests/benchmarks/coverage.h"

#include <CLI/CLI.hpp>
#include <cmath>
#include <cstdio>

int main(int argc, char **argv)
{
    CLI::App app("Coverage of the review's 90 % intervals on simulated truths");
    bool train = false;
    int rosters = 10;
    app.add_flag("--train", train, "the seeds to tune on");
    app.add_option("--rosters", rosters, "rosters a world")->check(CLI::PositiveNumber);
    CLI11_PARSE(app, argc, argv);
    const std::uint64_t seed = train ? benchmarks::kCoverageTrain : benchmarks::kCoverageHeldOut;

    std::printf("%-12s %-12s %7s %7s %8s %8s %8s %8s\n", "estimate", "world", "judged", "silent",
        "cover %", "bias", "rmse", "width");
    for (const auto &all : {benchmarks::touchCoverage(seed, rosters, 24),
             benchmarks::readinessCoverage(seed, rosters, 24),
             benchmarks::carryCoverage(seed, rosters, 24)})
        for (const benchmarks::Coverage &c : all) {
            const double n = std::max(c.judged, 1);
            std::printf("%-12s %-12s %7d %7d %8.1f %8.4f %8.4f %8.4f\n", c.what.c_str(),
                c.world.c_str(), c.judged, c.silent, c.percent(), c.bias / n,
                std::sqrt(c.squares / n), c.width / n);
        }
}
