#include "core/strength/readiness_effect.h"

#include "core/strength/interval.h"

#include <algorithm>
#include <cmath>

namespace strength {

namespace {

constexpr double kMiddle = 3.0; ///< of the scale
/// A form that is nearly all prior says nothing that could be turned back.
constexpr double kLeastKept = 0.05;

RegressionGroup groupOf(std::span<const ReadinessReading> readings)
{
    std::vector<Eigen::Vector3d> rows; // readiness, form, variance
    for (const ReadinessReading &reading : readings) {
        const double variance = reading.formSd * reading.formSd;
        const double doubt = sdOfLn(reading.factor.low90, reading.factor.high90);
        const double kept = variance > 0.0 ? 1.0 - doubt * doubt / variance : 0.0;
        if (kept < kLeastKept)
            continue;
        // Posterior mean = kept x reading, posterior variance = (1 - kept) x prior variance: the
        // reading scatters around what readiness foretells by form and noise together.
        rows.emplace_back(
            reading.readiness, std::log(reading.factor.value) / kept, variance / kept);
    }
    const auto n = Eigen::Index(rows.size());
    RegressionGroup group{Eigen::MatrixXd::Ones(n, 3), Eigen::VectorXd(n), Eigen::VectorXd(n)};
    for (Eigen::Index i = 0; i < n; ++i) {
        group.covariates.row(i).tail(2) = readinessPoints(rows[size_t(i)][0]).transpose();
        group.response[i] = rows[size_t(i)][1];
        group.variance[i] = rows[size_t(i)][2];
    }
    return group;
}

} // namespace

Eigen::Vector2d readinessPoints(double readiness)
{
    const double off = readiness - kMiddle;
    return {std::min(off, 0.0), std::max(off, 0.0)};
}

Interval ReadinessEffect::factorAt(double readiness) const
{
    const Eigen::Vector2d off = readinessPoints(std::clamp(readiness, lowest, highest)) - usual;
    return factorOf(slope.dot(off), std::sqrt(off.dot(covariance * off)));
}

std::vector<ReadinessEffect> readinessEffects(
    std::span<const std::vector<ReadinessReading>> lifters)
{
    std::vector<RegressionGroup> groups;
    for (const std::vector<ReadinessReading> &readings : lifters)
        groups.push_back(groupOf(readings));
    // Before any data: no effect, within about one per cent a point (common practice, no source).
    const PooledStart start{Eigen::Vector3d::Zero(), Eigen::Vector3d(0.01, 0.008, 0.008)};
    const PooledRegression pooled = poolRegressions(groups, start);

    std::vector<ReadinessEffect> effects;
    for (size_t i = 0; i < lifters.size(); ++i) {
        const std::vector<ReadinessReading> &readings = lifters[i];
        ReadinessEffect effect;
        effect.sessions = int(readings.size());
        effect.slope = pooled.groups[i].mean.tail(2);
        effect.covariance = pooled.groups[i].covariance.bottomRightCorner(2, 2);
        if (!readings.empty()) {
            effect.lowest = effect.highest = readings.front().readiness;
            for (const ReadinessReading &reading : readings) {
                effect.usual += readinessPoints(reading.readiness) / double(readings.size());
                effect.lowest = std::min(effect.lowest, reading.readiness);
                effect.highest = std::max(effect.highest, reading.readiness);
            }
        }
        effects.push_back(effect);
    }
    return effects;
}

} // namespace strength
