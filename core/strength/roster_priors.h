#pragma once

#include "core/strength/training_log.h"

#include <span>
#include <vector>

namespace strength {

/// A normal belief about one quantity, between lifters.
struct Prior
{
    double mean = 0.0;
    double sd = 1.0; ///< > 0
};

/// What is believed of any lifter before their own sets: published values at first, then pulled
/// toward the roster (core/strength/pooling.h). Each value's source is in roster_priors.cpp.
struct RosterPriors
{
    Prior lnKappa;                ///< ln of RepCurve::kappa
    Prior power;                  ///< RepCurve::power
    Prior ratingBias;             ///< reps, in the first week
    Prior compression;            ///< reps said per rep left beyond the first
    Prior fatigue;                ///< ln units of the max lost per hard set before
    Prior unratedReserve;         ///< reps usually left by a set that goes unrated
    Prior speedShift;             ///< m/s against the published load-velocity line
    Prior speedStretch;           ///< velocity lost per share of max against that line
    std::vector<Prior> lnRatio;   ///< a row of the variation table
    std::vector<Prior> lnRepCost; ///< a row of the variation table
    double driftPerWeek = 0.0;    ///< SD of the level's step in a week, ln units
    double formSd = 0.0;          ///< SD of the day form, ln units
    double ratingScale = 1.0;     ///< a rating's noise against the published one
};

/// Everything from the literature and the variation table, nothing from a roster.
[[nodiscard]] RosterPriors publishedPriors(std::span<const VariationPrior> variations);

/// Competition max expected of a lifter of this sex and bodyweight, ln kg.
[[nodiscard]] Prior populationMax(const LifterLog &log);

} // namespace strength
