#pragma once

#include "core/strength/chain_smoother.h"

#include <cmath>
#include <span>
#include <vector>

/// The local level model, y_t = a_t + e_t, a_{t+1} = a_t + w_t, run on the engine's own filter and
/// smoother: the level of the chain moves, all else stands still. For comparison with published
/// values and with other programs.
namespace local_level {

struct Moment
{
    double mean = 0.0;
    double variance = 0.0;
};

struct Path
{
    std::vector<Moment> predicted, filtered, smoothed; ///< one a step
    double logLikelihood = 0.0;
};

/// @param series  NaN marks a step without data
inline Path follow(std::span<const double> series, const Moment &start, double readingVariance,
    double stepVariance)
{
    using namespace strength;
    const std::vector<VariationPrior> competition{{1.0, 0.0, 1.0}};
    StateBelief belief(ChainVector(start.mean, 0.0, 0.0, 0.0),
        ChainVector(std::sqrt(start.variance), 0.0, 0.0, 0.0), publishedPriors(competition));
    ChainStep step;
    step.noise.diagonal() = ChainVector(stepVariance, 1e-12, 1e-12, 1e-12);
    Gradient toLevel;
    toLevel.add(level, 1.0);

    const auto now = [&] {
        return Moment{belief.mean()[level], belief.covariance()(level, level)};
    };
    Path path;
    std::vector<WeekNode> nodes;
    Eigen::VectorXd cross;
    for (const double y : series) {
        if (!nodes.empty())
            belief.advance(step);
        path.predicted.push_back(now());
        if (!std::isnan(y)) {
            const Moments moments =
                readPoint(y, readingVariance, now().mean, now().variance, Gross{});
            path.logLikelihood += moments.logEvidence;
            belief.covarianceWith(toLevel, cross);
            belief.update(cross, moments);
        }
        path.filtered.push_back(now());
        nodes.push_back(weekNode(belief, step));
    }
    for (const SmoothedWeek &week : smoothWeeks(nodes, belief))
        path.smoothed.push_back({week.chain[level], week.covariance(level, level)});
    return path;
}

} // namespace local_level
