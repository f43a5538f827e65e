#pragma once

#include "core/plan/plan_edits.h"

#include <vector>

namespace core {

/// What becomes of the cards on the days that new ones are laid on.
enum class OnOccupiedDays { keep, replace };

/// Lays many new cards at once: those of a progression, a template, a copied day or week.
/// @param cards  every card of the lifter on the days concerned; more days do no harm
/// @param rows   new cards with their ids, each with its day; on a day they keep the order of their
///               positions and come after what is kept there
[[nodiscard]] Edit layOut(
    const std::vector<Card> &cards, const std::vector<Card> &rows, OnOccupiedDays onOccupied);

} // namespace core
