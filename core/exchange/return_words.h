#pragma once

#include "core/exchange/return_review.h"

namespace core {

/// The days of a sheet, planned beside done, by day of the plan. Loads in the lifter's unit, words
/// and numbers in the user's language. Names and notes are text as written: show them as such.
/// @param estimates  of the lifter, by which loads are far above the max
[[nodiscard]] std::vector<DayReview> dayReviews(const ReturnSheet &sheet, const Lifter &lifter,
    std::span<const Variation> variations, const LiftEstimates &estimates);

/// What stands in the way of a sheet or speaks for it, in a word or two: "ready", "old plan" ...
[[nodiscard]] QString words(SheetStanding standing);

/// The sheet as lines of plain text, pain first; of the sets only those done otherwise.
[[nodiscard]] QStringList reviewLines(const SheetReview &review);

} // namespace core
