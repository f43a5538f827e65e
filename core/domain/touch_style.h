#pragma once

#include <QString>
#include <optional>

namespace core {

/// How the bar meets the lifter's chest.
enum class TouchStyle { undecided, soft, sinking };

/// Which touch style a variation trains.
enum class Serves { both, soft, sinking };

/// Words for the screen.
[[nodiscard]] QString words(TouchStyle style);
[[nodiscard]] QString words(Serves serves);

/// Words for files: "soft", "sinking", "undecided" and "soft", "sinking", "both".
[[nodiscard]] QString fileWord(TouchStyle style);
[[nodiscard]] std::optional<TouchStyle> touchStyleFromFileWord(const QString &word);
[[nodiscard]] QString fileWord(Serves serves);
[[nodiscard]] std::optional<Serves> servesFromFileWord(const QString &word);

/// Whether a variation that serves `serves` is meant for a lifter of this style.
/// An undecided lifter may train with any.
[[nodiscard]] bool suits(Serves serves, TouchStyle style);

} // namespace core
