#pragma once

#include "core/domain/card.h"
#include "core/domain/lifter.h"
#include "core/domain/variation.h"
#include "core/domain/watch.h"
#include "core/exchange/return_sheet.h"
#include "core/loads/lift_estimate.h"

#include <span>

namespace core {

class RosterReader;

/// What the roster holds of the lifters, weeks and days that return sheets speak of; more does no
/// harm.
struct ReturnBasis
{
    std::vector<Lifter> lifters;
    std::vector<Variation> variations;
    std::vector<Card> cards;
    std::vector<LoggedSession> sessions;
    std::vector<CheckIn> checkIns;
    LiftEstimates estimates; ///< by the whole log of the lifters whom the sheets speak of
};

/// Reads it. Throws StorageError.
[[nodiscard]] ReturnBasis basisFor(
    std::span<const ReturnSheet> sheets, const RosterReader &roster, const Watch &watch = {});

} // namespace core
