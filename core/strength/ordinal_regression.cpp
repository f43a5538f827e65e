#include "core/strength/ordinal_regression.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace strength {

namespace {

constexpr int kMostSteps = 100;

/// F(u), without overflow.
struct Logistic
{
    double value;
    double
        rest; ///< 1 + exp(-|u|): ln F(u) = min(u, 0) - ln rest, ln(1 - F(u)) = min(-u, 0) - ln rest

    explicit Logistic(double u)
    {
        const double e = std::exp(-std::abs(u));
        rest = 1.0 + e;
        value = (u >= 0.0 ? 1.0 : e) / rest;
    }
};

/// What two neighbouring thresholds alone add to ln(F(upper) - F(lower)), see Slice.
struct Gap
{
    double log = 0.0, odds = 0.0, curve = 0.0;

    Gap() = default;
    explicit Gap(double gap)
        : log(std::log(-std::expm1(-gap)))
        , odds(1.0 / std::expm1(gap))
        , curve(odds * (1.0 + odds))
    {
    }
};

/// ln(F(upper) - F(lower)) and its derivatives. Written as
///   ln F(upper) + ln(1 - F(lower)) + ln(1 - exp(lower - upper)),
/// which is exact and loses no digits in either tail.
struct Slice
{
    double log = 0.0;
    double byUpper = 0.0, byLower = 0.0;
    double upperUpper = 0.0, lowerLower = 0.0, upperLower = 0.0;

    Slice(double upper, double lower, const Gap &gap)
        : log(gap.log)
        , byUpper(gap.odds)
        , byLower(-gap.odds)
        , upperUpper(-gap.curve)
        , lowerLower(-gap.curve)
        , upperLower(gap.curve)
    {
        double rests = 1.0; // one logarithm for both ends
        if (std::isfinite(upper)) {
            const Logistic f(upper);
            rests *= f.rest;
            log += std::min(upper, 0.0);
            byUpper += 1.0 - f.value;
            upperUpper -= f.value * (1.0 - f.value);
        }
        if (std::isfinite(lower)) {
            const Logistic f(lower);
            rests *= f.rest;
            log += std::min(-lower, 0.0);
            byLower -= f.value;
            lowerLower -= f.value * (1.0 - f.value);
        }
        log -= std::log(rests);
    }
};

void checkSizes(const OrdinalData &data, const NormalBelief &prior)
{
    const auto n = data.covariates.rows();
    if (data.categories < 2 || Eigen::Index(data.score.size()) != n || data.weight.size() != n
        || prior.mean.size() != data.parameters() || prior.covariance.rows() != data.parameters()
        || prior.covariance.cols() != data.parameters())
        throw std::invalid_argument("fitOrdinal: sizes do not match");
    for (const int score : data.score)
        if (score < 0 || score >= data.categories)
            throw std::invalid_argument("fitOrdinal: a score is out of range");
}

} // namespace

Eigen::VectorXd ordinalThresholds(const Eigen::VectorXd &parameters, int categories)
{
    Eigen::VectorXd thresholds(categories - 1);
    thresholds[0] = parameters[0];
    for (int k = 1; k < categories - 1; ++k)
        thresholds[k] = thresholds[k - 1] + std::exp(parameters[k]);
    return thresholds;
}

double chanceUpTo(const Eigen::VectorXd &parameters, int categories, int category,
    const Eigen::VectorXd &covariates)
{
    const double level = covariates.dot(parameters.tail(covariates.size()));
    return Logistic(ordinalThresholds(parameters, categories)[category] - level).value;
}

