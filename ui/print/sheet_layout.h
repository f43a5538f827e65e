#pragma once

#include "core/loads/week_sheet.h"
#include "ui/print/paper.h"
#include "ui/print/sheet_type.h"

#include <QLineF>
#include <QRectF>
#include <vector>

/// Where the words and boxes of a week stand on the paper. Pure geometry from the words and the
/// font's measures; sheet_painter draws it.
namespace ui {

/// One line of text that fits its box.
struct SheetText
{
    QRectF box;
    QString text;
    SheetType type = SheetType::body;
    Qt::Alignment align = Qt::AlignLeft | Qt::AlignVCenter;
};

/// One page, in twips from the paper's top left corner.
struct SheetPage
{
    std::vector<QRectF> shades; ///< light grey
    std::vector<QRectF> boxes;  ///< to write into
    std::vector<QLineF> rules;
    std::vector<SheetText> texts;
};

/// Margins that every usual printer can print.
inline constexpr double kSheetMargin = 30.0 * kTwipsPerPoint;

/// A sheet on its paper, ready for a printer, a file or a preview.
struct LaidOutSheet
{
    QString title; ///< "Plan of Ada Example, 4 May to 10 May 2026"
    PaperSize paper = PaperSize::a4;
    std::vector<SheetPage> pages; ///< at least one
};

/// The whole sheet. A day or a card that does not fit goes on overleaf under its own heading;
/// nothing is cut off.
[[nodiscard]] LaidOutSheet layOut(const core::WeekSheet &sheet, PaperSize paper);

} // namespace ui
