#pragma once

#include <QPageSize>
#include <QSizeF>

namespace ui {

enum class PaperSize { a4, letter };

[[nodiscard]] QPageSize pageSize(PaperSize paper);

/// Lengths of a printed sheet count in twips, 1/20 of a point: fine enough for whole numbers of
/// font sizes, coarse enough to read.
inline constexpr double kTwipsPerPoint = 20.0;
inline constexpr int kTwipsPerInch = 1440;

/// The paper, upright.
[[nodiscard]] QSizeF sizeInTwips(PaperSize paper);

/// What printers of this country usually hold.
[[nodiscard]] PaperSize usualPaper();

} // namespace ui
