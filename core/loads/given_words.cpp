#include "core/loads/given_words.h"

#include "core/domain/language.h"
#include "core/domain/text.h"

namespace core {

namespace {

QString dayOf(const QDateTime &at)
{
    return dateWords(at.toLocalTime().date(), QStringLiteral("d MMM"));
}

} // namespace

QString givenBadge(const ResolvedCard &card)
{
    if (card.changedSinceGiven)
        return Text::tr("changed since it was given");
    if (!card.given)
        return {};
    return card.given->by == GivenBy::reconstructed
        ? Text::tr("\u2248 given")
        : Text::tr("given %1").arg(dayOf(card.given->at));
}

QString givenWords(const GivenMark &mark, Unit unit)
{
    const QString when = Text::tr("Given on %1, %2.").arg(dayOf(mark.at), words(mark.by));
    if (!mark.from)
        return when;
    const Figure &max = mark.from->maxKg;
    return Text::tr("%1 From a max of %2 (90 %: %3 to %4), last set on %5.")
        .arg(when, formatLoad(max.value, unit, 1), formatLoadNumber(max.low90, unit, 1),
            formatLoad(max.high90, unit, 1),
            dateWords(mark.from->lastSet, QStringLiteral("d MMM yyyy")));
}

} // namespace core
