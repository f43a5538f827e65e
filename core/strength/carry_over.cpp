#include "core/strength/carry_over.h"

#include "core/strength/interval.h"
#include "core/strength/whitening.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace strength {

namespace {

constexpr int kFewestWeeks = 12, kFewestLifters = 2;
constexpr int kFewestReadings = 8;     ///< of a lifter, for a level and a trend of their own
constexpr double kDoseUnit = 10.0;     ///< hard lifts
constexpr double kStartSpread = 0.003; ///< ln units for a unit dose (common practice, no source)
constexpr double kStartCounts = 10.0;  ///< variations
constexpr double kWideSd = 1.0;        ///< of the effect of work in general: left free
constexpr int kRounds = 100;

/// One lifter as a series; the covariates are what work has left by each week.
struct Series
{
    Eigen::VectorXd y, weight;
    Eigen::MatrixXd own;  ///< level and trend of the lifter
    Eigen::MatrixXd dose; ///< column 0 all work, then one a variation
};

Series seriesOf(const CarryLog &log, const std::vector<int> &judged)
{
    const auto n = Eigen::Index(log.size());
    Series series{Eigen::VectorXd(n), Eigen::VectorXd::Ones(n), Eigen::MatrixXd(n, 2),
        Eigen::MatrixXd::Zero(n, Eigen::Index(judged.size()) + 1)};
    for (Eigen::Index t = 0; t < n; ++t) {
        const CarryWeek &week = log[size_t(t)];
        series.y[t] = week.lnMax.value_or(std::numeric_limits<double>::quiet_NaN());
        series.weight[t] = std::max(week.sessions, 1);
        series.own.row(t) << 1.0, double(t);
    }
    Eigen::RowVectorXd whole = Eigen::RowVectorXd::Zero(series.dose.cols()); // arrived in full
    const auto doseOf = [&](Eigen::Index week) {
        const Eigen::VectorXd &lifts = log[size_t(week)].hardLifts;
        Eigen::RowVectorXd dose(series.dose.cols());
        dose[0] = lifts.sum();
        for (size_t k = 0; k < judged.size(); ++k)
            dose[Eigen::Index(k) + 1] = lifts[judged[k]];
        return Eigen::RowVectorXd(dose / kDoseUnit);
    };
    for (Eigen::Index t = 0; t < n; ++t) {
        if (t >= kCarryWeeks)
            whole += doseOf(t - kCarryWeeks);
        series.dose.row(t) = whole;
        for (int ago = 1; ago < kCarryWeeks && ago <= t; ++ago)
            series.dose.row(t) += doseOf(t - ago) * ago / kCarryWeeks;
    }
    return series;
}

/// The regression over all lifters at one share of wandering.
struct Joint
{
    Eigen::MatrixXd precision; ///< of the doses' effects, noise variance 1
    Eigen::VectorXd pull;
    std::vector<Eigen::MatrixXd> precisions; ///< by lifter
    std::vector<Eigen::VectorXd> pulls;
    double squares = 0.0; ///< of y, the lifters' own taken out
    double logScales = 0.0, logOwn = 0.0;
    int rows = 0, own = 0;

