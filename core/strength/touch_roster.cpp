#include "core/strength/touch_roster.h"

#include "core/strength/touch_regression.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <stdexcept>
#include <utility>

namespace strength {

namespace {

constexpr double kStartCounts = 3.0; ///< lifters
constexpr int kRounds = 12;
constexpr int kDriftWindow = 56;                                 ///< days
constexpr double kStartDrift = 0.0005, kStartDriftCounts = 12.0; ///< share a week; pairs of windows
constexpr double kPlainNoise = 0.012 * 0.012; ///< of a pair's difference, share squared

/// Before any roster: a touch that is light at 85 % and slips one step for about 8 % more, known
/// only roughly (common practice, no source).
NormalBelief startPrior()
{
    NormalBelief start{Eigen::VectorXd(kTouchParameters),
        Eigen::MatrixXd::Zero(kTouchParameters, kTouchParameters)};
    start.mean << 0.0, 0.7, 0.7, 0.7, 1.3;
    start.covariance.diagonal() << 6.0, 0.5, 0.5, 0.5, 1.5;
    return start;
}

void check(const TouchReading &reading)
{
    if (!(reading.share > 0.0) || reading.score < 1 || reading.score > kTouchSteps)
        throw std::invalid_argument("touch: a share is above 0 and a score 1 to 5");
}

std::vector<WeightedTouch> alike(std::span<const TouchReading> readings, double weight)
{
    std::vector<WeightedTouch> all;
    all.reserve(readings.size());
    for (const TouchReading &reading : readings)
        all.push_back({reading, weight});
    return all;
}

/// How the sums of the scores' derivatives over sessions scatter against those over single sets,
/// along every parameter that the sets speak of.
struct Scatter
{
    double ofSets = 0.0, ofSessions = 0.0;

    void add(std::span<const TouchReading> readings, const Eigen::VectorXd &at)
    {
        std::map<int, Eigen::VectorXd> bySession;
        for (const TouchReading &reading : readings) {
            const WeightedTouch one{reading};
            Eigen::VectorXd gradient;
            (void)ordinalLogLikelihood(touchData({&one, 1}), at, &gradient);
            // The first threshold alone: it moves all of them, which is what a day does.
            auto [session, isNew] =
                bySession.try_emplace(reading.session, Eigen::VectorXd::Zero(kTouchParameters));
            session->second += gradient;
            ofSets += gradient[0] * gradient[0];
        }
        for (const auto &[session, gradient] : bySession)
            ofSessions += gradient[0] * gradient[0];
    }

    [[nodiscard]] double factor() const
    {
        return ofSets > 0.0 ? std::max(ofSessions / ofSets, 1.0) : 1.0;
    }
};

/// How far the level of a lifter's touch moves between neighbouring windows, beyond what the sets'
/// own scatter explains. Means of a random walk over two neighbouring spans of w weeks differ by
/// 2/3 w steps' variance.
struct Drift
{
    double count = kStartDriftCounts;
    double squares = kStartDriftCounts * kStartDrift * kStartDrift; ///< a week

    void add(std::span<const TouchReading> readings, const NormalBelief &lifter, double clustering)
    {
        NormalBelief onlyLevel = lifter;
        onlyLevel.covariance =
            1e-10 * Eigen::MatrixXd::Identity(kTouchParameters, kTouchParameters);
        onlyLevel.covariance(0, 0) = 100.0;
        std::map<int, std::vector<TouchReading>> windows;
        for (const TouchReading &reading : readings)
            windows[reading.day / kDriftWindow].push_back(reading);
        const double slope = std::max(lifter.mean[kTouchSlope], 0.2);
        std::optional<std::pair<int, NormalBelief>> before;
        for (const auto &[number, inside] : windows) {
            if (int(inside.size()) < kFewestTouchSets)
                continue;
            const auto fit =
                fitOrdinal(touchData(alike(inside, 1.0 / clustering)), onlyLevel).parameters;
            if (before && number == before->first + 1) {
                const double toShare = std::pow(kShareUnit / slope, 2.0);
                const double step = fit.mean[0] - before->second.mean[0];
                const double noise =
                    toShare * (fit.covariance(0, 0) + before->second.covariance(0, 0));
                // Pairs of few sets say little: their noise drowns the step.
                const double weight = 1.0 / std::pow(1.0 + noise / kPlainNoise, 2.0);
                squares +=
                    weight * (toShare * step * step - noise) / (2.0 / 3.0 * kDriftWindow / 7.0);
                count += weight;
            }
            before = {number, fit};
        }
    }

    [[nodiscard]] double perWeek() const { return std::sqrt(std::max(squares, 0.0) / count); }
};

} // namespace

OrdinalData touchData(std::span<const WeightedTouch> readings)
{
    OrdinalData data;
    data.categories = kTouchSteps;
    const auto n = Eigen::Index(readings.size());
    data.covariates.resize(n, 1);
    data.weight.resize(n);
    data.score.reserve(readings.size());
    for (Eigen::Index i = 0; i < n; ++i) {
        const WeightedTouch &one = readings[size_t(i)];
        check(one.reading);
        data.covariates(i, 0) = touchCovariate(one.reading.share);
        data.weight[i] = one.weight;
        data.score.push_back(one.reading.score - 1);
    }
    return data;
}

TouchRoster learnTouch(std::span<const std::vector<TouchReading>> lifters)
{
    const NormalBelief start = startPrior();
    TouchRoster roster{start};
    for (int round = 0; round < kRounds; ++round) {
        double count = kStartCounts;
        Eigen::VectorXd sum = kStartCounts * start.mean;
        std::vector<NormalBelief> fits;
        Scatter scatter;
        for (const std::vector<TouchReading> &readings : lifters) {
            if (readings.empty())
                continue;
            const std::vector<WeightedTouch> all = alike(readings, 1.0 / roster.clustering);
            fits.push_back(fitOrdinal(touchData(all), roster.prior).parameters);
            scatter.add(readings, fits.back().mean);
            sum += fits.back().mean;
            count += 1.0;
        }
        const Eigen::VectorXd mean = sum / count;
        Eigen::VectorXd squares =
            kStartCounts * (start.covariance.diagonal() + (start.mean - mean).cwiseAbs2());
        for (const NormalBelief &fit : fits)
            squares += (fit.mean - mean).cwiseAbs2() + fit.covariance.diagonal();
        roster.prior.mean = mean;
        roster.prior.covariance = (squares / count).asDiagonal();
        roster.clustering = scatter.factor();
    }
    Drift drift;
    for (const std::vector<TouchReading> &readings : lifters)
        if (!readings.empty())
            drift.add(readings,
                fitOrdinal(touchData(alike(readings, 1.0 / roster.clustering)), roster.prior)
                    .parameters,
                roster.clustering);
    roster.driftPerWeek = drift.perWeek();
    return roster;
}

} // namespace strength
