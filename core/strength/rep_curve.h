#pragma once

namespace strength {

/// How a lifter's sets at one load fall with the reps: ln(share of max) = -kappa repCost (N -
/// 1)^power.
struct RepCurve
{
    double kappa = 0.0;
    double power = 1.0;

    /// Share of the max at which exactly `reps` >= 1 can be done; 1 at one rep.
    [[nodiscard]] double share(double reps, double repCost = 1.0) const;
    /// Reps that can be done at `share` of the max; below 1 (down to 0) above the max.
    [[nodiscard]] double reps(double share, double repCost = 1.0) const;
};

/// Reps that can be done with ln(max / load) = `drop`, and the derivatives; kappa taken with the
/// rep cost. See RepCurve.
struct RepsAt
{
    double reps = 0.0;
    double byDrop = 0.0;
    double byLnKappa = 0.0;
    double byPower = 0.0;
};
[[nodiscard]] RepsAt repsAt(double drop, double kappa, double power);

} // namespace strength
