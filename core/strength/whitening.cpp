#include "core/strength/whitening.h"

#include <cmath>

namespace strength {

Whitened whiten(const Eigen::VectorXd &y, const Eigen::VectorXd &weight, const Eigen::MatrixXd &x,
    double stepRatio)
{
    const auto p = x.cols();
    Whitened out{Eigen::VectorXd(y.size()), Eigen::MatrixXd(y.size(), p), 0.0};
    // The filter's level of y and of every covariate, all with the same gain.
    Eigen::RowVectorXd level = Eigen::RowVectorXd::Zero(p + 1);
    double variance = 0.0;
    Eigen::Index rows = 0;
    for (Eigen::Index t = 0; t < y.size(); ++t) {
        if (t > 0)
            variance += stepRatio;
        if (std::isnan(y[t]))
            continue;
        const double ofInnovation = variance + 1.0 / weight[t];
        Eigen::RowVectorXd innovation(p + 1);
        innovation << y[t], x.row(t);
        innovation -= level;
        const double gain = variance / ofInnovation;
        level += gain * innovation;
        variance *= 1.0 - gain;
        const double scale = std::sqrt(ofInnovation);
        out.y[rows] = innovation[0] / scale;
        out.x.row(rows) = innovation.tail(p) / scale;
        out.logScales += std::log(scale);
        ++rows;
    }
    out.y.conservativeResize(rows);
    out.x.conservativeResize(rows, p);
    return out;
}

} // namespace strength
