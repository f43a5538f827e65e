#include "core/domain/nearest_word.h"

#include <algorithm>
#include <numeric>
#include <vector>

namespace core {

namespace {

/// Letters to add, leave out or change on the way from `a` to `b`.
qsizetype distance(const QString &a, const QString &b)
{
    std::vector<qsizetype> row(size_t(b.size()) + 1);
    std::iota(row.begin(), row.end(), 0);
    for (qsizetype i = 0; i < a.size(); ++i) {
        qsizetype diagonal = row[0];
        row[0] = i + 1;
        for (qsizetype j = 0; j < b.size(); ++j) {
            const qsizetype changed = diagonal + (a[i] == b[j] ? 0 : 1);
            diagonal = row[size_t(j) + 1];
            row[size_t(j) + 1] = std::min({changed, diagonal + 1, row[size_t(j)] + 1});
        }
    }
    return row.back();
}

/// Upper case, spaces and hyphens are the usual slips; they count for nothing.
QString plain(const QString &word)
{
    return word.toLower().replace(u' ', u'_').replace(u'-', u'_');
}

} // namespace

QString nearestWord(const QString &typed, const QStringList &known)
{
    constexpr qsizetype kLongest = 60; // anything longer is no slip of the hand
    if (typed.size() > kLongest)
        return {};
    QString nearest;
    qsizetype least = std::numeric_limits<qsizetype>::max();
    const QString word = plain(typed);
    for (const QString &candidate : known) {
        const qsizetype d = distance(word, candidate);
        if (d * 3 <= std::max(word.size(), candidate.size()) && d < least) {
            least = d;
            nearest = candidate;
        }
    }
    return nearest;
}

} // namespace core
