#pragma once

#include <QFont>
#include <QSize>
#include <QString>
#include <QTextOption>

/// Text that breaks between words, and inside one only where the word alone is too wide.
/// (Qt's flags of drawText break inside words as soon as both are asked for.)
namespace ui {

[[nodiscard]] QTextOption wrappedTextOption();

/// What the text needs when it is at most `width` wide; drawn with wrappedTextOption().
[[nodiscard]] QSize wrappedTextSize(const QString &text, const QFont &font, int width);

} // namespace ui
