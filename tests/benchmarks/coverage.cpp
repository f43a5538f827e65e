#include "tests/benchmarks/coverage.h"

#include "core/strength/interval.h"
#include "core/strength/readiness_effect.h"
#include "tests/simulators/carry_truth.h"
#include "tests/simulators/random.h"
#include "tests/simulators/touch_truth.h"

#include <algorithm>
#include <cmath>

namespace benchmarks {

void Coverage::add(const strength::Interval &interval, double truth)
{
    ++judged;
    covered += truth >= interval.low90 && truth <= interval.high90 ? 1 : 0;
    bias += interval.value - truth;
    squares += (interval.value - truth) * (interval.value - truth);
    width += interval.high90 - interval.low90;
}

std::vector<Coverage> touchCoverage(std::uint64_t seed, int rosters, int lifters)
{
    std::vector<Coverage> all;
    for (const simulators::TouchTruth &truth : simulators::touchTruths()) {
        Coverage coverage{std::string(truth.name), "touch hold"};
        for (int r = 0; r < rosters; ++r) {
            const auto roster = simulators::simulateTouch(truth, seed + std::uint64_t(r), lifters);
            std::vector<std::vector<strength::TouchReading>> readings;
            for (const simulators::TouchLifter &lifter : roster)
                readings.push_back(lifter.readings);
            const strength::TouchRoster learned = strength::learnTouch(readings);
            for (const simulators::TouchLifter &lifter : roster)
                for (const int wanted : {2, 3}) {
                    const strength::TouchHold hold =
                        strength::touchHold(lifter.readings, learned, wanted, {lifter.lastDay});
                    if (hold.standing == strength::TouchStanding::flat
                        || hold.standing == strength::TouchStanding::few)
                        ++coverage.silent;
                    else
                        coverage.add(hold.share, lifter.hold[size_t(wanted - 1)]);
                }
        }
        all.push_back(coverage);
    }
    return all;
}

std::vector<Coverage> carryCoverage(std::uint64_t seed, int rosters, int lifters)
{
    std::vector<Coverage> all;
    for (const simulators::CarryTruth &truth : simulators::carryTruths()) {
        Coverage coverage{std::string(truth.name), "carry-over"};
        for (int r = 0; r < rosters; ++r) {
            const auto roster =
                simulators::simulateCarryOver(truth, seed + std::uint64_t(r), lifters);
            for (const strength::CarryOver &one :
                strength::carryOver(roster.logs, simulators::kCarryVariations)) {
                if (one.enough)
                    coverage.add(one.factor, std::exp(roster.effect[size_t(one.variation)]));
                else
                    ++coverage.silent;
            }
        }
        all.push_back(coverage);
    }
    return all;
}

namespace {

/// A world of readiness: whether few points count more than many, and how heavy the tails are.
struct ReadinessTruth
{
    const char *name;
    bool onlyLow; ///< readiness above 3 makes no difference
    int tailDegrees;
};

/// One lifter's true shift at a readiness of 2, and the readings that an estimator would make.
struct ReadinessLifter
{
    std::vector<strength::ReadinessReading> readings;
    double shiftAtTwo = 0.0;
};

ReadinessLifter simulateReadiness(const ReadinessTruth &truth, simulators::Random random)
{
    constexpr double kFormSd = 0.018;
    const double slope = random.trait(0.006, 0.004);
    const double mood = random.trait(3.4, 0.4);
    const double noise = random.uniform(0.012, 0.03);
    const auto effect = [&](double readiness) {
        return slope * (truth.onlyLow ? 1.6 * std::min(readiness - 3.0, 0.0) : readiness - 3.0);
    };
    ReadinessLifter lifter;
    double sum = 0.0;
    const int sessions = random.whole(15, 200);
    for (int i = 0; i < sessions; ++i) {
        const double readiness = std::clamp(std::round(random.normal(mood, 0.9)), 1.0, 5.0);
        const double form = effect(readiness) + random.heavyTailed(truth.tailDegrees, kFormSd);
        const double read = form + random.heavyTailed(5, noise);
        const double kept = kFormSd * kFormSd / (kFormSd * kFormSd + noise * noise);
        lifter.readings.push_back(
            {readiness, strength::factorOf(kept * read, kFormSd * std::sqrt(1.0 - kept)), kFormSd});
        sum += effect(readiness);
    }
    lifter.shiftAtTwo = effect(2.0) - sum / sessions;
    return lifter;
}

} // namespace

std::vector<Coverage> readinessCoverage(std::uint64_t seed, int rosters, int lifters)
{
    std::vector<Coverage> all;
    for (const ReadinessTruth &truth : {ReadinessTruth{"straight", false, 30},
             ReadinessTruth{"tails", false, 4}, ReadinessTruth{"only_low", true, 5}}) {
        Coverage coverage{truth.name, "readiness"};
        for (int r = 0; r < rosters; ++r) {
            simulators::Random luck(seed + std::uint64_t(r));
            std::vector<std::vector<strength::ReadinessReading>> readings;
            std::vector<double> shifts;
            for (int i = 0; i < lifters; ++i) {
                ReadinessLifter lifter = simulateReadiness(truth, luck.fork());
                readings.push_back(std::move(lifter.readings));
                shifts.push_back(lifter.shiftAtTwo);
            }
            const auto effects = strength::readinessEffects(readings);
            for (size_t i = 0; i < effects.size(); ++i)
                coverage.add(effects[i].factorAt(2.0), std::exp(shifts[i]));
        }
        all.push_back(coverage);
    }
    return all;
}

} // namespace benchmarks
