#pragma once

#include "core/domain/card.h"
#include "core/domain/lifter.h"
#include "core/domain/variation.h"
#include "core/domain/watch.h"
#include "core/exchange/return_sheet.h"

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
};

/// Reads it. Throws StorageError.
[[nodiscard]] ReturnBasis basisFor(
    std::span<const ReturnSheet> sheets, const RosterReader &roster, const Watch &watch = {});

} // namespace core
