#pragma once

#include "core/domain/lifter.h"
#include "core/loads/resolved_cards.h"
#include "core/loads/set_in_values.h"

#include <QStringList>
#include <optional>
#include <span>
#include <vector>

/// What the printed week of one lifter holds, in words and in the lifter's unit; where it stands on
/// the paper is for ui/print.
namespace core {

/// One set to do: a row with what is planned and room for what was done.
struct SheetSet
{
    QString reps;   ///< "3"
    QString target; ///< as the coach wrote it: "@8", "75%"; may be empty
    QString load;   ///< "102.5", empty where the coach has to say
    QString plates; ///< on each side: "25 + 15 + 1.25"
    QString rpe;    ///< expected, to the half: "7.5", "easy"; empty where unknown
    SetInValues values = {};

    friend bool operator==(const SheetSet &, const SheetSet &) = default;
};

struct SheetCard
{
    QString variation;
    QString code;       ///< of the variation
    QString setLine;    ///< "4x3 @8", lines parted by "then"
    QStringList effort; ///< of each line, asked and expected in words; those that are known
    QString tempo;      ///< "4 counts down, 2 held, then as fast as possible"; may be empty
    QString purpose;
    QString note;         ///< the coach's, as written
    QStringList withheld; ///< what is held back and why, and lighter loads; the sets stay
    QStringList cautions; ///< of the variation and of the loads
    std::vector<SheetSet> sets;
    QStringList lighter = {}; ///< what today speaks for in place of the loads, see easedWords()

    friend bool operator==(const SheetCard &, const SheetCard &) = default;
};

struct SheetDay
{
    QString day; ///< "Monday 4 May", with the word that it was given already where it was
    QDate date;
    std::vector<SheetCard> cards;
    QStringList stops = {}; ///< what the plan checks stop on this day, and nobody has accepted

    friend bool operator==(const SheetDay &, const SheetDay &) = default;
};

struct WeekSheet
{
    QString lifter;
    QString week; ///< "4 May to 10 May 2026"
    QDate monday;
    QStringList facts;          ///< touch style, meet, bar
    QString unit;               ///< "kg" or "lb"
    std::vector<SheetDay> days; ///< only days with cards
    QStringList scales;         ///< what to write into the boxes for RPE and touch
    QStringList cautions;       ///< the usual ones, a line each
    QStringList stops = {};     ///< of the week as a whole, as SheetDay::stops

    friend bool operator==(const WeekSheet &, const WeekSheet &) = default;
};

/// What the plan checks stop and nobody has accepted, see core/advice/open_stops.h.
struct StopNote
{
    QDate day; ///< invalid = the week as a whole
    QString words;
};

/// @param monday  first day of the week
/// @param cards   of the lifter, by day and position; those of other weeks are left out
/// @param stops   of the lifter; printed in their day, or in the head of the sheet
[[nodiscard]] WeekSheet weekSheet(const Lifter &lifter, QDate monday,
    std::span<const ResolvedCard> cards, std::span<const Variation> variations,
    std::span<const StopNote> stops);

/// Tempo or pause in words; empty where neither is prescribed.
[[nodiscard]] QString tempoWords(const Tempo &tempo);

/// Name for a file about the lifter's week, without its ending: letters, digits, spaces and -.
[[nodiscard]] QString weekFileName(const WeekSheet &sheet);

} // namespace core
