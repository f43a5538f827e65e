#include "tests/simulators/rep_truth.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace simulators {

namespace {

/// Above the max: one per cent too heavy fails about a third of the way up.
double failedRep(double share)
{
    return std::max(1.0 - (share - 1.0) / 0.03, 0.0);
}

struct ChartRow
{
    double reps;
    double share;
};

constexpr std::array<ChartRow, 13> kChart{{{1, 1.00}, {2, 0.95}, {3, 0.93}, {4, 0.90}, {5, 0.87},
    {6, 0.85}, {7, 0.83}, {8, 0.80}, {9, 0.77}, {10, 0.75}, {11, 0.70}, {12, 0.67}, {15, 0.65}}};

/// Slopes of reps by share at the rows: Fritsch and Carlson (1980), harmonic means, so that the
/// curve between the rows never turns.
std::array<double, kChart.size()> chartSlopes()
{
    std::array<double, kChart.size() - 1> secant{};
    for (size_t i = 0; i < secant.size(); ++i)
        secant[i] = (kChart[i + 1].reps - kChart[i].reps) / (kChart[i + 1].share - kChart[i].share);
    std::array<double, kChart.size()> slope{};
    slope.front() = secant.front();
    slope.back() = secant.back();
    for (size_t i = 1; i < secant.size(); ++i)
        slope[i] = 2.0 * secant[i - 1] * secant[i] / (secant[i - 1] + secant[i]);
    return slope;
}

double chartReps(double share)
{
    static const auto slope = chartSlopes();
    if (share <= kChart.back().share)
        return kChart.back().reps + slope.back() * (share - kChart.back().share);
    size_t i = 0;
    while (share < kChart[i + 1].share)
        ++i;
    const double width = kChart[i + 1].share - kChart[i].share;
    const double t = (share - kChart[i].share) / width;
    const double t2 = t * t;
    const double t3 = t2 * t;
    return (2 * t3 - 3 * t2 + 1) * kChart[i].reps + (t3 - 2 * t2 + t) * width * slope[i]
        + (3 * t2 - 2 * t3) * kChart[i + 1].reps + (t3 - t2) * width * slope[i + 1];
}

} // namespace

RepTruth hyperbola(double span, double bend)
{
    return [=](double share) {
        if (share >= 1.0)
            return failedRep(share);
        return 1.0 + span * std::pow(1.0 / share - 1.0, 1.0 / bend);
    };
}

RepTruth fallToFloor(double floor, double rate)
{
    return [=](double share) {
        if (share >= 1.0)
            return failedRep(share);
        // Nobody goes on for ever: below a share just over the floor the curve stays where it is.
        const double above = std::max((share - floor) / (1.0 - floor), 0.05);
        return 1.0 - std::log(above) / rate;
    };
}

RepTruth handbookChart(double few, double many)
{
    return [=](double share) {
        if (share >= 1.0)
            return failedRep(share);
        const double beyondFirst = chartReps(share) - 1.0;
        const double stretch = few + (many - few) * std::min(beyondFirst / 14.0, 1.0);
        return 1.0 + stretch * beyondFirst;
    };
}

} // namespace simulators
