#include "core/safety/unknown_age.h"

#include "core/domain/text.h"

namespace core {

QString whyNoMaximalYet(const DayLimits &limits)
{
    if (!limits.isAgeUnknown)
        return {};
    return Text::tr("No maximal work is suggested before the lifter's age is known.");
}

} // namespace core
