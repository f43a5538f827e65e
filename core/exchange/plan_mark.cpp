#include "core/exchange/plan_mark.h"

#include "core/domain/week.h"

#include <QCryptographicHash>
#include <QRegularExpression>
#include <algorithm>
#include <vector>

namespace core {

namespace {

constexpr qsizetype kDigits = 16;
constexpr size_t kMostTriedApart = 10; ///< cards; each doubles the marks to try

std::vector<const Card *> weekOf(LifterId lifter, QDate monday, std::span<const Card> cards)
{
    std::vector<const Card *> week;
    for (const Card &card : cards)
        if (card.lifter == lifter && mondayOf(card.day) == monday)
            week.push_back(&card);
    std::ranges::sort(week, [](const Card *a, const Card *b) { return isAbove(*a, *b); });
    return week;
}

/// @param setLines  of the cards of the week, in their order
QString markOf(LifterId lifter, QDate monday, std::span<const Card *const> week,
    std::span<const QString> setLines, std::span<const Variation> variations)
{
    QStringList lines{QString::number(lifter.value), monday.toString(Qt::ISODate)};
    for (size_t i = 0; i < week.size(); ++i) {
        const Variation *variation = find(variations, week[i]->variation);
        lines << week[i]->day.toString(Qt::ISODate) << (variation ? variation->code : QString())
              << setLines[i].simplified();
    }
    const QByteArray text = lines.join(u'\n').toUtf8();
    return QString::fromLatin1(
        QCryptographicHash::hash(text, QCryptographicHash::Sha256).toHex().left(kDigits));
}

std::vector<QString> setLinesOf(std::span<const Card *const> week)
{
    std::vector<QString> setLines;
    for (const Card *card : week)
        setLines.push_back(card->setLine);
    return setLines;
}

/// As it was if a slash parted whatever is parted now. After a note, which runs to the end of its
/// row, there was no slash, and in a note "then" is a word.
QString withSlashes(const QString &setLine)
{
    static const QRegularExpression kThen(
        QStringLiteral("\\bthen\\b"), QRegularExpression::CaseInsensitiveOption);
    const QStringList rows = setLine.split(u'\n');
    QString was;
    for (const QString &row : rows) {
        const qsizetype note = row.indexOf(u';');
        was += row.left(note).replace(kThen, QStringLiteral("/"));
        was += note < 0 ? QStringLiteral("/") : row.mid(note) + u'\n';
    }
    was.chop(1); // after the last row
    return was;
}

} // namespace

QString planMark(LifterId lifter, QDate monday, std::span<const Card> cards,
    std::span<const Variation> variations)
{
    const std::vector<const Card *> week = weekOf(lifter, monday, cards);
    return markOf(lifter, monday, week, setLinesOf(week), variations);
}

bool isMarkOf(const QString &mark, LifterId lifter, QDate monday, std::span<const Card> cards,
    std::span<const Variation> variations)
{
    const std::vector<const Card *> week = weekOf(lifter, monday, cards);
    const std::vector<QString> now = setLinesOf(week);
    if (markOf(lifter, monday, week, now, variations) == mark)
        return true;
    std::vector<size_t> parted;
    std::vector<QString> was = now;
    for (size_t i = 0; i < now.size(); ++i)
        if (was[i] = withSlashes(now[i]); was[i].simplified() != now[i].simplified())
            parted.push_back(i);
    if (parted.empty())
        return false;
    if (parted.size() > kMostTriedApart)
        return markOf(lifter, monday, week, was, variations) == mark;
    for (size_t choice = 1; choice < size_t(1) << parted.size(); ++choice) {
        std::vector<QString> tried = now;
        for (size_t bit = 0; bit < parted.size(); ++bit)
            if (choice >> bit & 1U)
                tried[parted[bit]] = was[parted[bit]];
        if (markOf(lifter, monday, week, tried, variations) == mark)
            return true;
    }
    return false;
}

} // namespace core
