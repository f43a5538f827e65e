#include "core/exchange/plan_mark.h"

#include "core/domain/week.h"

#include <QCryptographicHash>
#include <algorithm>
#include <vector>

namespace core {

namespace {
constexpr qsizetype kDigits = 16;
}

QString planMark(LifterId lifter, QDate monday, std::span<const Card> cards,
    std::span<const Variation> variations)
{
    std::vector<const Card *> week;
    for (const Card &card : cards)
        if (card.lifter == lifter && mondayOf(card.day) == monday)
            week.push_back(&card);
    std::ranges::sort(week, [](const Card *a, const Card *b) { return isAbove(*a, *b); });
    QStringList lines{QString::number(lifter.value), monday.toString(Qt::ISODate)};
    for (const Card *card : week) {
        const Variation *variation = find(variations, card->variation);
        lines << card->day.toString(Qt::ISODate) << (variation ? variation->code : QString())
              << card->setLine.simplified();
    }
    const QByteArray text = lines.join(u'\n').toUtf8();
    return QString::fromLatin1(
        QCryptographicHash::hash(text, QCryptographicHash::Sha256).toHex().left(kDigits));
}

} // namespace core
