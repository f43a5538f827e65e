#include "tests/benchmarks/told_level.h"

#include <algorithm>
#include <cmath>

namespace benchmarks {

namespace {

using simulators::SimulatedLifter;
using strength::TrainingSet;

/// Levels are ln(kg) from the start's -0.5 to +0.5.
constexpr double kStep = 0.0025;
constexpr int kPoints = 401;
constexpr double kSetNoise = 0.006; ///< ln units, as in simulators::Makeup
constexpr double kTypingErrors = 0.002;
constexpr double kFormDegrees = 4.0; ///< of the t that stands for the day form

using Grid = std::vector<double>;

void normalise(Grid &grid)
{
    double sum = 0.0;
    for (const double value : grid)
        sum += value;
    for (double &value : grid)
        value /= sum;
}

/// Weights at -n..n steps, from a density of the distance.
template <class Density> Grid kernelOf(double reach, Density density)
{
    const int n = std::max(int(std::ceil(reach / kStep)), 1);
    Grid kernel;
    for (int i = -n; i <= n; ++i)
        kernel.push_back(density(i * kStep));
    normalise(kernel);
    return kernel;
}

Grid convolved(const Grid &grid, const Grid &kernel)
{
    const int n = int(kernel.size()) / 2;
    Grid result(grid.size(), 0.0);
    for (int i = 0; i < kPoints; ++i)
        for (int j = std::max(-n, -i); j <= std::min(n, kPoints - 1 - i); ++j)
            result[size_t(i)] += kernel[size_t(j + n)] * grid[size_t(i + j)];
    return result;
}

double meanSquare(std::span<const double> values)
{
    double sum = 0.0;
    for (const double value : values)
        sum += value * value;
    return values.empty() ? 0.0 : sum / double(values.size());
}

/// What the log says, day by day.
class Reader
{
public:
    explicit Reader(const SimulatedLifter &lifter)
        : m_lifter(lifter)
        , m_lowest(std::log(lifter.maxByDay.front()) - 0.5)
    {
        const double formSd = std::sqrt(std::max(meanSquare(lifter.formBySession), 1e-6));
        const double scale = formSd * std::sqrt((kFormDegrees - 2.0) / kFormDegrees);
        m_form = kernelOf(6.0 * formSd, [&](double form) {
            return std::pow(
                1.0 + form * form / (scale * scale * kFormDegrees), -0.5 * (kFormDegrees + 1.0));
        });
    }

    [[nodiscard]] double levelAt(int point) const { return m_lowest + kStep * point; }

    /// Likelihood of a session at each level.
    [[nodiscard]] Grid likelihood(size_t session) const
    {
        const strength::TrainingSession &done = m_lifter.log.sessions[session];
        const double bias = m_lifter.biasByWeek[size_t(done.day - m_lifter.firstDay) / 7];
        const simulators::Rater rater(m_lifter.rater, bias - m_lifter.rater.bias);
        Grid logs(kPoints, 0.0);
        for (size_t i = 0; i < done.sets.size(); ++i)
            for (int point = 0; point < kPoints; ++point) {
                const double cap = levelAt(point) - m_lifter.sets[session][i].fatigue;
                logs[size_t(point)] += std::log(likelihood(done.sets[i], cap, rater));
            }
        const double best = *std::max_element(logs.begin(), logs.end());
        for (double &value : logs)
            value = std::exp(value - best);
        return convolved(logs, m_form);
    }

private:
    /// Of one set, over the noise between sets: Gauss and Hermite at three points.
    double likelihood(const TrainingSet &set, double cap, const simulators::Rater &rater) const
    {
        const double reach = std::sqrt(3.0) * kSetNoise;
        const double sum = 2.0 / 3.0 * sharp(set, cap, rater)
            + (sharp(set, cap - reach, rater) + sharp(set, cap + reach, rater)) / 6.0;
        return (1.0 - kTypingErrors) * sum + kTypingErrors * 0.01;
    }

    double sharp(const TrainingSet &set, double cap, const simulators::Rater &rater) const
    {
        const double reserve = m_lifter.capacity.of(set, set.loadKg / std::exp(cap)) - set.reps;
        if (set.missed)
            return reserve >= 0.0 && reserve < 1.0 ? 1.0 : 0.0;
        return reserve >= 0.0 ? rater.chanceOf(set.rpe, reserve) : 0.0;
    }

    const SimulatedLifter &m_lifter;
    double m_lowest;
    Grid m_form;
};

/// Kernel of a day's step that makes weekly steps as large as the true ones.
Grid stepKernel(const SimulatedLifter &lifter)
{
    std::vector<double> steps;
    for (size_t day = 7; day < lifter.maxByDay.size(); day += 7)
        steps.push_back(std::log(lifter.maxByDay[day] / lifter.maxByDay[day - 7]));
    // At least half a grid step, below which the grid cannot tell.
    const double sd = std::max(std::sqrt(meanSquare(steps) / 7.0), 0.5 * kStep);
    return kernelOf(4.0 * sd, [&](double step) { return std::exp(-0.5 * step * step / sd / sd); });
}

/// The start is told within 10 %.
Grid startBelief()
{
    Grid belief;
    for (int point = 0; point < kPoints; ++point)
        belief.push_back(std::exp(-0.5 * std::pow((point - kPoints / 2) * kStep / 0.1, 2.0)));
    return belief;
}

void add(LevelSeries &series, const Grid &belief, const Reader &reader)
{
    double mean = 0.0;
    double square = 0.0;
    for (int point = 0; point < kPoints; ++point) {
        mean += belief[size_t(point)] * reader.levelAt(point);
        square += belief[size_t(point)] * std::pow(reader.levelAt(point), 2.0);
    }
    series.mean.push_back(mean);
    series.variance.push_back(square - mean * mean);
}

} // namespace

ToldLevel toldLevel(const SimulatedLifter &lifter, std::span<const int> sundays)
{
    const Reader reader(lifter);
    const Grid step = stepKernel(lifter);
    const size_t days = lifter.maxByDay.size();

    std::vector<Grid> likelihoods(days);
    for (size_t i = 0; i < lifter.log.sessions.size(); ++i)
        likelihoods[size_t(lifter.log.sessions[i].day - lifter.firstDay)] = reader.likelihood(i);
    const auto weigh = [&](Grid &belief, size_t day) {
        if (likelihoods[day].empty())
            return;
        for (size_t point = 0; point < belief.size(); ++point)
            belief[point] *= likelihoods[day][point];
        normalise(belief);
    };

    // Forward: given the days so far. Backward: likelihood of the days to come.
    std::vector<Grid> forward(days);
    std::vector<Grid> backward(days, Grid(kPoints, 1.0));
    Grid belief = startBelief();
    for (size_t day = 0; day < days; ++day) {
        belief = convolved(belief, step);
        weigh(belief, day);
        normalise(belief);
        forward[day] = belief;
    }
    for (size_t day = days - 1; day > 0; --day) {
        backward[day - 1] = backward[day];
        weigh(backward[day - 1], day);
        backward[day - 1] = convolved(backward[day - 1], step);
    }

    ToldLevel told;
    for (const int sunday : sundays) {
        const size_t day = size_t(sunday - lifter.firstDay);
        add(told.filtered, forward[day], reader);
        Grid smoothed = forward[day];
        for (size_t point = 0; point < smoothed.size(); ++point)
            smoothed[point] *= backward[day][point];
        normalise(smoothed);
        add(told.smoothed, smoothed, reader);
    }
    return told;
}

} // namespace benchmarks
