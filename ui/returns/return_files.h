#pragma once

#include "core/exchange/return_review.h"

#include <QStringList>

namespace ui {

/// Reads the sheets, each once however often it is named. One that cannot be opened has that as
/// its problem. May run on any thread.
[[nodiscard]] std::vector<core::ReturnSheet> readReturnSheets(
    const QStringList &paths, QDate today);

/// Which of the paths are return sheets, by their first line.
[[nodiscard]] QStringList returnSheetsAmong(const QStringList &paths);

/// In the order to be read in: pain first, then what can be accepted, then the rest; each by the
/// lifter's name.
[[nodiscard]] std::vector<size_t> readingOrder(const std::vector<core::SheetReview> &reviews);

} // namespace ui
