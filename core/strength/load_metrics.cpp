#include "core/strength/load_metrics.h"

#include <cmath>
#include <numeric>
#include <stdexcept>

namespace strength {

double tonnage(std::span<const TrainingSet> sets)
{
    double sum = 0.0;
    for (const TrainingSet &set : sets)
        sum += set.loadKg * set.reps;
    return sum;
}

int numberOfLifts(std::span<const TrainingSet> sets)
{
    int sum = 0;
    for (const TrainingSet &set : sets)
        sum += set.reps;
    return sum;
}

std::optional<double> averageIntensity(std::span<const TrainingSet> sets, double maxKg)
{
    if (!(maxKg > 0.0))
        throw std::invalid_argument("averageIntensity: the max must be above 0");
    const int reps = numberOfLifts(sets);
    if (reps == 0)
        return std::nullopt;
    return tonnage(sets) / (reps * maxKg);
}

double sessionLoad(double rating, double minutes)
{
    if (!(rating >= 0.0 && rating <= 10.0) || !(minutes >= 0.0))
        throw std::invalid_argument("sessionLoad: the rating is 0 to 10, the minutes not below 0");
    return rating * minutes;
}

std::optional<double> monotony(std::span<const double> dailyLoads)
{
    const double n = double(dailyLoads.size());
    if (n < 2.0)
        return std::nullopt;
    const double mean = std::accumulate(dailyLoads.begin(), dailyLoads.end(), 0.0) / n;
    double squares = 0.0;
    for (const double load : dailyLoads)
        squares += (load - mean) * (load - mean);
    if (squares == 0.0)
        return std::nullopt;
    return mean / std::sqrt(squares / (n - 1.0));
}

std::optional<double> strain(std::span<const double> dailyLoads)
{
    const std::optional<double> alike = monotony(dailyLoads);
    if (!alike)
        return std::nullopt;
    return *alike * std::accumulate(dailyLoads.begin(), dailyLoads.end(), 0.0);
}

} // namespace strength
