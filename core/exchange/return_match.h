#pragma once

#include "core/exchange/return_review.h"

#include <map>

/// The two questions behind a return sheet: whose is it, and which of its sets does the log have.
namespace core {

/// Whom a sheet is of.
struct SheetOwner
{
    const Lifter *lifter = nullptr; ///< null = nobody of the roster, and `words` says why
    bool isCertain = false;         ///< number and name agree
    QString words;                  ///< what does not fit, for the coach
};

[[nodiscard]] SheetOwner ownerOf(const ReturnSheet &sheet, const ReturnBasis &basis);

/// The set as the log keeps it.
/// @throws std::out_of_range where `idOf` lacks the code
[[nodiscard]] SetEntry entryOf(
    const ReturnedSet &returned, const std::map<QString, VariationId> &idOf);

struct SetsBooked
{
    std::vector<SetEntry> sets;
    int added = 0;
    int corrected = 0;
    int known = 0;
};

/// Sets of a session after those of a sheet, see acceptReturns().
[[nodiscard]] SetsBooked bookSets(
    const std::vector<SetEntry> &present, const std::vector<SetEntry> &told);

} // namespace core
