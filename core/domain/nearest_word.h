#pragma once

#include <QStringList>

namespace core {

/// The word of `known` that `typed` was most likely meant to be: the fewest letters added, left
/// out, changed (Levenshtein distance), and at most a third of the longer word. Empty where none
/// is that near.
[[nodiscard]] QString nearestWord(const QString &typed, const QStringList &known);

} // namespace core
