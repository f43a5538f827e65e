// Maximum likelihood by the engine, for ordinal_statsmodels.py: CATEGORIES COVARIATES, and on
// standard input one observation a line, score first. Prints the thresholds, the slopes, the
// covariance of (first threshold, ln gaps, slopes) row by row, and the log likelihood.
#include "core/strength/ordinal_regression.h"

#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <vector>

int main(int argc, char **argv)
{
    if (argc != 3)
        return 2;
    strength::OrdinalData data;
    data.categories = std::atoi(argv[1]);
    const int slopes = std::atoi(argv[2]);
    std::vector<double> values;
    for (double value = 0.0; std::cin >> value;)
        values.push_back(value);
    const auto rows = Eigen::Index(values.size()) / (slopes + 1);
    data.covariates.resize(rows, slopes);
    data.weight = Eigen::VectorXd::Ones(rows);
    for (Eigen::Index i = 0; i < rows; ++i) {
        data.score.push_back(int(values[size_t(i * (slopes + 1))]));
        for (int j = 0; j < slopes; ++j)
            data.covariates(i, j) = values[size_t(i * (slopes + 1) + 1 + j)];
    }
    const int count = data.parameters();
    const strength::OrdinalFit fit = strength::fitOrdinal(
        data, {Eigen::VectorXd::Zero(count), 1e10 * Eigen::MatrixXd::Identity(count, count)});
    const Eigen::IOFormat plain(Eigen::FullPrecision, Eigen::DontAlignCols, " ", "\n");
    std::cout << strength::ordinalThresholds(fit.parameters.mean, data.categories)
                     .transpose()
                     .format(plain)
              << '\n'
              << fit.parameters.mean.tail(slopes).transpose().format(plain) << '\n'
              << fit.parameters.covariance.format(plain) << '\n';
    std::printf("%.17g\n", strength::ordinalLogLikelihood(data, fit.parameters.mean));
}
