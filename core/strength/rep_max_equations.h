#pragma once

#include <array>
#include <string_view>

/// Published equations for a max from one set to failure. Averages over groups, good for 1 to 10
/// reps; none is made for a paused competition bench press. The engine does not use them: they are
/// what it has to beat, and what coaches know.
namespace strength {

enum class RepMaxEquation {
    epley,    ///< Epley (1985), Poundage chart: w (1 + r / 30)
    brzycki,  ///< Brzycki (1993), JOPERD 64(1):88-90: 36 w / (37 - r)
    lander,   ///< Lander (1985), NSCA Journal 6(6):60-61: 100 w / (101.3 - 2.67123 r)
    lombardi, ///< Lombardi (1989), Beginning Weight Training: w r^0.10
    mayhew,   ///< Mayhew et al. (1992), J Appl Sport Sci Res 6(4):200-206:
              ///< 100 w / (52.2 + 41.9 exp(-0.055 r))
    oconner,  ///< O'Conner et al. (1989), Weight Training Today: w (1 + 0.025 r)
    wathan    ///< Wathan (1994), in Essentials of Strength Training and Conditioning:
              ///< 100 w / (48.8 + 53.8 exp(-0.075 r))
};

inline constexpr std::array kRepMaxEquations{RepMaxEquation::epley, RepMaxEquation::brzycki,
    RepMaxEquation::lander, RepMaxEquation::lombardi, RepMaxEquation::mayhew,
    RepMaxEquation::oconner, RepMaxEquation::wathan};

/// Estimated max, kg, by the equation as it was published (coefficients from memory); at one rep
/// some of them give more than the load.
/// @param reps  to failure, >= 1; need not be whole
/// @throws std::invalid_argument for a load not above 0, reps below 1, or reps at or past the
///         equation's pole (37 for Brzycki, 37.9 for Lander)
[[nodiscard]] double repMax(RepMaxEquation equation, double loadKg, double reps);

/// The same with the load itself at one rep: a max that was lifted is not an estimate.
[[nodiscard]] double repMaxOrLift(RepMaxEquation equation, double loadKg, double reps);

} // namespace strength
