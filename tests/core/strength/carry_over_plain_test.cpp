#include "core/strength/carry_over.h"

#include <Eigen/Dense>
#include <cmath>
#include <gtest/gtest.h>

// Carry-over once more, written out plainly: the whole covariance of every lifter's readings, the
// lifter's own level and trend as columns of their own, the share of wandering given.

using namespace strength;

namespace {

constexpr int kPlainVariations = 3;
constexpr int kPlainWeeks = 40;

/// Three lifters; readings that wander by up to `walk` a week, week after week to the same side,
/// and err by about `noise` to either side in turn, ln units: so none is taken for the other.
std::vector<CarryLog> plainLogs(double walk, double noise)
{
    std::vector<CarryLog> logs(3);
    for (int lifter = 0; lifter < 3; ++lifter) {
        double level = 4.6;
        for (int t = 0; t < kPlainWeeks; ++t) {
            CarryWeek week;
            week.hardLifts = Eigen::VectorXd::Zero(kPlainVariations);
            week.hardLifts << 8.0 + 3.0 * std::sin(1.1 * t + lifter),
                (t + lifter) / 5 % 2 == 0 ? 6.0 : 0.0, (t + 2 * lifter) / 3 % 3 == 0 ? 9.0 : 0.0;
            level += walk * std::sin(0.5 * t + 4.1 * lifter);
            week.sessions = 1 + t % 3;
            if (t % 7 != 5)
                week.lnMax = level
                    + noise * (t % 2 == 0 ? 1.0 : -1.0) * (1.0 + 0.4 * std::sin(1.7 * t + lifter));
            logs[size_t(lifter)].push_back(week);
        }
    }
    return logs;
}

std::vector<Interval> plainCarryOver(const std::vector<CarryLog> &logs, double stepRatio)
{
    const int lifters = int(logs.size());
    const int p = kPlainVariations, own = 2 * lifters;
    Eigen::MatrixXd information = Eigen::MatrixXd::Zero(own + p, own + p);
    Eigen::VectorXd pull = Eigen::VectorXd::Zero(own + p);
    double squares = 0.0;
    int rows = 0;
    for (int lifter = 0; lifter < lifters; ++lifter) {
        const CarryLog &log = logs[size_t(lifter)];
        std::vector<int> read;
        for (int t = 0; t < int(log.size()); ++t)
            if (log[size_t(t)].lnMax)
                read.push_back(t);
        const auto n = Eigen::Index(read.size());
        Eigen::MatrixXd x = Eigen::MatrixXd::Zero(n, own + p), covariance(n, n);
        Eigen::VectorXd y(n);
        for (Eigen::Index i = 0; i < n; ++i) {
            const int t = read[size_t(i)];
            y[i] = *log[size_t(t)].lnMax;
            x(i, 2 * lifter) = 1.0;
            x(i, 2 * lifter + 1) = t;
            for (int before = 0; before < t; ++before) {
                const Eigen::VectorXd &lifts = log[size_t(before)].hardLifts;
                const double arrived = std::min(t - before, 3) / 3.0 / 10.0; // of ten lifts
                x(i, own) += arrived * lifts.sum();
                for (int v = 1; v < p; ++v)
                    x(i, own + v) += arrived * lifts[v];
            }
            for (Eigen::Index j = 0; j < n; ++j)
                covariance(i, j) = stepRatio * std::min(t, read[size_t(j)])
                    + (i == j ? 1.0 / log[size_t(t)].sessions : 0.0);
        }
        const Eigen::MatrixXd inverse = covariance.inverse();
        information += x.transpose() * inverse * x;
        pull += x.transpose() * inverse * y;
        squares += y.dot(inverse * y);
        rows += int(n);
    }
    const Eigen::VectorXd estimate = information.ldlt().solve(pull);
    const double noise = (squares - pull.dot(estimate)) / (rows - own - p);
    // The doses alone, the lifters' own taken out (Schur complement).
    const Eigen::MatrixXd precision = information.bottomRightCorner(p, p)
        - information.bottomLeftCorner(p, own)
            * information.topLeftCorner(own, own).ldlt().solve(information.topRightCorner(own, p));
    const Eigen::VectorXd effect = precision * estimate.tail(p) / noise;
    // Between variations: 0.3 % for ten lifts, counting as ten of them; work in general is free
    // within an SD of 1.
    double variance = 0.003 * 0.003;
    Eigen::VectorXd mean;
    Eigen::MatrixXd spread;
    for (int round = 0; round < 2000; ++round) {
        Eigen::VectorXd prior = Eigen::VectorXd::Constant(p, 1.0 / variance);
        prior[0] = 1.0;
        spread = (precision / noise + Eigen::MatrixXd(prior.asDiagonal())).inverse();
        mean = spread * effect;
        variance = (10.0 * 0.003 * 0.003 + mean.tail(p - 1).squaredNorm()
                       + spread.diagonal().tail(p - 1).sum())
            / (10.0 + p - 1);
    }
    std::vector<Interval> factors;
    for (int v = 1; v < p; ++v) {
        const double dose = (v == 1 ? 6.0 : 9.0) / 10.0;
        factors.push_back(factorOf(dose * mean[v], dose * std::sqrt(spread(v, v))));
    }
    return factors;
}

void expectPlain(const std::vector<CarryLog> &logs, double stepRatio)
{
    const auto found = carryOver(logs, kPlainVariations);
    const auto plain = plainCarryOver(logs, stepRatio);
    ASSERT_EQ(found.size(), plain.size());
    for (size_t i = 0; i < plain.size(); ++i) {
        EXPECT_TRUE(found[i].enough);
        EXPECT_NEAR(found[i].factor.value, plain[i].value, 2e-8);
        EXPECT_NEAR(found[i].factor.low90, plain[i].low90, 2e-8);
        EXPECT_NEAR(found[i].factor.high90, plain[i].high90, 2e-8);
    }
}

} // namespace

TEST(CarryOverPlainly, WhereNothingWandersTheShareOfItIsTheLeast)
{
    expectPlain(plainLogs(0.0, 0.01), 1e-4);
}

TEST(CarryOverPlainly, WhereReadingsDoNotErrTheShareOfWanderingIsTheMost)
{
    expectPlain(plainLogs(0.01, 0.0), 100.0);
}

TEST(CarryOverPlainly, WorkInGeneralIsLeftFree)
{
    // So noisy that the width left to it, an SD of 1, has its say.
    expectPlain(plainLogs(0.0, 3.0), 1e-4);
}
