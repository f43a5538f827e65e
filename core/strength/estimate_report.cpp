#include "core/strength/estimate_report.h"

#include "core/strength/interval.h"

#include <algorithm>
#include <cmath>

namespace strength {

namespace {

constexpr int kStaleDays = 28;
/// SD of the ln max above which an estimate is little more than its prior, and above which it is
/// too wide to prescribe from.
constexpr double kPriorOnlySd = 0.08, kThinSd = 0.027;
/// No lifter has the model's curve exactly: SD of what that moves the max, ln units a rep that the
/// curve has to reach down to it. From trials on simulated lifters with other curves
/// (tests/simulators), as the next.
constexpr double kMisfitPerRep = 0.0011;
/// Ratings err together, by mood and by what gets rated at all: SD that this leaves in the max
/// where there was one rated or missed set of late, ln units; it falls with the root of their
/// number.
constexpr double kFewTold = 0.045;
constexpr double kConflict = 0.25; ///< share of gross sets of late

/// SD of a belief with variance `variance` once what no belief of this model doubts is allowed for.
double honestSd(double variance, const LifterFilter::Footing &footing)
{
    const double misfit = kMisfitPerRep * (footing.reach - 1.0);
    const double few = kFewTold * kFewTold / std::max(footing.toldOfLate, 1.0);
    return std::sqrt(std::max(variance, 0.0) + misfit * misfit + few);
}

Standing standingOf(const LifterFit &fit, int today)
{
    const double sd = honestSd(fit.weeks.back().variance,
        fit.weeks.back().footing); // a layoff since then is stale, not thin
    if (sd > kPriorOnlySd)
        return Standing::priorOnly;
    if (fit.filter.conflict() > kConflict)
        return Standing::conflicting;
    if (sd > kThinSd)
        return Standing::thin;
    return today - fit.lastDay > kStaleDays ? Standing::stale : Standing::enough;
}

std::vector<VariationEstimate> variationsOf(
    const LifterFit &fit, std::span<const VariationPrior> variations)
{
    std::vector<VariationEstimate> estimates(variations.size());
    const auto &mean = fit.filter.belief().mean();
    const auto &covariance = fit.filter.belief().covariance();
    const RosterPriors &priors = fit.filter.priors();
    const bool known = !fit.weeks.empty();
    for (size_t v = 0; v < variations.size(); ++v) {
        VariationEstimate &estimate = estimates[v];
        const int slot = fit.filter.slots().lnRatio[v];
        double lnRatio = priors.lnRatio[v].mean;
        double ratioVariance = v == 0 ? 0.0 : priors.lnRatio[v].sd * priors.lnRatio[v].sd;
        double lnCost = priors.lnRepCost[v].mean;
        if (slot >= 0) {
            lnRatio = mean[slot];
            ratioVariance = covariance(slot, slot);
            lnCost = mean[fit.filter.slots().lnRepCost[v]];
            estimate.withMax = covariance(level, slot) + covariance(layoff, slot);
        }
        estimate.ratio = factorOf(lnRatio, std::sqrt(ratioVariance));
        estimate.repCost = std::exp(lnCost);
        if (known)
            estimate.max = bandOf(lnMax(mean) + lnRatio,
                honestSd(lnMaxVariance(covariance) + ratioVariance + 2.0 * estimate.withMax,
                    fit.filter.footing()));
    }
    return estimates;
}

std::vector<SetPull> pullsOf(const LifterFit &fit)
{
    constexpr size_t kMost = 5;
    const double kg = std::exp(lnMax(fit.filter.belief().mean()));
    std::vector<SetPull> pulls;
    for (const PullTrail::Pull &pull : fit.trail.pulls(fit.filter.belief().size()))
        pulls.push_back({pull.session, pull.set, pull.surprise, kg * pull.lnPull});
    const size_t kept = std::min(kMost, pulls.size());
    std::partial_sort(pulls.begin(), pulls.begin() + std::ptrdiff_t(kept), pulls.end(),
        [](const SetPull &a, const SetPull &b) { return std::abs(a.pullKg) > std::abs(b.pullKg); });
    pulls.resize(kept);
    return pulls;
}

/// The competition max as the filter has it now, with an allowance for what no curve of the model
/// fits.
Band maxBand(const LifterFilter &filter)
{
    return bandOf(lnMax(filter.belief().mean()),
        honestSd(lnMaxVariance(filter.belief().covariance()), filter.footing()));
}

} // namespace

LifterEstimate report(const LifterFit &fit, std::span<const VariationPrior> variations, int today)
{
    const auto &mean = fit.filter.belief().mean();
    const auto &covariance = fit.filter.belief().covariance();
    LifterEstimate estimate;
    estimate.variations = variationsOf(fit, variations);
    estimate.curve = {std::exp(mean[lnKappa]), mean[power]};
    estimate.setFatigue = mean[fatigue];
    estimate.formSd = std::sqrt(fit.filter.formVariance());
    estimate.driftPerWeek = fit.filter.priors().driftPerWeek;
    estimate.rating.noise = ratingNoise(0.0) * std::sqrt(fit.filter.ratingWays().scale);
    if (fit.weeks.empty()) {
        const Prior &bias = fit.filter.priors().ratingBias;
        estimate.rating.bias = intervalOf(bias.mean, bias.sd);
        return estimate;
    }
    estimate.rating.bias =
        intervalOf(mean[ratingBias], std::sqrt(covariance(ratingBias, ratingBias)));
    for (size_t t = 0; t < fit.weeks.size(); ++t) {
        const LifterFit::Week &week = fit.weeks[t];
        const SmoothedWeek &smoothed = fit.smoothed[t];
        estimate.weeks.push_back(
            {week.sunday, bandOf(week.lnMax, honestSd(week.variance, week.footing)),
                bandOf(lnMax(smoothed.chain),
                    honestSd(lnMaxVariance(smoothed.covariance), week.footing)),
                week.sets});
    }
    for (const LifterFit::Form &form : fit.forms)
        estimate.form.push_back({form.day, factorOf(form.mean, std::sqrt(form.variance))});
    if (fit.filter.sunday() > fit.weeks.back().sunday)
        estimate.idle = {fit.filter.sunday(), maxBand(fit.filter)};
    estimate.pulls = pullsOf(fit);
    estimate.standing = standingOf(fit, today);
    return estimate;
}

} // namespace strength
