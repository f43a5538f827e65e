#pragma once

#include <QString>

namespace core {

/// Whether the text has a letter or a digit that can be seen: signs and blanks, of which Unicode
/// has some without a width, say nothing.
[[nodiscard]] bool hasVisibleText(const QString &text);

/// Whether the text has signs that cannot be seen and turn or part it (Unicode, category Cf), so
/// that two names may look alike. The joiners that some scripts need are none of them.
[[nodiscard]] bool hasHiddenSigns(const QString &text);

} // namespace core
