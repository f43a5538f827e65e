#include "core/domain/touch_style.h"

namespace core {

bool suits(Serves serves, TouchStyle style)
{
    return serves == Serves::both || style == TouchStyle::undecided
        || (serves == Serves::soft) == (style == TouchStyle::soft);
}

} // namespace core
