#include "core/strength/pooling.h"

#include "core/strength/lifter_fit.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <exception>
#include <limits>
#include <mutex>
#include <thread>

namespace strength {

namespace {

constexpr int kNoLater = std::numeric_limits<int>::min();
constexpr size_t kSample = 64; ///< lifters
constexpr int kPoolingRounds = 4;
constexpr double kPublishedLifters = 6.0; ///< what the published values count
constexpr double kPublishedWeeks = 200.0, kPublishedSessions = 100.0, kPublishedRatings = 300.0;

/// Sums over lifters of one constant's posterior.
struct ConstantSums
{
    double count = 0.0, mean = 0.0, square = 0.0;

    void add(double posteriorMean, double variance)
    {
        count += 1.0;
        mean += posteriorMean;
        square += posteriorMean * posteriorMean + variance;
    }
    /// The prior that explains them, with `published` standing for kPublishedLifters of them.
    [[nodiscard]] Prior prior(const Prior &published) const
    {
        const double n = count + kPublishedLifters;
        const double m = (mean + kPublishedLifters * published.mean) / n;
        const double published2 = published.sd * published.sd + published.mean * published.mean;
        const double variance = (square + kPublishedLifters * published2) / n - m * m;
        return {m, std::sqrt(std::max(variance, 1e-8))};
    }
};

struct VarianceSums
{
    double count = 0.0, square = 0.0;

    [[nodiscard]] double sd(double publishedSd, double published) const
    {
        return std::sqrt((square + published * publishedSd * publishedSd) / (count + published));
    }
};

struct RosterSums
{
    ConstantSums lnKappa, ratingBias, fatigue, speedShift, speedStretch;
    std::vector<ConstantSums> lnRatio, lnRepCost;
    VarianceSums steps, forms, ratings;

    explicit RosterSums(size_t variations)
        : lnRatio(variations)
        , lnRepCost(variations)
    {
    }

    void add(const LifterFit &fit)
    {
        const auto &mean = fit.filter.belief().mean();
        const auto &covariance = fit.filter.belief().covariance();
        const auto addSlot = [&](ConstantSums &sums, int slot) {
            if (slot >= 0)
                sums.add(mean[slot], covariance(slot, slot));
        };
        addSlot(lnKappa, Slot::lnKappa);
        addSlot(fatigue, Slot::fatigue);
        addSlot(speedShift, fit.filter.slots().speedShift);
        addSlot(speedStretch, fit.filter.slots().speedStretch);
        for (size_t v = 0; v < lnRatio.size(); ++v) {
            addSlot(lnRatio[v], fit.filter.slots().lnRatio[v]);
            addSlot(lnRepCost[v], fit.filter.slots().lnRepCost[v]);
        }
        const SmoothedWeek &start = fit.smoothed.front();
        ratingBias.add(
            start.chain[Slot::ratingBias], start.covariance(Slot::ratingBias, Slot::ratingBias));
        for (size_t week = 1; week < fit.smoothed.size(); ++week) {
            if (fit.weeks[week].sets == 0)
                continue; // a gap tells nothing of the drift
            steps.count += 1.0;
            steps.square += fit.smoothed[week].levelStepSquare;
        }
        for (const LifterFit::Form &form : fit.forms) {
            forms.count += 1.0;
            forms.square += form.mean * form.mean + form.variance;
        }
        ratings.count += fit.filter.ratingSurprises().count;
        ratings.square += fit.filter.ratingSurprises().sum;
    }
};

RosterPriors maximise(
    const RosterSums &sums, const RosterPriors &published, const RosterPriors &current)
{
    RosterPriors next = published;
    next.lnKappa = sums.lnKappa.prior(published.lnKappa);
    next.ratingBias = sums.ratingBias.prior(published.ratingBias);
    next.fatigue = sums.fatigue.prior(published.fatigue);
    next.speedShift = sums.speedShift.prior(published.speedShift);
    next.speedStretch = sums.speedStretch.prior(published.speedStretch);
    for (size_t v = 1; v < published.lnRatio.size(); ++v) {
        next.lnRatio[v] = sums.lnRatio[v].prior(published.lnRatio[v]);
        next.lnRepCost[v] = sums.lnRepCost[v].prior(published.lnRepCost[v]);
    }
    next.driftPerWeek = sums.steps.sd(published.driftPerWeek, kPublishedWeeks);
    next.formSd = sums.forms.sd(published.formSd, kPublishedSessions);
    const double scatter = sums.ratings.sd(1.0, kPublishedRatings);
    next.ratingScale = current.ratingScale * scatter * scatter;
    return next;
}

} // namespace

void forEachOnAllProcessors(
    size_t count, const std::function<void(size_t)> &work, const std::stop_token &stop)
{
    std::atomic<size_t> next = 0;
    std::exception_ptr failure;
    std::mutex guard;
    const auto run = [&] {
        for (size_t i = next++; i < count; i = next++) {
            try {
                if (stop.stop_requested())
                    throw Stopped();
                work(i);
            } catch (...) {
                const std::scoped_lock lock(guard);
                if (!failure)
                    failure = std::current_exception();
            }
        }
    };
    {
        std::vector<std::jthread> others;
        const size_t processors = std::max(std::thread::hardware_concurrency(), 1u);
        for (size_t i = 1; i < std::min(processors, count); ++i)
            others.emplace_back(run);
        run();
    }
    if (failure)
        std::rethrow_exception(failure);
}

RosterPriors pooledPriors(
    std::span<const LifterLog> logs, const RosterPriors &published, const std::stop_token &stop)
{
    std::vector<const LifterLog *> sample;
    const size_t stride = logs.size() / kSample + 1;
    for (size_t i = 0; i < logs.size(); i += stride)
        sample.push_back(&logs[i]);

    RosterPriors priors = published;
    for (int round = 0; round < kPoolingRounds; ++round) {
        // Summed in the order of the roster, so that the result does not hang on the threads' luck.
        std::vector<std::optional<LifterFit>> fits(sample.size());
        forEachOnAllProcessors(
            sample.size(),
            [&](size_t i) {
                LifterFit fit = fitLifter(*sample[i], priors, kNoLater);
                if (!fit.weeks.empty())
                    fits[i] = std::move(fit);
            },
            stop);
        RosterSums sums(published.lnRatio.size());
        for (const std::optional<LifterFit> &fit : fits)
            if (fit)
                sums.add(*fit);
        priors = maximise(sums, published, priors);
    }
    return priors;
}

} // namespace strength