    [[nodiscard]] Eigen::VectorXd estimate() const { return precision.ldlt().solve(pull); }
    [[nodiscard]] double noise() const
    {
        const double left = squares - pull.dot(estimate());
        return std::max(left, 1e-12) / std::max(rows - own - int(pull.size()), 1);
    }
    /// -2 x restricted log likelihood, the noise at its best.
    [[nodiscard]] double deviance() const
    {
        const int free = rows - own - int(pull.size());
        const Eigen::VectorXd pivots = precision.ldlt().vectorD();
        return 2.0 * logScales + logOwn + pivots.array().max(1e-12).log().sum()
            + free * std::log(noise());
    }
};

Joint join(std::span<const Series> all, double stepRatio)
{
    const auto p = all.empty() ? 0 : all.front().dose.cols();
    Joint joint{Eigen::MatrixXd::Zero(p, p), Eigen::VectorXd::Zero(p), {}, {}};
    for (const Series &series : all) {
        Eigen::MatrixXd both(series.y.size(), 2 + p);
        both << series.own, series.dose;
        const Whitened white = whiten(series.y, series.weight, both, stepRatio);
        // The lifter's own level and trend are taken out of y and of the doses.
        const Eigen::HouseholderQR<Eigen::MatrixXd> qr(white.x.leftCols(2));
        Eigen::MatrixXd rest(white.y.size(), p + 1);
        rest << white.y, white.x.rightCols(p);
        rest = (qr.householderQ().transpose() * rest).bottomRows(rest.rows() - 2).eval();
        const auto x = rest.rightCols(p);
        joint.precisions.push_back(x.transpose() * x);
        joint.pulls.push_back(x.transpose() * rest.col(0));
        joint.precision += joint.precisions.back();
        joint.pull += joint.pulls.back();
        joint.squares += rest.col(0).squaredNorm();
        joint.logScales += white.logScales;
        joint.logOwn += 2.0 * qr.matrixQR().diagonal().head(2).cwiseAbs().array().log().sum();
        joint.rows += int(white.y.size());
        joint.own += 2;
    }
    return joint;
}

/// Share of wandering with the least deviance: a grid over four decades, then halves of its step.
double bestStepRatio(std::span<const Series> all)
{
    const auto at = [&](double exponent) { return join(all, std::pow(10.0, exponent)).deviance(); };
    double best = -1.0, least = at(best);
    for (double step = 1.0; step > 0.1; step /= 2.0)
        for (bool moved = true; moved;) {
            moved = false;
            for (const double next : {best - step, best + step})
                if (next >= -4.0 && next <= 2.0)
                    if (const double deviance = at(next); deviance < least) {
                        least = deviance;
                        best = next;
                        moved = true;
                        break;
                    }
        }
    return std::pow(10.0, best);
}

/// How much wider the effects scatter when lifters, not weeks, are taken as independent; >= 1.
double clustering(const Joint &joint)
{
    const double lifters = double(joint.pulls.size());
    if (lifters < 4.0)
        return 1.0;
    const Eigen::VectorXd estimate = joint.estimate();
    const auto p = estimate.size();
    Eigen::MatrixXd meat = Eigen::MatrixXd::Zero(p, p);
    for (size_t i = 0; i < joint.pulls.size(); ++i) {
        const Eigen::VectorXd score = joint.pulls[i] - joint.precisions[i] * estimate;
        meat += score * score.transpose();
    }
    const Eigen::MatrixXd bread = joint.precision.ldlt().solve(Eigen::MatrixXd::Identity(p, p));
    const Eigen::ArrayXd robust =
        (bread * meat * bread).diagonal().array() * lifters / (lifters - 1);
    const Eigen::ArrayXd plain = bread.diagonal().array() * joint.noise();
    return std::max((robust / plain).mean(), 1.0);
}

/// Effects pulled toward zero by their own scatter.
NormalBelief shrunk(const Eigen::MatrixXd &precision, const Eigen::VectorXd &pull)
{
    const auto p = pull.size();
    double spread = kStartSpread;
    NormalBelief belief;
    for (int round = 0; round < kRounds; ++round) {
        Eigen::MatrixXd with = precision;
        with(0, 0) += 1.0 / (kWideSd * kWideSd);
        with.diagonal().tail(p - 1).array() += 1.0 / (spread * spread);
        const Eigen::LLT<Eigen::MatrixXd> solver(with);
        belief = {solver.solve(pull), solver.solve(Eigen::MatrixXd::Identity(p, p))};
        const double squares = kStartCounts * kStartSpread * kStartSpread
            + belief.mean.tail(p - 1).squaredNorm()
            + belief.covariance.diagonal().tail(p - 1).sum();
        spread = std::sqrt(squares / (kStartCounts + double(p - 1)));
    }
    return belief;
}

CarryOver usage(std::span<const CarryLog> lifters, int variation)
{
    CarryOver use;
    use.variation = variation;
    for (const CarryLog &log : lifters) {
        const int before = use.weeks;
        for (const CarryWeek &week : log)
            if (week.hardLifts[variation] > 0.0) {
                ++use.weeks;
                use.usualLifts += week.hardLifts[variation];
            }
        use.lifters += use.weeks > before ? 1 : 0;
    }
    if (use.weeks > 0)
        use.usualLifts /= use.weeks;
    use.enough = use.weeks >= kFewestWeeks && use.lifters >= kFewestLifters;
    return use;
}

int readingsOf(const CarryLog &log)
{
    return int(std::count_if(
        log.begin(), log.end(), [](const CarryWeek &week) { return week.lnMax.has_value(); }));
}

} // namespace

std::vector<CarryOver> carryOver(std::span<const CarryLog> lifters, int variations)
{
    std::vector<CarryLog> told;
    for (const CarryLog &log : lifters) {
        for (const CarryWeek &week : log)
            if (week.hardLifts.size() != variations)
                throw std::invalid_argument("carryOver: a week has another number of variations");
        if (readingsOf(log) >= kFewestReadings)
            told.push_back(log);
    }
    std::vector<CarryOver> result;
    std::vector<int> judged;
    for (int variation = 1; variation < variations; ++variation) {
        result.push_back(usage(told, variation));
        if (result.back().enough)
            judged.push_back(variation);
    }
    if (judged.empty())
        return result;

    std::vector<Series> all;
    for (const CarryLog &log : told)
        all.push_back(seriesOf(log, judged));
    const Joint joint = join(all, bestStepRatio(all));
    const double noise = joint.noise() * clustering(joint);
    const NormalBelief effects = shrunk(joint.precision / noise, joint.pull / noise);
    for (size_t k = 0; k < judged.size(); ++k) {
        CarryOver &one = result[size_t(judged[k] - 1)];
        const auto row = Eigen::Index(k) + 1;
        const double dose = one.usualLifts / kDoseUnit;
        one.factor =
            factorOf(dose * effects.mean[row], dose * std::sqrt(effects.covariance(row, row)));
    }
    return result;
}

} // namespace strength
