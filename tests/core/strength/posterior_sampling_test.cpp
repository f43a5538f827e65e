#include "core/strength/hard_sets.h"
#include "core/strength/lifter_fit.h"
#include "tests/core/strength/training_samples.h"

#include <gmock/gmock.h>

#include <cmath>
#include <numeric>
#include <random>

using namespace samples;
using namespace strength;

// The filter matches moments along the way; here the same posterior is sampled plainly, as a whole,
// from its density: priors of all unknowns times the likelihood of every reading at the unknowns
// themselves.

namespace {

constexpr int kWeeks = 3;
constexpr int kBorder = unratedReserve - lnKappa + 1;
constexpr int kUnknowns = kWeeks * chainSlots + kWeeks + kBorder;

LifterLog smallLog()
{
    LifterLog log;
    log.sessions.push_back(
        {4, {rated(91, 1, 8), rated(85, 3, 8), rated(78, 5, 7), unrated(80, 5)}});
    log.sessions.push_back({11, {rated(94, 1, 8.5), missed(100, 0), rated(85, 4, 9)}});
    log.sessions.push_back(
        {18, {rated(95, 1, 9), rated(87, 3, 9), rated(80, 6, 9), missed(90, 2)}});
    return log;
}

using Unknowns = Eigen::Matrix<double, kUnknowns, 1>;

/// Everything that the density needs beside the unknowns; the steps are the filter's own.
struct Target
{
    RosterPriors priors = publishedPriors(kVariations);
    LifterLog log = smallLog();
    LifterFilter filter{priors, populationMax(log)};
    std::vector<ChainStep> steps;
    double startMean = 0.0;

    Target()
    {
        for (const TrainingSession &session : log.sessions) {
            steps.push_back(filter.startWeek(session.day));
            filter.addSession(session.day, session.sets);
        }
        // The filter starts at the first session's crude reading with an SD of 15 %, which hardly
        // matters; here the same width around a round number.
        startMean = std::log(100.0);
    }

    static double lnNormal(double x, double mean, double variance)
    {
        return -0.5 * (x - mean) * (x - mean) / variance - 0.5 * std::log(variance);
    }
    static double lnPrior(double x, const Prior &prior)
    {
        return lnNormal(x, prior.mean, prior.sd * prior.sd);
    }

    double lnDensity(const Unknowns &x) const
    {
        double sum = 0.0;
        const auto chain = [&](int week) { return x.segment<chainSlots>(week * chainSlots); };
        for (int week = 0; week < kWeeks; ++week) {
            const ChainVector z = chain(week);
            if (week == 0) {
                sum += lnNormal(z[level], startMean, 0.15 * 0.15)
                    + lnNormal(z[slope], 0.0, 0.002 * 0.002) + lnNormal(z[layoff], 0.0, 1e-6)
                    + lnPrior(z[ratingBias], priors.ratingBias);
            } else {
                const ChainStep &step = steps[size_t(week)];
                const ChainVector expected = step.transition * chain(week - 1) + step.drift;
                for (int i = 0; i < chainSlots; ++i)
                    sum += lnNormal(z[i], expected[i], step.noise(i, i));
            }
        }
        Eigen::VectorXd state = Eigen::VectorXd::Zero(firstOwnSlot);
        state.tail<kBorder>() = x.tail<kBorder>();
        sum += lnPrior(state[lnKappa], priors.lnKappa) + lnPrior(state[power], priors.power)
            + lnPrior(state[compression], priors.compression)
            + lnPrior(state[fatigue], priors.fatigue)
            + lnPrior(state[unratedReserve], priors.unratedReserve);
        const SetModel model{state, filter.slots(), priors};
        for (int week = 0; week < kWeeks; ++week) {
            state.head<chainSlots>() = chain(week);
            state[dayForm] = x[kWeeks * chainSlots + week];
            // Student's t with three degrees, whose scale is the model's SD.
            const double t = state[dayForm] / priors.formSd;
            sum -= 2.0 * std::log(1.0 + t * t / 3.0);
            double hardBefore = 0.0;
            for (const TrainingSet &set : log.sessions[size_t(week)].sets) {
                const SetReadings readings = readingsOf(model, set, hardBefore, {}, false);
                for (const Reading &reading : readings.all())
                    sum += reading.moments(reading.expectation.value, 0.0).logEvidence;
                hardBefore = hardSetsAfter(hardBefore, set.missed ? 0.0 : readings.reserve);
            }
        }
        return std::isfinite(sum) ? sum : -1e300;
    }
};

struct Summary
{
    double mean = 0.0;
    double sd = 0.0;
};

/// Affine invariant ensemble sampler: Goodman & Weare (2010), Commun Appl Math Comput Sci 5:65-80.
template <class Scalar> Summary sample(const Target &target, const Unknowns &start, Scalar scalar)
{
    constexpr int kWalkers = 80, kBurnIn = 1500, kRounds = 3000;
    std::mt19937_64 random(5);
    std::uniform_real_distribution<double> uniform;
    std::normal_distribution<double> normal;
    std::vector<Unknowns> walkers(kWalkers, start);
    std::vector<double> densities;
    for (Unknowns &walker : walkers) {
        for (int i = 0; i < kUnknowns; ++i)
            walker[i] += 1e-3 * normal(random);
        densities.push_back(target.lnDensity(walker));
    }
    double sum = 0.0, squares = 0.0, count = 0.0;
    for (int round = 0; round < kBurnIn + kRounds; ++round)
        for (size_t w = 0; w < kWalkers; ++w) {
            const size_t other =
                (w + 1 + size_t(uniform(random) * (kWalkers - 1))) % size_t(kWalkers);
            const double stretch = std::pow(uniform(random) + 1.0, 2.0) / 2.0; // 0.5 .. 2
            const Unknowns moved = walkers[other] + stretch * (walkers[w] - walkers[other]);
            const double density = target.lnDensity(moved);
            const double lnChance = (kUnknowns - 1) * std::log(stretch) + density - densities[w];
            if (std::log(uniform(random)) < lnChance) {
                walkers[w] = moved;
                densities[w] = density;
            }
            if (round >= kBurnIn) {
                const double value = scalar(walkers[w]);
                sum += value;
                squares += value * value;
                count += 1.0;
            }
        }
    const double mean = sum / count;
    return {mean, std::sqrt(squares / count - mean * mean)};
}

} // namespace

TEST(Posterior, FilteredMaxAgreesWithPlainSampling)
{
    const Target target;
    const StateBelief &belief = target.filter.belief();
    Unknowns start = Unknowns::Zero();
    for (int week = 0; week < kWeeks; ++week)
        start.segment<chainSlots>(week * chainSlots) = belief.mean().head<chainSlots>();
    start.tail<kBorder>() = belief.mean().segment<kBorder>(lnKappa);
    const Summary sampled = sample(target, start, [](const Unknowns &x) {
        const auto last = x.segment<chainSlots>((kWeeks - 1) * chainSlots);
        return last[level] + last[layoff];
    });
    const double sd = std::sqrt(lnMaxVariance(belief.covariance()));
    RecordProperty("sampledMean", std::to_string(sampled.mean));
    RecordProperty("sampledSd", std::to_string(sampled.sd));
    std::printf("ln max: filter %.4f +- %.4f, sampled %.4f +- %.4f\n", lnMax(belief.mean()), sd,
        sampled.mean, sampled.sd);
    EXPECT_NEAR(lnMax(belief.mean()), sampled.mean, 0.3 * sampled.sd);
    EXPECT_NEAR(sd / sampled.sd, 1.0, 0.25);
}
