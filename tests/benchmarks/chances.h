#pragma once

#include "core/log/given_score.h"
#include "tests/simulators/truths.h"

#include <cstdint>

/// The chances that the program gives, against what came of them in rosters whose truth is not the
/// model's own form.
namespace benchmarks {

struct Chances
{
    core::GivenScore first{}; ///< first sets of a session
    core::GivenScore later{}; ///< first sets of lines further down
};

/// Coaches a roster for half a year by what the program says each morning, after half a year of
/// log by another coach; see simulators::coachByProgram().
[[nodiscard]] Chances chancesGiven(const simulators::Truth &truth, std::uint64_t seed, int lifters);

/// Sets below which a tenth is not judged.
inline constexpr int kFewestJudged = 100;

/// The furthest that the share made is from the mean chance, in a tenth with enough sets; points of
/// a hundred, 0 without such a tenth.
[[nodiscard]] double worstTenth(const core::GivenScore &score);

/// Seeds to tune on and seeds to report on, apart. Whoever changes the chances after a look at the
/// latter draws new ones and says so here: 9301 to 9304 are used up, since kGoodDay came after
/// them.
inline constexpr std::array<std::uint64_t, 4> kChanceTrain{31, 32, 33, 34};
inline constexpr std::array<std::uint64_t, 4> kChanceHeldOut{9311, 9312, 9313, 9314};

} // namespace benchmarks
