#pragma once

#include "tests/simulators/random.h"

#include <optional>

namespace simulators {

/// How a lifter turns the reps truly left into a rating.
///
/// Sources for the usual sizes: people say about one rep too few in reserve far from failure
/// (Halperin et al. 2022) and are within about 0.65 rep on bench sets at 75 % (Refalo et al. 2024);
/// both from memory.
struct RaterTraits
{
    double bias = 0.0;           ///< reps; above 0 = says more in reserve than there was
    double biasDrift = 0.0;      ///< SD of the bias a year from now, reps
    double compression = 0.9;    ///< reps said per rep truly left, far from failure
    double noise = 0.4;          ///< SD at failure, reps
    double noisePerRep = 0.12;   ///< SD added per rep left
    bool halves = true;          ///< rates in halves; otherwise in whole numbers
    double lowest = 5.0;         ///< lowest rating ever said
    double missing = 0.05;       ///< chance that a set at failure is not rated
    double missingPerRep = 0.05; ///< added per rep left: easy sets go unrated
};

class Rater
{
public:
    explicit Rater(const RaterTraits &traits, double drift = 0.0);

    void passWeek(Random &random);
    /// Rating in 1..10 of a completed set with `reserve` >= 0 reps truly left; empty = not said.
    std::optional<double> rate(double reserve, Random &random) const;
    /// Chance that rate() gives just this rating; of no rating for an empty one.
    [[nodiscard]] double chanceOf(std::optional<double> rpe, double reserve) const;
    /// Today's bias, reps.
    [[nodiscard]] double bias() const { return m_traits.bias + m_drift; }

private:
    [[nodiscard]] double meanSaying(double reserve) const;
    [[nodiscard]] double noise(double reserve) const;
    [[nodiscard]] double chanceMissing(double reserve) const;
    [[nodiscard]] double step() const { return m_traits.halves ? 0.5 : 1.0; }

    RaterTraits m_traits;
    double m_drift;
};

} // namespace simulators
