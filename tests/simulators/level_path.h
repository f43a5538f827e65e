#pragma once

#include "tests/simulators/random.h"

#include <functional>
#include <vector>

/// How the true max moves from day to day: pieces in ln units that add up.
namespace simulators {

/// Called once a day in order, with the dose of the day before (about 1 for a usual session, 0 for
/// a day off); returns ln(max / max at the start). Holds its own state.
using LevelPath = std::function<double(double dose, Random &random)>;

/// The sum of several paths.
[[nodiscard]] LevelPath together(std::vector<LevelPath> parts);

/// Fitness and fatigue, each an exponential memory of the doses, the second shorter and stronger:
/// hard weeks lower the max at once and raise it later (Banister's impulse response, 1975; from
/// memory). Starts in balance with `usualDose` a day.
struct ImpulseResponse
{
    double usualDose = 0.45; ///< a day, on average
    double fitnessDays = 45.0;
    double fatigueDays = 9.0;
    double fitnessGain = 0.10; ///< ln units that the usual dose holds up
    double fatigueLoss = 0.05; ///< ln units that the usual dose holds down
};
[[nodiscard]] LevelPath impulseResponse(const ImpulseResponse &traits);

/// Gains that shrink on the way to a ceiling `gain` (ln units) above the start.
[[nodiscard]] LevelPath towardCeiling(double gain, double halfLifeWeeks);

/// Waves of planned blocks: up in all weeks but the last, down by 40 % of the rise in that one.
/// Each block's rise is drawn anew around `height` (ln units); old gains fade with a half-life of
/// ten weeks.
[[nodiscard]] LevelPath blockWaves(int weeks, double height);

/// Sleep, weight and life: an Ornstein-Uhlenbeck wander of SD `sd` that forgets in `days`.
[[nodiscard]] LevelPath wander(double sd, double days);

/// Loss in a layoff and the quick way back. The first ten days off cost nothing; then what can be
/// lost (`most`, ln units) goes with a half-life of five weeks, and comes back with a half-life of
/// `backDays` once training is on (loss by weeks off: common practice, no source).
[[nodiscard]] LevelPath layoffLoss(double most, double backDays);

} // namespace simulators
