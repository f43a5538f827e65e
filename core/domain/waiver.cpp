#include "core/domain/waiver.h"

#include "core/domain/text.h"

#include <cmath>

namespace core {

QStringList problems(const Waiver &waiver)
{
    QStringList wrong;
    if (!waiver.key.lifter.isValid())
        wrong << Text::tr("A note on a finding belongs to a lifter.");
    if (!waiver.key.monday.isValid())
        wrong << Text::tr("A note on a finding belongs to a week.");
    if (!std::isfinite(waiver.measure))
        wrong << Text::tr("The finding has no measure.");
    return wrong;
}

} // namespace core
