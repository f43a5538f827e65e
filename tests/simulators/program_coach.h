#pragma once

#include "core/loads/resolved_cards.h"
#include "tests/simulators/coach.h"
#include "tests/simulators/random.h"

#include <memory>
#include <vector>

namespace simulators {

/// The variations of the simulated rosters as a catalogue: row i has the id i + 1.
[[nodiscard]] const std::vector<core::Variation> &benchCatalogue();

[[nodiscard]] core::VariationId idOfRow(int row);

/// A day of a simulated log as the program has it.
[[nodiscard]] QDate dateOf(int day);

/// Another coach has the lifter up to a day; from then on every session is given as the program has
/// it that morning: cards resolved from the estimate of the log so far.
struct ProgramCoaching
{
    int from = 0;                                     ///< the first day that is given
    strength::RosterPriors learnt;                    ///< of the roster as it stood then
    std::vector<core::ResolvedCard> *given = nullptr; ///< what was given goes here
};

/// Loads for the effort that the plan asks for, to the half rep. In one session of three the first
/// set is written by hand, from 7 % below to 5 % above the load for no rep in reserve: a coach who
/// pushes, so that chances of all sizes are given.
[[nodiscard]] std::unique_ptr<Coach> coachByProgram(
    std::unique_ptr<Coach> before, ProgramCoaching coaching, Random luck);

} // namespace simulators
