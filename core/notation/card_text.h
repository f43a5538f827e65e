#pragma once

#include "core/domain/card.h"
#include "core/domain/variation.h"

#include <QLocale>
#include <QString>
#include <optional>
#include <span>
#include <vector>

/// Cards as text that reads well in a mail and comes back from the clipboard:
///
///     Monday
///     Off-chest pause bench: 1x1 @8 then 3x3 -10%
///         slow, and breathe out late
///     Thursday
///     Competition bench: 4x3 @8
///
/// A day's name stands alone on its line, in the user's language; without one the cards are of one
/// day. A card's line begins with the name or the code of its variation. An indented line is the
/// note of the card above. Blank lines say nothing.
namespace core {

/// A card read from text; `offset` counts days from the first one named.
struct CardRow
{
    int offset = 0;
    VariationId variation;
    QString setLine;
    QString note;

    friend bool operator==(const CardRow &, const CardRow &) = default;
};

struct CardTextError
{
    int line = 1;   ///< from 1
    int column = 1; ///< from 1
    QString words;
};

struct ParsedCardText
{
    std::vector<CardRow> rows; ///< by day and in the order written; empty on an error
    std::optional<CardTextError> error;
};

/// @param cards  of one lifter; days are named where they are on more than one
[[nodiscard]] QString cardText(std::vector<Card> cards, std::span<const Variation> catalogue,
    const QLocale &locale = QLocale());

[[nodiscard]] ParsedCardText parseCardText(
    const QString &text, std::span<const Variation> catalogue, const QLocale &locale = QLocale());

} // namespace core
