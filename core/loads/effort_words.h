#pragma once

#include "core/loads/resolve.h"

#include <QString>
#include <optional>

/// What the sets of a line ask for and what is expected at the load that goes on the bar, in words.
namespace core {

/// Reps that a set is expected to hold: as expectedReps(const SetLine &), and of a set for as many
/// as possible what the estimate expects at its load, the cap at most; without an estimate the
/// fewest asked for.
[[nodiscard]] int expectedReps(const ResolvedLine &line);

/// Number of lifts (reps) of a card, by the same.
[[nodiscard]] int liftCount(std::span<const ResolvedLine> lines);

/// RPE to expect at the load, to the half; empty without an estimate. A set for as many as possible
/// is asked about at the fewest reps.
/// @param set  of the line, 0 .. sets - 1
[[nodiscard]] std::optional<double> expectedRpe(const ResolvedLine &line, int set);

/// "8.5"; below 5 "easy", since ratings that far from failure are guesses.
[[nodiscard]] QString rpeWords(double rpe);

/// Of all sets of the line: "RPE 8, as asked", "asked RPE 8, expected about 6 rising to 7.5:
/// rounded down to the plates", "a max single: about an even chance". Empty without a load or an
/// estimate.
[[nodiscard]] QString effortWords(const ResolvedLine &line);

/// The same of one set, 0 .. sets - 1.
[[nodiscard]] QString effortWords(const ResolvedLine &line, int set);

} // namespace core
