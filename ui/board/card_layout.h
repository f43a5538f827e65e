#pragma once

#include "ui/board/week_view.h"

#include <QFont>
#include <QRect>
#include <vector>

/// Where the parts of a card lie.
namespace ui {

/// A piece of text in its place.
struct CardText
{
    enum class Role { name, sets, load, effort, given, note, caution, prompt };

    Role role = Role::name;
    QRect rect;
    QString text;
    QFont font;
};

struct CardLayout
{
    QRect mark;                  ///< touch mark
    std::vector<CardText> texts; ///< from the top
    QRect setsField;             ///< where the set lines are edited in place
    QRect noteField;             ///< where the note is
    int height = 0;
};

/// Text is wrapped, never cut off; a name with a word that is too wide is written smaller first.
/// Load and effort stand beside the sets where there is room, else below them.
[[nodiscard]] CardLayout cardLayout(const CardView &card, int width, const QFont &body);

} // namespace ui
