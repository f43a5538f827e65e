#pragma once

#include "core/loads/plates.h"

#include <cstddef>
#include <vector>

/// In which order lifters who share a rack do their sets, so that few plates are put on and taken
/// off. Nobody's own order is changed.
///
/// Each load is put on as PlateTable has it, heaviest plate first, and a plate is reached only when
/// those outside of it are off: from 25 + 5 to 25 + 10 one plate comes off and one goes on a side,
/// from 25 + 5 to 20 + 5 two and two.
namespace core {

/// A rack with more lifters leaves none of them enough to do (common practice, no source).
inline constexpr size_t kMostOnRack = 4;
/// So many sets of each are ordered, which bounds the work; later ones come nearer with every set.
inline constexpr size_t kMostAhead = 16;

struct RackOrder
{
    std::vector<size_t> lifters; ///< whose set is next, one entry a set; index into the loads
    int plates = 0;              ///< put on or taken off, both sides, until the last set is on
    int inARow = 0;              ///< sets that follow one of the same lifter: they wait for a rest

    friend bool operator==(const RackOrder &, const RackOrder &) = default;
};

/// Plates that come off and go on between two loads, both sides.
[[nodiscard]] int platesMoved(const BarLoad &from, const BarLoad &to);

/// The order that moves the fewest plates; of several the one in which a lifter follows himself the
/// fewest times, and then the one that takes turns at once.
/// @param loadsKg  for each lifter the loads of the sets left, in order
/// @param onBarKg  the load that is on the bar now
/// @throws std::invalid_argument for more than kMostOnRack lifters
/// Exact, by dynamic programming over how many sets of each are done and who did the last one:
/// lifters x product of (sets + 1) states.
[[nodiscard]] RackOrder fewestPlates(
    const std::vector<std::vector<double>> &loadsKg, double onBarKg, const PlateTable &plates);

/// One set of each in turn, as long as they have some; what fewestPlates() is measured against.
[[nodiscard]] RackOrder takingTurns(
    const std::vector<std::vector<double>> &loadsKg, double onBarKg, const PlateTable &plates);

} // namespace core
