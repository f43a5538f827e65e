#pragma once

#include <QString>

namespace core {

/// Text for comparing without case and accents: "Zoë Núñez" -> "zoe nunez". By Unicode
/// compatibility decomposition without its combining marks, then case folding.
[[nodiscard]] QString folded(const QString &text);

/// Whether every word of `query` (folded) occurs in `text` (folded). A blank query finds
/// everything.
[[nodiscard]] bool matchesWords(const QString &foldedText, const QString &foldedQuery);

} // namespace core
