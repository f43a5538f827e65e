#pragma once

#include "core/domain/enum_words.h"

#include <vector>

namespace core {

/// Where a lifter is asked about soreness.
enum class BodyArea { back, legs, chest, shoulders, elbows };

inline constexpr BodyArea kBodyAreas[] = {
    BodyArea::back, BodyArea::legs, BodyArea::chest, BodyArea::shoulders, BodyArea::elbows};

/// On the screen they stand inside a sentence.
template <> inline constexpr auto kEnumWords<BodyArea> = std::to_array<EnumWord<BodyArea>>({
    {BodyArea::back, "back", QT_TRANSLATE_NOOP("core", "back")},
    {BodyArea::legs, "legs", QT_TRANSLATE_NOOP("core", "legs")},
    {BodyArea::chest, "chest", QT_TRANSLATE_NOOP("core", "chest")},
    {BodyArea::shoulders, "shoulders", QT_TRANSLATE_NOOP("core", "shoulders")},
    {BodyArea::elbows, "elbows", QT_TRANSLATE_NOOP("core", "elbows")},
});

/// Several in a file, with a space between: "back legs"; none are the empty text.
[[nodiscard]] QString fileWords(const std::vector<BodyArea> &areas);
[[nodiscard]] std::optional<std::vector<BodyArea>> bodyAreasFromFileWords(const QString &words);

} // namespace core
