#pragma once

#include "core/log/session_rows.h"

#include <array>

/// The program keeps score of itself: what was given with a chance, and what came of it. No truth
/// is needed for it but the log.
namespace core {

/// Sets that were given with a chance in one tenth, from tenth * 0.1 up to the next.
struct GivenTenth
{
    int sets = 0;
    int made = 0;
    double chance = 0.0; ///< sum over the sets

    friend bool operator==(const GivenTenth &, const GivenTenth &) = default;
};

using GivenScore = std::array<GivenTenth, 10>;

/// Scores the first set of every line that was given with a chance and was tried: as it was given
/// (variation and load, to the half kilo), made when all its reps were. One that was cut short was
/// not made, as for strength::forecastSessions(): most are racked where nothing is left, and to
/// leave these out would count the made ones alone. The first set alone, since how a lifter tires
/// from set to set is another matter.
/// @param cards  by day, resolved with what was given; others do not count
/// @param sessions  of the same lifter, by day and number
[[nodiscard]] GivenScore scoreGiven(std::span<const ResolvedCard> cards,
    std::span<const LoggedSession> sessions, std::span<const Variation> catalogue);

[[nodiscard]] GivenScore operator+(GivenScore a, const GivenScore &b);

/// Cards as they were given, for what came of them: without an estimate, so that those which were
/// not given have no load.
/// @param given  of the lifter
[[nodiscard]] std::vector<ResolvedCard> asGiven(std::vector<Card> cards, const Lifter &lifter,
    std::span<const Variation> catalogue, std::span<const GivenDay> given);

} // namespace core
