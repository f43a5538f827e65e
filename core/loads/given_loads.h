#pragma once

#include "core/loads/resolved_cards.h"

#include <functional>

/// Loads that become a fact, and facts that are shown again.
namespace core {

/// Puts what was given in the place of what the estimate asks for, where the card was given as it
/// stands; else only notes that it has changed since.
/// @param card  with its lines as the estimate asks for them
/// @param isAhead  compares the two, see ResolvedLine::now
void takeGiven(ResolvedCard &card, const GivenDay &day, const PlateTable &plates, bool isAhead);

/// How and when something is given.
struct Giving
{
    GivenBy by = GivenBy::handOut;
    QDateTime at; ///< UTC, to the second
    std::function<GivenDayId()> newId;
};

/// What is to be stored when the lifter is given these cards: a row for each of their days that was
/// not given just so before. A day with a card that waits for an estimate is left out.
/// @param cards   all of the days that are given, as the lifter gets them
/// @param before  what the lifter was given for these days
[[nodiscard]] std::vector<GivenDay> give(std::span<const ResolvedCard> cards,
    const PlanSources &sources, std::span<const GivenDay> before, const Giving &giving);

} // namespace core
