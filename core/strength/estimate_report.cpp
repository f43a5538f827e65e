#include "core/strength/estimate_report.h"

#include "core/strength/interval.h"

#include <algorithm>
#include <cmath>

namespace strength {

namespace {

/// A lifter's own rhythm: the middle one of the last gaps between days with a set of the lift, the
/// longer one of two. Six of them without a set are more than a deload or a missed week, and the
/// bounds keep that between three and six weeks, from where on a layoff costs by the model
/// (lifter_filter.cpp) about 3 % and more. Common practice, no source.
constexpr size_t kRhythmGaps = 12;
constexpr int kStaleGaps = 6;
constexpr int kFewestStaleDays = 21, kMostStaleDays = 42;
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

/// The longest silence after which the estimate is still of today, days.
int patience(const LifterFit &fit)
{
    std::vector<int> gaps; // the newest first
    for (size_t i = fit.forms.size(); i-- > 1 && gaps.size() < kRhythmGaps;)
        if (const int gap = fit.forms[i].day - fit.forms[i - 1].day; gap > 0)
            gaps.push_back(gap);
    if (gaps.empty())
        return kFewestStaleDays; // one day is no rhythm
    const auto middle = gaps.begin() + std::ptrdiff_t(gaps.size() / 2);
    std::nth_element(gaps.begin(), middle, gaps.end());
    return std::clamp(kStaleGaps * *middle, kFewestStaleDays, kMostStaleDays);
}

Standing standingOf(const LifterFit &fit, int day)
{
    const double sd = honestSd(fit.weeks.back().variance,
        fit.weeks.back().footing); // a layoff since then makes it stale, not a guess
    if (sd > kPriorOnlySd)
        return Standing::priorOnly;
    if (day - fit.lastDay > patience(fit))
        return Standing::stale;
    if (fit.filter.conflict() > kConflict)
        return Standing::conflicting;
    return sd > kThinSd ? Standing::thin : Standing::enough;
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
    estimate.asOf = today;
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
    estimate.asOf = std::max(today, fit.lastDay);
    estimate.lastSet = fit.lastDay;
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
    estimate.standing = standingOf(fit, estimate.asOf);
    return estimate;
}

} // namespace strength
