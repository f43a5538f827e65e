#pragma once

#include <functional>

/// True repetition curves. None has the form that the strength engine fits
/// (ln share = -kappa (N - 1)^c), so that a good score is not a mirror of its own assumption.
namespace simulators {

/// Reps to failure at a share of the momentary max, as a real number: 1 at share 1, below 1 above
/// it, never below 0. Falls as the share grows.
using RepTruth = std::function<double(double share)>;

/// Hyperbola: share = 1 / (1 + ((N - 1) / span)^bend). span = reps beyond the first that halve the
/// load; bend 1 is the family of Epley's line.
/// Usual: span 28-40, bend 0.85-1.1.
[[nodiscard]] RepTruth hyperbola(double span, double bend);

/// Exponential fall to a floor that can be moved "for ever", the family of Mayhew et al. (1992) and
/// Wathan (1994): share = floor + (1 - floor) exp(-rate (N - 1)).
/// Usual: floor 0.45-0.55, rate 0.055-0.085.
[[nodiscard]] RepTruth fallToFloor(double floor, double rate);

/// The handbook chart (Haff & Triplett, Essentials of Strength Training and Conditioning, 4th ed.,
/// 2016, load-assignment chapter; from memory), joined by a monotone cubic, its reps beyond the
/// first stretched by `few` near the max and by `many` at 15 reps.
[[nodiscard]] RepTruth handbookChart(double few, double many);

} // namespace simulators
