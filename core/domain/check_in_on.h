#pragma once

#include "core/domain/check_in.h"

#include <algorithm>
#include <span>

namespace core {

/// What the lifter said on the day; null where nothing was.
[[nodiscard]] inline const CheckIn *checkInOn(
    std::span<const CheckIn> checkIns, LifterId lifter, QDate day)
{
    const auto said = std::ranges::find_if(checkIns, [lifter, day](const CheckIn &checkIn) {
        return checkIn.lifter == lifter && checkIn.day == day;
    });
    return said == checkIns.end() ? nullptr : &*said;
}

} // namespace core
