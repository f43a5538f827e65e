#include "tests/simulators/carry_truth.h"

#include "tests/simulators/random.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace simulators {

namespace {

constexpr std::array<CarryTruth, 4> kCarryTruths{{
    {"straight", "even over three weeks, the same for all", 0.0025, 1.0, 0.0, 0.0, false},
    {"nothing", "no variation does anything", 0.0, 1.0, 0.0, 0.0, false},
    {"flattening", "dose flattens, lifters differ by half", 0.003, 0.6, 0.5, 0.0, false},
    {"fading", "arrives late, fades by 4 % a week, lifters differ", 0.003, 0.8, 0.5, 0.04, true},
}};

constexpr double kWorkEffect = 0.0008; ///< of ten hard lifts of any kind

/// Share of a week's effect that is there `weeks` later.
double present(const CarryTruth &truth, int weeks)
{
    if (weeks < 1)
        return 0.0;
    const double arrived = truth.late ? 1.0 - std::pow(0.45, weeks) : std::min(weeks / 3.0, 1.0);
    return arrived * std::pow(1.0 - truth.fadePerWeek, weeks - 1);
}

double response(const CarryTruth &truth, double lifts)
{
    return std::pow(lifts / 10.0, truth.doseCurve);
}

} // namespace

std::span<const CarryTruth> carryTruths()
{
    return kCarryTruths;
}

CarryRoster simulateCarryOver(const CarryTruth &truth, std::uint64_t seed, int lifters)
{
    Random luck(seed);
    CarryRoster roster;
    std::array<double, kCarryVariations> effect{};
    for (size_t v = 1; v < effect.size(); ++v)
        effect[v] = truth.effectSd * luck.normal();
    std::array<double, kCarryVariations> sums{};
    std::array<int, kCarryVariations> uses{};

    for (int i = 0; i < lifters; ++i) {
        Random random = luck.fork();
        const int weeks = random.whole(40, 130);
        std::array<double, kCarryVariations> own{};
        for (size_t v = 1; v < own.size(); ++v)
            own[v] = effect[v] * std::max(random.trait(1.0, truth.lifterSd), 0.0);
        const double trend = random.normal(0.0005, 0.001);
        const double stepSd = random.uniform(0.004, 0.009);
        const double noiseSd = random.uniform(0.015, 0.035);
        double walk = std::log(random.uniform(60.0, 180.0));
        strength::CarryLog log;
        std::array<bool, kCarryVariations> inBlock{};
        for (int week = 0; week < weeks; ++week) {
            if (week % 5
                == 0) // variations change by blocks, so doses of neighbouring weeks are alike
                for (size_t v = 1; v < inBlock.size(); ++v)
                    inBlock[v] = random.chance(0.35);
            strength::CarryWeek entry;
            entry.hardLifts = Eigen::VectorXd::Zero(kCarryVariations);
            const double wave = week % 5 == 4 ? 0.4 : 1.0;
            entry.hardLifts[0] = std::round(wave * random.uniform(8.0, 30.0));
            for (int v = 1; v < kCarryVariations; ++v)
                if (inBlock[size_t(v)] && random.chance(0.85)) {
                    entry.hardLifts[v] =
                        std::round(std::max(wave * random.uniform(5.0, 20.0), 1.0));
                    sums[size_t(v)] +=
                        effect[size_t(v)] * present(truth, 3) * response(truth, entry.hardLifts[v]);
                    ++uses[size_t(v)];
                }
            walk += trend + random.heavyTailed(4, stepSd);
            double level = walk;
            for (int before = 0; before < week; ++before) {
                const Eigen::VectorXd &lifts = log[size_t(before)].hardLifts;
                double gain = kWorkEffect * lifts.sum() / 10.0;
                for (int v = 1; v < kCarryVariations; ++v)
                    if (lifts[v] > 0.0)
                        gain += own[size_t(v)] * response(truth, lifts[v]);
                level += present(truth, week - before) * gain;
            }
            entry.sessions = random.whole(0, 3);
            if (entry.sessions > 0)
                entry.lnMax = level + random.heavyTailed(4, noiseSd / std::sqrt(entry.sessions));
            log.push_back(std::move(entry));
        }
        roster.logs.push_back(std::move(log));
    }
    for (size_t v = 0; v < effect.size(); ++v)
        roster.effect.push_back(uses[v] > 0 ? sums[v] / uses[v] : 0.0);
    return roster;
}

} // namespace simulators
