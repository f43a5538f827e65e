#include "core/safety/pain_place.h"

namespace core {

bool mayHurt(const PainFlag &pain, const SetEffort &set)
{
    return !pain.area || works(set, *pain.area);
}

bool mayHurt(const PainFlag &pain, const Variation &variation)
{
    return !pain.area || works(variation, *pain.area);
}

} // namespace core
