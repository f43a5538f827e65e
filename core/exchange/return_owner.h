#pragma once

#include "core/exchange/return_basis.h"

namespace core {

/// Whom a sheet is of.
struct SheetOwner
{
    const Lifter *lifter = nullptr; ///< null = nobody of the roster, and `words` says why
    bool isCertain = false;         ///< number and name agree
    QString words;                  ///< what does not fit, for the coach
};

[[nodiscard]] SheetOwner ownerOf(const ReturnSheet &sheet, const ReturnBasis &basis);

} // namespace core
