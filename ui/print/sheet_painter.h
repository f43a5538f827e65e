#pragma once

#include "ui/print/sheet_layout.h"

class QPainter;
class QPrinter;

namespace ui {

/// Paints a page with a painter whose unit is a twip.
void paint(QPainter &painter, const SheetPage &page);

/// Prints the sheet on its paper, upright. False where the printer refuses.
[[nodiscard]] bool print(QPrinter &printer, const LaidOutSheet &sheet);

/// Writes the sheet as a PDF with text that can be searched and copied. An existing file is
/// replaced only when the new one is complete.
/// @throws core::StorageError when the file cannot be written
void writePlanPdf(const QString &path, const LaidOutSheet &sheet);

} // namespace ui
