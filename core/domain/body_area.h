#pragma once

#include "core/domain/enum_words.h"

namespace core {

/// Where a lifter is asked about soreness and pain.
enum class BodyArea { back, legs, chest, shoulders, elbows, wrists };

inline constexpr BodyArea kBodyAreas[] = {BodyArea::back, BodyArea::legs, BodyArea::chest,
    BodyArea::shoulders, BodyArea::elbows, BodyArea::wrists};

/// On the screen they stand inside a sentence.
template <> inline constexpr auto kEnumWords<BodyArea> = std::to_array<EnumWord<BodyArea>>({
    {BodyArea::back, "back", QT_TRANSLATE_NOOP("core", "back")},
    {BodyArea::legs, "legs", QT_TRANSLATE_NOOP("core", "legs")},
    {BodyArea::chest, "chest", QT_TRANSLATE_NOOP("core", "chest")},
    {BodyArea::shoulders, "shoulders", QT_TRANSLATE_NOOP("core", "shoulders")},
    {BodyArea::elbows, "elbows", QT_TRANSLATE_NOOP("core", "elbows")},
    {BodyArea::wrists, "wrists", QT_TRANSLATE_NOOP("core", "wrists")},
});

} // namespace core
