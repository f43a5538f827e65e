#pragma once

#include "core/domain/enum_words.h"

namespace core {

/// How the bar meets the lifter's chest.
enum class TouchStyle { undecided, soft, sinking };

template <> inline constexpr auto kEnumWords<TouchStyle> = std::to_array<EnumWord<TouchStyle>>({
    {TouchStyle::undecided, "undecided", QT_TRANSLATE_NOOP("core", "touch undecided")},
    {TouchStyle::soft, "soft", QT_TRANSLATE_NOOP("core", "soft touch")},
    {TouchStyle::sinking, "sinking", QT_TRANSLATE_NOOP("core", "sinking touch")},
});

/// Which touch style a variation trains.
enum class Serves { both, soft, sinking };

template <> inline constexpr auto kEnumWords<Serves> = std::to_array<EnumWord<Serves>>({
    {Serves::both, "both", QT_TRANSLATE_NOOP("core", "both touches")},
    {Serves::soft, "soft", QT_TRANSLATE_NOOP("core", "soft touch")},
    {Serves::sinking, "sinking", QT_TRANSLATE_NOOP("core", "sinking touch")},
});

/// Whether a variation that serves `serves` is meant for a lifter of this style.
/// An undecided lifter may train with any.
[[nodiscard]] bool suits(Serves serves, TouchStyle style);

} // namespace core
