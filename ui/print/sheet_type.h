#pragma once

#include <QFont>
#include <QStringList>

/// Type of the printed sheet and its measures, in twips.
namespace ui {

enum class SheetType { title, subtitle, heading, name, body, small, load };

[[nodiscard]] QFont sheetFont(SheetType type);

/// Height of a line.
[[nodiscard]] double lineHeight(SheetType type);

/// Width of a text on one line.
[[nodiscard]] double textWidth(const QString &text, SheetType type);

/// Breaks a text into lines of at most `width`, between words where it can.
[[nodiscard]] QStringList brokenLines(const QString &text, SheetType type, double width);

} // namespace ui
