#pragma once

#include "core/domain/enum_words.h"

namespace core {

enum class Unit { kilogram, pound };

template <> inline constexpr auto kEnumWords<Unit> = std::to_array<EnumWord<Unit>>(
    {{Unit::kilogram, "kg"}, {Unit::pound, "lb"}});

/// International avoirdupois pound, exact since 1959.
inline constexpr double kKgPerPound = 0.45359237;

[[nodiscard]] constexpr double toKg(double amount, Unit unit)
{
    return unit == Unit::pound ? amount * kKgPerPound : amount;
}
[[nodiscard]] constexpr double fromKg(double kg, Unit unit)
{
    return unit == Unit::pound ? kg / kKgPerPound : kg;
}

/// "kg" or "lb".
[[nodiscard]] inline QString symbol(Unit unit)
{
    return fileWord(unit);
}

/// Load for the screen, in the lifter's unit and the user's locale: "102.5 kg". At most
/// `decimals` places; trailing zeros are dropped.
[[nodiscard]] QString formatLoad(double kg, Unit unit, int decimals = 2);

/// The same without the unit, for table cells whose header names it.
[[nodiscard]] QString formatLoadNumber(double kg, Unit unit, int decimals = 2);

} // namespace core
