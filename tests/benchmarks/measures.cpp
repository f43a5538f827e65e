#include "tests/benchmarks/measures.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>

namespace benchmarks {

namespace {

constexpr double kUnmeasured = std::numeric_limits<double>::quiet_NaN();
/// Half width of a 90 % interval of the normal, in SD.
constexpr double kZ90 = 1.6448536269514722;

/// The value that 90 % of the values do not exceed (nearest rank).
double ninthDecile(std::vector<double> values)
{
    const size_t rank = size_t(std::ceil(0.9 * double(values.size()))) - 1;
    std::nth_element(values.begin(), values.begin() + long(rank), values.end());
    return values[rank];
}

} // namespace

double crpsNormal(double error, double sd)
{
    if (sd <= 0.0)
        return std::abs(error);
    const double z = error / sd;
    const double density = std::exp(-0.5 * z * z) / std::sqrt(2.0 * std::numbers::pi);
    const double below = 0.5 * std::erfc(-z / std::numbers::sqrt2);
    return sd * (z * (2.0 * below - 1.0) + 2.0 * density - 1.0 / std::sqrt(std::numbers::pi));
}

double sdOfBand(double low90, double high90)
{
    return std::log(high90 / low90) / (2.0 * kZ90);
}

Measures measure(const std::vector<Judged> &judged)
{
    if (judged.empty())
        return {0, kUnmeasured, kUnmeasured, kUnmeasured, kUnmeasured, kUnmeasured};
    struct Sum
    {
        double squares = 0.0;
        int count = 0;
    };
    std::map<int, Sum> byLifter;
    Measures measures;
    measures.count = int(judged.size());
    int withInterval = 0;
    int covered = 0;
    for (const Judged &one : judged) {
        const double error = 100.0 * (one.estimateKg / one.truthKg - 1.0);
        measures.rmse += error * error;
        measures.bias += error;
        Sum &lifter = byLifter[one.lifter];
        lifter.squares += error * error;
        ++lifter.count;
        const double logError = std::log(one.truthKg / one.estimateKg);
        measures.crps += one.sd > 0.0 ? 100.0 * crpsNormal(logError, one.sd) : std::abs(error);
        if (one.sd > 0.0) {
            ++withInterval;
            covered += std::abs(logError) <= kZ90 * one.sd ? 1 : 0;
        }
    }
    measures.rmse = std::sqrt(measures.rmse / measures.count);
    measures.bias /= measures.count;
    measures.crps /= measures.count;
    measures.coverage90 = withInterval > 0 ? 100.0 * covered / withInterval : kUnmeasured;
    std::vector<double> lifters;
    for (const auto &[lifter, sum] : byLifter)
        lifters.push_back(std::sqrt(sum.squares / sum.count));
    measures.worstDecile = ninthDecile(std::move(lifters));
    return measures;
}

} // namespace benchmarks
