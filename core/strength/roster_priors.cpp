#include "core/strength/roster_priors.h"

#include <algorithm>
#include <cmath>

namespace strength {

RosterPriors publishedPriors(std::span<const VariationPrior> variations)
{
    RosterPriors priors;
    // Least squares through the handbook chart, 2 to 10 reps (Haff & Triplett, Essentials of
    // Strength Training and Conditioning, 4th ed., 2016; from memory). The spread spans
    // seven published equations for a max from reps.
    priors.lnKappa = {std::log(0.0390), 0.18};
    priors.power = {0.90, 0.06};
    // Halperin et al. (2022), Sports Med 52:377-390: people say about one rep too few in reserve on
    // average, most of it far from failure; hence a small bias at failure and a compression.
    priors.ratingBias = {-0.2, 0.5};
    priors.compression = {0.88, 0.08};
    // Common practice, no source: half a per cent a hard set with full rests.
    priors.fatigue = {0.005, 0.003};
    // Common practice, no source: what goes unrated was seldom hard.
    priors.unratedReserve = {4.0, 3.0};
    // Spread between lifters around the line of Gonzalez-Badillo & Sanchez-Medina (2010), Int J
    // Sports Med 31:347-352, who give an SD of 0.04 m/s at the max.
    priors.speedShift = {0.0, 0.04};
    priors.speedStretch = {1.0, 0.08};
    for (const VariationPrior &variation : variations) {
        // The floor keeps the covariance regular where the table says "exactly".
        priors.lnRatio.push_back(
            {std::log(variation.ratio), std::max(variation.spread / variation.ratio, 1e-3)});
        priors.lnRepCost.push_back({std::log(variation.repCost), 0.08});
    }
    // Test-retest of a max on separate days has a CV of 4.2 % with the errors of testing in it
    // (Grgic et al. 2020, Sports Med Open 6:31): a day's form is below that. Drift: common
    // practice, no source; a roster teaches both.
    priors.driftPerWeek = 0.008;
    priors.formSd = 0.018;
    return priors;
}

Prior populationMax(const LifterLog &log)
{
    // Common practice, no source: a trained woman benches 0.9 and a trained man 1.3 times
    // bodyweight, give or take a third.
    using Sex = LifterLog::Sex;
    const double multiple = log.sex == Sex::female ? 0.9 : log.sex == Sex::male ? 1.3 : 1.1;
    const double bodyweight = log.bodyweightKg.value_or(log.sex == Sex::female ? 66.0 : 80.0);
    return {std::log(multiple * bodyweight), log.bodyweightKg ? 0.33 : 0.4};
}

} // namespace strength
