#include "tests/benchmarks/baselines.h"
#include "tests/benchmarks/evaluation.h"

#include <gmock/gmock.h>
#include <map>
#include <string>

using namespace benchmarks;

// Guards the engine's accuracy on small rosters of the train seeds. The bounds are what it reached
// when they were set, with a tenth of slack for small changes; the goals are on the held-out seeds
// and larger rosters, by the program `accuracy`.

namespace {

constexpr auto kSeeds = std::span(simulators::kTrainSeeds).first(1);

struct Bounds
{
    std::string world;
    double rmse;     ///< filtered, per cent of the true max
    double bias;     ///< either side of 0
    double coverage; ///< lowest share of truths in the 90 % interval
};

class Accuracy : public testing::TestWithParam<Bounds>
{
protected:
    void SetUp() override
    {
        for (const simulators::Truth &truth : simulators::truths())
            if (truth.name == GetParam().world)
                for (const Method &method : evaluate(truth, kSeeds, {12, 40, false}).methods)
                    methods[method.name] = measure(method.judged);
    }

    std::map<std::string, Measures> methods;
};

} // namespace

TEST_P(Accuracy, OfTheEngineDoesNotSlip)
{
    const Measures &filtered = methods.at("engine, filtered");
    EXPECT_LT(filtered.rmse, GetParam().rmse);
    EXPECT_LT(std::abs(filtered.bias), GetParam().bias);
    EXPECT_GT(filtered.coverage90, GetParam().coverage);
    EXPECT_LT(methods.at("engine, smoothed").rmse, filtered.rmse * 1.02)
        << "knowing the future does not make an estimate worse";
}

TEST_P(Accuracy, OfOneWhoIsToldTheTruthBeatsEveryBaseline)
{
    // Checks the simulators and the yardsticks, not the engine.
    const Measures &told = methods.at("told, filtered");
    for (const Baseline &baseline : windowBaselines()) {
        EXPECT_LT(told.rmse, methods.at(std::string(baseline.name)).rmse) << baseline.name;
    }
    EXPECT_LT(methods.at("told, smoothed").rmse, told.rmse);
    EXPECT_GT(told.coverage90, 80.0);
    EXPECT_LT(std::abs(told.bias), 0.5);
}

INSTANTIATE_TEST_SUITE_P(Worlds, Accuracy,
    testing::Values(Bounds{"waves", 4.8, 2.6, 25}, Bounds{"layoffs", 4.2, 1.0, 35},
        Bounds{"formula", 5.2, 3.8, 20}, Bounds{"mixed", 4.8, 2.8, 25},
        Bounds{"sparse", 6.0, 3.8, 25}),
    [](const auto &bounds) { return bounds.param.world; });
