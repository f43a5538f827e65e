#pragma once

#include "core/domain/touch_style.h"

#include <QColor>
#include <QPalette>

namespace ui {

enum class Scheme { light, dark };

/// Colours by what they are for. Hues are those of Okabe & Ito (2008), Color Universal Design,
/// which people with any colour vision can tell apart; text shades of them are darkened or
/// lightened until they meet WCAG 2.2 AA on every ground they stand on (checked by a test).
struct Colours
{
    QColor window;        ///< behind everything
    QColor surface;       ///< lists, cards, charts, fields
    QColor sunken;        ///< tracks, alternate rows, disabled fields
    QColor line;          ///< hairlines between things; decoration only
    QColor controlBorder; ///< edge of something that can be used, >= 3:1
    QColor text;
    QColor mutedText; ///< secondary text, still >= 4.5:1
    QColor accent;    ///< the next step, the focus, links
    QColor onAccent;
    QColor chosen; ///< ground of the chosen row or card
    QColor onChosen;
    QColor cautionGround;
    QColor cautionText;
    QColor dangerGround;
    QColor dangerText;
    QColor goodText; ///< "done", "on plan"

    QColor softTouch; ///< marks, not text: >= 3:1 on surface and window
    QColor sinkingTouch;
    QColor bothTouches;
    QColor undecidedTouch;

    QColor chartEstimate; ///< the smoothed line; its band is bandOf() of it
    QColor chartFiltered; ///< what was known then
    QColor chartReading;  ///< single sets behind the line
    QColor chartTonnage;
    QColor chartLifts;
    QColor chartMissed;
    QColor chartGrid; ///< decoration only
};

[[nodiscard]] const Colours &colours(Scheme scheme);

/// The scheme that a palette shows, so that a widget needs no more than its own palette:
/// `colours(palette()).softTouch`. Ask again on QEvent::PaletteChange.
[[nodiscard]] Scheme schemeOf(const QPalette &palette);
[[nodiscard]] const Colours &colours(const QPalette &palette);

[[nodiscard]] QColor markColour(const Colours &colours, core::TouchStyle style);
[[nodiscard]] QColor markColour(const Colours &colours, core::Serves serves);

/// The fill of an interval around a line of this colour.
[[nodiscard]] QColor bandOf(QColor line);

/// Contrast ratio of two opaque colours, 1 to 21.
/// Source: W3C, Web Content Accessibility Guidelines 2.2, "contrast ratio", "relative luminance".
[[nodiscard]] double contrastRatio(const QColor &a, const QColor &b);

} // namespace ui
