#include "core/domain/language.h"

#include "core/domain/text.h"

namespace core {

QLocale language()
{
    // A translation answers with the code of its own language, such as "de".
    return QLocale(Text::tr("en", "code of the language, for the names of months and days"));
}

QString dateWords(QDate date, const QString &format)
{
    return language().toString(date, format);
}

} // namespace core
