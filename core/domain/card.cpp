#include "core/domain/card.h"

#include <QCoreApplication>

namespace core {

QStringList problems(const Card &card)
{
    const auto tr = [](const char *text) { return QCoreApplication::translate("Card", text); };
    QStringList wrong;
    if (!card.lifter.isValid())
        wrong << tr("A card belongs to a lifter.");
    if (!card.variation.isValid())
        wrong << tr("A card needs a variation.");
    if (!card.day.isValid())
        wrong << tr("A card needs a day.");
    if (card.position < 0)
        wrong << tr("The place in the day counts from 0.");
    return wrong;
}

} // namespace core
