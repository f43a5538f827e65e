#include "core/domain/search_text.h"

#include <QStringList>
#include <algorithm>

namespace core {

QString folded(const QString &text)
{
    QString plain;
    for (const QChar c : text.normalized(QString::NormalizationForm_KD))
        if (c.category() != QChar::Mark_NonSpacing)
            plain += c;
    // By way of upper case, which spells ß as SS; case folding alone leaves it.
    return plain.toUpper().toCaseFolded();
}

bool matchesWords(const QString &foldedText, const QString &foldedQuery)
{
    const QStringList words = foldedQuery.split(u' ', Qt::SkipEmptyParts);
    return std::ranges::all_of(
        words, [&foldedText](const QString &word) { return foldedText.contains(word); });
}

} // namespace core
