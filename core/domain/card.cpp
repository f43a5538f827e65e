#include "core/domain/card.h"

#include "core/domain/text.h"

namespace core {

QStringList problems(const Card &card)
{
    QStringList wrong;
    if (!card.lifter.isValid())
        wrong << Text::tr("A card belongs to a lifter.");
    if (!card.variation.isValid())
        wrong << Text::tr("A card needs a variation.");
    if (!card.day.isValid())
        wrong << Text::tr("A card needs a day.");
    if (card.position < 0)
        wrong << Text::tr("The place in the day counts from 0.");
    return wrong;
}

} // namespace core
