#pragma once

#include <QFont>

/// Spacing and type, one scale for every page.
namespace ui {

/// Distances in device-independent pixels.
namespace space {
inline constexpr int hair = 2;   ///< inside a cell, between a word and its sub-line
inline constexpr int tight = 4;  ///< between a mark and its word
inline constexpr int gap = 8;    ///< between neighbours
inline constexpr int group = 16; ///< between groups
inline constexpr int page = 24;  ///< around a page or a start panel
inline constexpr int radius = 4; ///< of a card's or a field's corner
inline constexpr int mark = 12;  ///< side of a touch mark beside body text
inline constexpr int field = 30; ///< least height of a field or a button
} // namespace space

enum class Type {
    small,   ///< units, notes under a value
    body,    ///< everything
    strong,  ///< body in semi-bold: a name in a row
    heading, ///< title of a group
    title    ///< name of the lifter, of a page
};

/// The font of a step of the scale, from the font that the user's desktop sets for body text.
[[nodiscard]] QFont font(Type type, const QFont &body);

/// The font in `factor` times its size.
[[nodiscard]] QFont scaled(QFont font, double factor);

} // namespace ui
