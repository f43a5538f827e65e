#pragma once

#include <QDate>
#include <QLocale>

namespace core {

/// The language that the program speaks, for names of months and days. The locale decides about
/// numbers alone: German days amid English sentences help nobody.
[[nodiscard]] QLocale language();

/// The date in that language, by a format of QLocale such as "ddd d MMM".
[[nodiscard]] QString dateWords(QDate date, const QString &format);

} // namespace core
