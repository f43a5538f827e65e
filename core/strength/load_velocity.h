#pragma once

/// The published load-velocity line of the bench press:
///   %1RM = 8.4326 v^2 - 73.501 v + 112.33, v = mean propulsive velocity, m/s.
/// Source: Gonzalez-Badillo & Sanchez-Medina (2010), Int J Sports Med 31(5):347-352,
/// doi 10.1055/s-0030-1248333; from memory.
namespace strength {

/// What the line gives at a share of 1.
inline constexpr double kSpeedAtMax = 0.17111197;

struct SpeedAt
{
    double speed = 0.0;   ///< m/s
    double byShare = 0.0; ///< its derivative
};
/// Velocity at a share of the max. Above a share of 1.1 the line ends; there the speed stays, and
/// so says nothing.
[[nodiscard]] SpeedAt publishedSpeed(double share);

} // namespace strength
