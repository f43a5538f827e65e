#pragma once

#include <QString>

namespace core {

/// Whether the text has a letter or a digit that can be seen: signs and blanks, of which Unicode
/// has some without a width, say nothing.
[[nodiscard]] bool hasVisibleText(const QString &text);

} // namespace core
