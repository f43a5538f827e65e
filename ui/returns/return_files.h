#pragma once

#include "core/exchange/return_review.h"

#include <QStringList>

namespace ui {

/// Which of the paths are return sheets, by their first line.
[[nodiscard]] QStringList returnSheetsAmong(const QStringList &paths);

/// In the order to be read in: pain first, then what can be accepted, then the rest; each by the
/// lifter's name.
[[nodiscard]] std::vector<size_t> readingOrder(const std::vector<core::SheetReview> &reviews);

} // namespace ui
