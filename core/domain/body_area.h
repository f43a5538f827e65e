#pragma once

#include <QString>
#include <optional>
#include <vector>

namespace core {

/// Where a lifter is asked about soreness.
enum class BodyArea { back, legs, chest, shoulders, elbows };

inline constexpr BodyArea kBodyAreas[] = {
    BodyArea::back, BodyArea::legs, BodyArea::chest, BodyArea::shoulders, BodyArea::elbows};

/// "back", "legs" ... in the user's language, to stand inside a sentence.
[[nodiscard]] QString words(BodyArea area);
/// "back", "legs" ... in files.
[[nodiscard]] QString fileWord(BodyArea area);
[[nodiscard]] std::optional<BodyArea> bodyAreaFromFileWord(const QString &word);

/// Several in a file, with a space between: "back legs"; none are the empty text.
[[nodiscard]] QString fileWords(const std::vector<BodyArea> &areas);
[[nodiscard]] std::optional<std::vector<BodyArea>> bodyAreasFromFileWords(const QString &words);

} // namespace core
