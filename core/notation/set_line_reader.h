#pragma once

#include "core/notation/set_line.h"

#include <QStringView>

/// The reading of one set line, shared by the parser and the completion.
namespace core {

/// Where in a line the reading stands: what has to be written next.
enum class LinePlace {
    sets,
    times, ///< the x
    reps,
    upperReps, ///< after 4-
    cap,       ///< after AMRAP max
    restCode,  ///< inside the brackets of 1+2(
    rpe,       ///< after @
    unit,      ///< after a number that may be a share, a load or reps in reserve
    drop,      ///< after -
    dropUnit,
    tempo,
    pause,
    rest,
    restUnit,
    parts, ///< a word or sign that begins a part
    complete
};

/// Where and why a reading stopped.
struct LineStop
{
    qsizetype at = 0; ///< into the line
    QString words;
    LinePlace place = LinePlace::sets;
};

struct LineReading
{
    SetLine line; ///< as far as it was read
    bool hasTarget = false;
    std::optional<LineStop> stop; ///< empty = the line is sound
};

/// Reads one line, without the word that parts it from others.
[[nodiscard]] LineReading readSetLine(QStringView line);

/// One line of a row, and where it begins there.
struct RowLine
{
    qsizetype from = 0;
    QStringView text;
};

/// The lines of a row, at least one: parted by the word `then`, which is no word inside a note,
/// between brackets or as a part of another one.
[[nodiscard]] std::vector<RowLine> linesOf(QStringView row);

/// Between lines stood a slash once: what to write in its place.
[[nodiscard]] QString slashWords();

} // namespace core
