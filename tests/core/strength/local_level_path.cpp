// Prints predicted, filtered and smoothed mean and variance of each step, for
// local_level_statsmodels.py: START_MEAN START_VARIANCE READING_VARIANCE STEP_VARIANCE, and the
// series on standard input, "nan" for a step without data.
#include "tests/core/strength/local_level.h"

#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <string>

int main(int argc, char **argv)
{
    if (argc != 5)
        return 2;
    std::vector<double> series;
    for (std::string word; std::cin >> word;)
        series.push_back(std::strtod(word.c_str(), nullptr));
    const local_level::Path path = local_level::follow(
        series, {std::atof(argv[1]), std::atof(argv[2])}, std::atof(argv[3]), std::atof(argv[4]));
    for (size_t t = 0; t < series.size(); ++t)
        std::printf("%.17g %.17g %.17g %.17g %.17g %.17g\n", path.predicted[t].mean,
            path.predicted[t].variance, path.filtered[t].mean, path.filtered[t].variance,
            path.smoothed[t].mean, path.smoothed[t].variance);
    std::printf("%.17g\n", path.logLikelihood);
}
