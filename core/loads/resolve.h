#pragma once

#include "core/domain/card.h"
#include "core/loads/lift_estimate.h"
#include "core/loads/plates.h"
#include "core/notation/set_line.h"

#include <optional>
#include <span>

/// From set lines to loads on the bar.
namespace core {

/// One set line with the load that a lifter takes for all its sets.
struct ResolvedLine
{
    SetLine line;
    std::optional<BarLoad> load;          ///< what goes on the bar
    std::optional<strength::Band> target; ///< before rounding to plates, with its 90 % interval
    /// Reps in reserve expected at the rounded load in the first and in the last set; below 0 where
    /// the set would be missed.
    std::optional<strength::Interval> firstReserve;
    std::optional<strength::Interval> lastReserve;
    /// Chance that all sets of the line are completed at the rounded load, 0..1; of a set for as
    /// many as possible that the least asked for is done. See core/loads/odds.h.
    std::optional<double> allMade;
    std::optional<double> firstMade; ///< the same of the first set alone
    /// Hard sets of the lift in the session once the sets of the line are done, see
    /// strength::hardSetsAfter(). A set of unknown reserve counts as hard.
    double hardSetsAfter = 0.0;
    /// Of a line that was given: the load that the estimate asks for now, where it is more than a
    /// plate away from what was given.
    std::optional<BarLoad> now;
    QString why;     ///< without a load: why there is none and what to do
    QString caution; ///< with a load: what speaks against going by it blindly; often empty
    /// Why nothing of the kind is suggested to the lifter on the day: pain, or no maximal work. The
    /// load that was planned stays beside it. Set by resolveCards(), see core/safety/day_limits.h.
    QString withheld;
    bool isMaximal = false; ///< for whoever may do it; set beside `withheld`
    /// Where it is withheld or eased: what may stand in; below `load`.
    std::optional<BarLoad> lighter;
    /// What of today speaks for the lighter load, the check-in or a miss; the load stays beside it.
    /// Set by easeToday(), see core/log/eased_lines.h.
    QString eased;
};

/// What the loads of a lifter on a day depend on.
struct LoadBasis
{
    const LiftEstimate *estimate = nullptr; ///< of the variation's lift; null before the first fit
    const PlateTable &plates;
    Unit unit = Unit::kilogram; ///< for the words
    QDate day;
    /// For what a tempo or a pause costs and for the codes of lead-rep sets; without it neither.
    std::span<const Variation> catalogue = {};
};

/// Loads of one card.
///
/// An RPE or RIR target is meant for the last set of its line: fatigue within the session makes
/// each set harder than the one before, and no set shall be harder than was asked for. A range of
/// effort or of reps is met at its middle. A share is of the max of the variation on the day,
/// rested. A drop is from the heaviest line above on the card. A load is rounded to the plates like
/// any other. A line without a target has no load; neither has an effort or share where no set
/// of the lifter speaks for the estimate.
///
/// A lead-rep set takes the lighter of two loads: the one at which all its reps could be done in
/// the following variation, and the one at which the lead reps alone could be done in the card's,
/// each with the reserve asked for.
/// @param hardSetsBefore  of the same lift before this card in the session
[[nodiscard]] std::vector<ResolvedLine> resolve(const std::vector<SetLine> &lines,
    VariationId variation, const LoadBasis &basis, double hardSetsBefore);

/// Sets on a card, 0 where its set line does not parse.
[[nodiscard]] int setCount(const std::vector<SetLine> &lines);

/// Number of lifts (reps) of a card.
[[nodiscard]] int liftCount(const std::vector<SetLine> &lines);

/// Tonnage of resolved lines, kg; lines without a load count nothing.
[[nodiscard]] double tonnageKg(std::span<const ResolvedLine> lines);

/// RPE on the 1 to 10 scale for reps in reserve, 10 at none and below.
/// Source: Zourdos et al. (2016), J Strength Cond Res 30(1):267-275 (from memory): 10 - reserve.
[[nodiscard]] double rpeFromReserve(double reserve);

} // namespace core