double ordinalLogLikelihood(const OrdinalData &data, const Eigen::VectorXd &parameters,
    Eigen::VectorXd *gradient, Eigen::MatrixXd *hessian)
{
    const int cuts = data.categories - 1;
    const auto slopes = data.covariates.cols();
    const Eigen::VectorXd thresholds = ordinalThresholds(parameters, data.categories);
    const Eigen::VectorXd level = data.covariates * parameters.tail(slopes);

    // By thresholds and slopes first; the chain to the logs of the gaps comes last.
    Eigen::VectorXd slope = Eigen::VectorXd::Zero(cuts + slopes);
    Eigen::MatrixXd curve = Eigen::MatrixXd::Zero(cuts + slopes, cuts + slopes);
    double sum = 0.0;
    constexpr double kInfinity = std::numeric_limits<double>::infinity();
    std::vector<Gap> gaps(size_t(data.categories)); // none below the first and above the last
    for (int k = 1; k < cuts; ++k)
        gaps[size_t(k)] = Gap(thresholds[k] - thresholds[k - 1]);
    for (Eigen::Index i = 0; i < data.covariates.rows(); ++i) {
        const int score = data.score[size_t(i)];
        const double w = data.weight[i];
        const bool hasUpper = score < cuts;
        const bool hasLower = score > 0;
        const Slice slice(hasUpper ? thresholds[score] - level[i] : kInfinity,
            hasLower ? thresholds[score - 1] - level[i] : -kInfinity, gaps[size_t(score)]);
        sum += w * slice.log;
        if (!gradient && !hessian)
            continue;
        // Element by element: matrix expressions of one row cost more than they say.
        const double byLevel = w * (slice.byUpper + slice.byLower);
        const double levelLevel =
            w * (slice.upperUpper + slice.lowerLower + 2.0 * slice.upperLower);
        for (Eigen::Index a = 0; a < slopes; ++a) {
            const double x = data.covariates(i, a);
            slope[cuts + a] -= byLevel * x;
            for (Eigen::Index b = 0; b <= a; ++b)
                curve(cuts + a, cuts + b) += levelLevel * x * data.covariates(i, b);
            if (hasUpper)
                curve(cuts + a, score) -= w * (slice.upperUpper + slice.upperLower) * x;
            if (hasLower)
                curve(cuts + a, score - 1) -= w * (slice.lowerLower + slice.upperLower) * x;
        }
        if (hasUpper) {
            slope[score] += w * slice.byUpper;
            curve(score, score) += w * slice.upperUpper;
        }
        if (hasLower) {
            slope[score - 1] += w * slice.byLower;
            curve(score - 1, score - 1) += w * slice.lowerLower;
        }
        if (hasUpper && hasLower)
            curve(score, score - 1) += w * slice.upperLower;
    }

    Eigen::MatrixXd chain = Eigen::MatrixXd::Identity(cuts + slopes, cuts + slopes);
    for (int k = 0; k < cuts; ++k)
        for (int j = 0; j <= k; ++j)
            chain(k, j) = j == 0 ? 1.0 : std::exp(parameters[j]);
    if (gradient)
        *gradient = chain.transpose() * slope;
    if (hessian) {
        const Eigen::MatrixXd symmetric = curve.selfadjointView<Eigen::Lower>();
        *hessian = chain.transpose() * symmetric * chain;
        for (int j = 1; j < cuts; ++j)
            (*hessian)(j, j) += std::exp(parameters[j]) * slope.segment(j, cuts - j).sum();
    }
    return sum;
}

OrdinalFit fitOrdinal(const OrdinalData &data, const NormalBelief &prior)
{
    return fitOrdinal(data, prior, prior.mean);
}

OrdinalFit fitOrdinal(
    const OrdinalData &data, const NormalBelief &prior, const Eigen::VectorXd &start)
{
    checkSizes(data, prior);
    const auto count = prior.mean.size();
    const Eigen::MatrixXd precision =
        prior.covariance.ldlt().solve(Eigen::MatrixXd::Identity(count, count));
    const auto posterior = [&](const Eigen::VectorXd &at, Eigen::VectorXd *gradient,
                               Eigen::MatrixXd *hessian) {
        double log = ordinalLogLikelihood(data, at, gradient, hessian);
        const Eigen::VectorXd off = at - prior.mean;
        const Eigen::VectorXd pull = precision * off;
        log -= 0.5 * off.dot(pull);
        if (gradient)
            *gradient -= pull;
        if (hessian)
            *hessian -= precision;
        return log;
    };

    OrdinalFit fit{{start, prior.covariance}, false};
    Eigen::VectorXd gradient, nextGradient;
    Eigen::MatrixXd hessian, nextHessian;
    double damping = 0.0;
    double best = posterior(fit.parameters.mean, &gradient, &hessian);
    for (int step = 0; step < kMostSteps; ++step) {
        Eigen::MatrixXd damped = -hessian;
        damped.diagonal().array() += damping;
        const Eigen::LLT<Eigen::MatrixXd> solver(damped);
        Eigen::VectorXd move;
        double reached = -std::numeric_limits<double>::infinity();
        if (solver.info() == Eigen::Success) {
            move = solver.solve(gradient);
            // Within rounding of the top no step climbs any more.
            if (gradient.dot(move) < 1e-16 * (1.0 + std::abs(best)) && damping == 0.0) {
                fit.converged = true;
                break;
            }
            // Most steps climb, so that the derivatives there are the next ones.
            reached = posterior(fit.parameters.mean + move, &nextGradient, &nextHessian);
        }
        if (!(reached > best)) {
            if (gradient.cwiseAbs().maxCoeff() < 1e-6) {
                fit.converged = true;
                break;
            }
            damping = damping == 0.0 ? 1e-3 * (1.0 + hessian.diagonal().cwiseAbs().maxCoeff())
                                     : 4.0 * damping;
            continue;
        }
        fit.parameters.mean += move;
        damping = damping < 1e-6 ? 0.0 : damping / 8.0;
        best = reached;
        gradient = nextGradient;
        hessian = nextHessian;
    }
    const Eigen::LLT<Eigen::MatrixXd> curvature(-hessian);
    if (curvature.info() == Eigen::Success)
        fit.parameters.covariance = curvature.solve(Eigen::MatrixXd::Identity(count, count));
    else
        fit.converged = false;
    return fit;
}

} // namespace strength
