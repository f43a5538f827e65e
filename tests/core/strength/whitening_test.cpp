#include "core/strength/whitening.h"

#include <cmath>
#include <gmock/gmock.h>
#include <limits>

using namespace strength;

TEST(Whitening, IsLeastSquaresWithTheWholeCovariance)
{
    // Generalised least squares by its definition, (X' V^-1 X)^-1 X' V^-1 y, V written out.
    const int n = 20;
    Eigen::VectorXd y(n), weight(n);
    Eigen::MatrixXd x(n, 2);
    for (int t = 0; t < n; ++t) {
        y[t] = std::sin(1.7 * t) + 0.1 * t;
        weight[t] = 1.0 + t % 3;
        x.row(t) << 1.0, t % 5;
    }
    const double ratio = 0.3;
    y[7] = std::numeric_limits<double>::quiet_NaN();
    const Whitened white = whiten(y, weight, x, ratio);
    const Eigen::MatrixXd fast = (white.x.transpose() * white.x).inverse();

    std::vector<int> kept;
    for (int t = 0; t < n; ++t)
        if (t != 7)
            kept.push_back(t);
    const Eigen::Index m = Eigen::Index(kept.size());
    Eigen::MatrixXd covariance(m, m);
    for (Eigen::Index i = 0; i < m; ++i)
        for (Eigen::Index j = 0; j < m; ++j)
            covariance(i, j) = ratio * std::min(kept[size_t(i)], kept[size_t(j)])
                + (i == j ? 1.0 / weight[kept[size_t(i)]] : 0.0);
    const Eigen::MatrixXd design = x(kept, Eigen::all);
    const Eigen::MatrixXd inverse = covariance.inverse();
    const Eigen::MatrixXd spread = (design.transpose() * inverse * design).inverse();
    const Eigen::VectorXd estimate =
        spread * design.transpose() * inverse * Eigen::VectorXd(y(kept));
    EXPECT_TRUE((fast * white.x.transpose() * white.y).isApprox(estimate, 1e-10));
    EXPECT_TRUE(fast.isApprox(spread, 1e-10));
}
