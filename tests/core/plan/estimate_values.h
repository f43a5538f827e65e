#pragma once

#include "core/csv/catalogue_csv.h"
#include "core/loads/lift_estimate.h"

#include <cmath>

/// An estimate with plain numbers that loads can be worked out from by hand.
namespace tests {

/// Of the built-in catalogue's bench press: competition max `maxKg`, every variation at its usual
/// ratio, exactly known; two percent a rep and one percent a hard set before.
/// @param maxSd  of the max, ln units
inline core::LiftEstimate plainEstimate(QDate day, double maxKg = 100.0, double maxSd = 0.0)
{
    constexpr double kZ90 = 1.6448536269514722;
    core::LiftEstimate lift;
    const auto band = [=](double kg) {
        return strength::Band{kg, kg * std::exp(-kZ90 * maxSd), kg * std::exp(kZ90 * maxSd)};
    };
    for (const bool competition : {true, false}) // the competition lift comes first
        for (const core::Variation &v : core::builtInCatalogue()) {
            if (!core::countsFor(v, core::Lift::bench) || v.competition != competition)
                continue;
            lift.rows.push_back(v.id);
            lift.priors.push_back({v.ratio, 0.0, 1.0});
            lift.estimate.variations.push_back(
                {{v.ratio, v.ratio, v.ratio}, band(maxKg * v.ratio), 10});
        }
    lift.estimate.standing = strength::Standing::enough;
    lift.estimate.weeks = {{core::engineDay(day), band(maxKg), band(maxKg), 10}};
    lift.estimate.curve = {0.02, 1.0};
    lift.estimate.setFatigue = 0.01;
    return lift;
}

} // namespace tests
