#pragma once

#include "core/advice/readiness_advice.h"
#include "core/domain/session.h"
#include "core/loads/resolved_cards.h"
#include "core/notation/set_words.h"

#include <QString>
#include <optional>
#include <span>
#include <vector>

/// The plan of a day as a list of sets to log, beside what is logged of them.
namespace core {

/// One planned set.
struct DaySet
{
    CardId card;
    size_t line = 0; ///< of the card
    int set = 0;     ///< of the card, counted through its lines from 0
    VariationId variation;
    std::optional<LeadReps> lead;
    int reps = 1;                 ///< in all, expected; the fewest of as many as possible
    bool isExact = true;          ///< false: a range of reps or as many as possible
    bool isOpenEnded = false;     ///< as many as possible
    QString repsText;             ///< "5", "4-6", "5+"
    bool isGiven = false;         ///< the plan's numbers are what the lifter was given
    bool isMaximal = false;       ///< see core/safety/day_limits.h
    bool isByHand = false;        ///< the load was written in kg or lb, or drops from such a one
    std::optional<double> planKg; ///< by the plan alone
    std::optional<double> loadKg; ///< for today: the plan's, or shifted by readiness or a miss
    std::optional<double> rpe;    ///< expected, to the half
    QString effort;               ///< asked and expected at `planKg` in words; may be empty
    QString withheld;             ///< why nothing is suggested today; then there is no `loadKg`
    QString eased;                ///< why the load was taken down during the day; mostly empty
    QString why;                  ///< without a load: why there is none

    friend bool operator==(const DaySet &, const DaySet &) = default;
};

/// The sets of one day's cards in order. A card whose set line cannot be read has none. What is
/// withheld of the cards has no load for today.
/// @param unit  for the words
[[nodiscard]] std::vector<DaySet> daySets(
    std::span<const ResolvedCard> cards, std::span<const Variation> catalogue, Unit unit);

/// The sets with their loads moved by readiness, onto the plates; only of the bench press. Up only
/// where a set has several reps, is not maximal, and has no load written by hand.
[[nodiscard]] std::vector<DaySet> shifted(std::vector<DaySet> sets, const ReadinessAdvice &advice,
    std::span<const Variation> catalogue, const PlateTable &plates);

/// A planned set, a logged one, or both in one row.
struct SessionRow
{
    std::optional<size_t> planned; ///< index into the day's sets
    std::optional<size_t> done;    ///< index into the logged sets; empty = open

    friend bool operator==(const SessionRow &, const SessionRow &) = default;
};

/// Pairs the logged sets with the planned ones, both kept in their order; of all ways the one that
/// leaves the fewest sets over. A logged set that says which planned one it answers goes with that
/// one, as long as it is there. Another answers a planned one of its variation, or, where it
/// says how many reps were planned, one of as many reps that was swapped for another variation of
/// the lift. A set without reps planned is an extra one beside sets that have them, and in a log
/// that never has them it answers a planned set of its variation and about its load.
[[nodiscard]] std::vector<SessionRow> sessionRows(std::span<const DaySet> planned,
    std::span<const SetEntry> done, std::span<const Variation> catalogue);

/// The entry that says "done as planned": unrated, since nobody has said how hard it was. Without
/// a load its loadKg is 0, without a sure number of reps its repsDone is 0: both are for the coach
/// to say.
[[nodiscard]] SetEntry asPlanned(const DaySet &set);

/// What the words on differences measure a set against.
[[nodiscard]] SetAsked askedOf(const DaySet &set, std::span<const Variation> catalogue);

} // namespace core
