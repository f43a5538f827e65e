#pragma once

#include "core/exchange/return_booking.h"
#include "core/exchange/return_review.h"

/// What came back from the lifters, on its way from the files into the log.
namespace core {

/// Sheets with what there is to say of each, for the coach to judge.
struct JudgedReturns
{
    std::vector<ReturnSheet> sheets;
    std::vector<SheetReview> reviews; ///< one a sheet, in their order
    ReturnBasis basis;                ///< that they were reviewed by
};

/// May run on any thread. Throws StorageError when the roster cannot be read.
[[nodiscard]] JudgedReturns judgeReturns(
    std::vector<ReturnSheet> sheets, const RosterReader &roster, const Watch &watch = {});

/// Reads the files, each once however often it is named, and judges them. One that cannot be opened
/// has that as its problem.
/// @param today  see readReturnSheet()
[[nodiscard]] JudgedReturns readReturns(
    const QStringList &paths, QDate today, const RosterReader &roster, const Watch &watch = {});

/// Books these of the sheets, in their order, as one action; see ReturnBooking. Those that are not
/// acceptable are left out.
/// @param accepted  their indexes
[[nodiscard]] Edit acceptReturns(
    const JudgedReturns &returns, std::span<const size_t> accepted, const ReturnIds &ids);

} // namespace core
