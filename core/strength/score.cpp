#include "core/strength/score.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace strength {

namespace {

constexpr std::array kRowEdges{0.0, 0.01, 0.02, 0.05, 0.1, 0.2, 0.4, 0.6, 0.8, 1.0};

void check(const SetForecast &forecast)
{
    if (!(forecast.missChance >= 0.0 && forecast.missChance <= 1.0))
        throw std::invalid_argument("the chance of a miss lies in 0..1");
    if (!std::isfinite(forecast.rir) || !std::isfinite(forecast.usualRir)
        || !std::isfinite(forecast.saidRir.value_or(0.0)))
        throw std::invalid_argument("reps in reserve must be finite");
}

double ratio(double sum, int count)
{
    return count > 0 ? sum / count : std::numeric_limits<double>::quiet_NaN();
}

size_t rowOf(double chance)
{
    const auto above = std::upper_bound(kRowEdges.begin() + 1, kRowEdges.end() - 1, chance);
    return size_t(above - kRowEdges.begin()) - 1;
}

} // namespace

Score score(std::span<const SetForecast> forecasts)
{
    Score score;
    std::array<ReliabilityRow, kRowEdges.size() - 1> rows{};
    double squares = 0.0;
    double errors = 0.0;
    double usualErrors = 0.0;
    double surplus = 0.0;
    for (const SetForecast &forecast : forecasts) {
        check(forecast);
        const double outcome = forecast.missed ? 1.0 : 0.0;
        squares += (forecast.missChance - outcome) * (forecast.missChance - outcome);
        ++score.sets;
        score.missed += forecast.missed ? 1 : 0;
        ReliabilityRow &row = rows[rowOf(forecast.missChance)];
        ++row.sets;
        row.meanChance += forecast.missChance;
        row.observed += outcome;
        if (forecast.saidRir) {
            ++score.rated;
            errors += std::abs(*forecast.saidRir - forecast.rir);
            usualErrors += std::abs(*forecast.saidRir - forecast.usualRir);
            surplus += *forecast.saidRir - forecast.rir;
        }
    }
    score.rirError = ratio(errors, score.rated);
    score.usualError = ratio(usualErrors, score.rated);
    score.rirBias = ratio(surplus, score.rated);
    score.brier = ratio(squares, score.sets);
    const double missRate = ratio(score.missed, score.sets);
    score.baseBrier = missRate * (1.0 - missRate);
    for (size_t i = 0; i < rows.size(); ++i)
        if (ReliabilityRow &row = rows[i]; row.sets > 0) {
            row.from = kRowEdges[i];
            row.to = kRowEdges[i + 1];
            row.meanChance /= row.sets;
            row.observed /= row.sets;
            score.reliability.push_back(row);
        }
    return score;
}

} // namespace strength
