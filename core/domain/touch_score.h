#pragma once

#include "core/domain/touch_style.h"

#include <QString>
#include <optional>

/// How the bar met the chest in a heavy set, as the coach or the lifter saw it: five steps in
/// order, told apart by what the bar does. The steps and their words are ours; screen, print and
/// files take them from here.
namespace core {

inline constexpr int kSoftestTouch = 1;
inline constexpr int kHardestTouch = 5;

[[nodiscard]] constexpr bool isTouchScore(int score)
{
    return score >= kSoftestTouch && score <= kHardestTouch;
}

/// In a word or a few: "light", "rests", "sinks" ...
/// @pre isTouchScore(score), here and below
[[nodiscard]] QString touchWord(int score);
/// What was seen, as a sentence: "The bar settles into the chest and ...".
[[nodiscard]] QString touchSentence(int score);
/// The whole scale in one line: "1 = held off or feather-light, 2 = light ...".
[[nodiscard]] QString touchScale();

/// "held_off", "light", "rests", "sinks", "stops" in files.
[[nodiscard]] QString touchFileWord(int score);
[[nodiscard]] std::optional<int> touchFromFileWord(const QString &word);

/// The hardest score that is still as wanted for a lifter of the style: up to "light" for a soft
/// touch, up to "sinks" for a sinking one, who wants the bar to go in but not to die there; for an
/// undecided lifter up to "rests" (common practice, no source).
[[nodiscard]] int wantedTouch(TouchStyle style);

} // namespace core
