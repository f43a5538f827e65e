#pragma once

#include "core/domain/touch_style.h"

#include <QString>
#include <QStringList>

/// How the bar met the chest in a heavy set, as the coach or the lifter saw it: five steps in
/// order, told apart by what the bar does. The steps and their words are ours; screen and print
/// take them from here.
namespace core {

inline constexpr int kSoftestTouch = 1;
inline constexpr int kHardestTouch = 5;

[[nodiscard]] constexpr bool isTouchScore(int score)
{
    return score >= kSoftestTouch && score <= kHardestTouch;
}

/// In a word or a few: "light", "rests", "sinks" ...
/// @pre isTouchScore(score)
[[nodiscard]] QString touchWord(int score);
/// The words of all scores, the softest first.
[[nodiscard]] QStringList touchSteps();
/// The whole scale in one line: "1 = held off or feather-light, 2 = light ...".
[[nodiscard]] QString touchScale();

/// The hardest score that is still as wanted for a lifter of the style: up to "light" for a soft
/// touch, up to "sinks" for a sinking one, who wants the bar to go in but not to die there; for an
/// undecided lifter up to "rests" (common practice, no source).
[[nodiscard]] int wantedTouch(TouchStyle style);

} // namespace core
