#pragma once

#include "core/domain/variation.h"

#include <QString>
#include <optional>
#include <variant>
#include <vector>

/// The text form of the sets on a card, such as `4x3 @8`.
///
///     card    = line { ( newline | "then" ) line }
///     line    = sets "x" reps { part } [ ";" note ]
///     reps    = n                    each set: 3
///             | n "-" n              as the day goes: 4-6
///             | n "+" [ cap ]        at least so many, then as many as possible: 5+
///             | "AMRAP" [ cap ]      as many as possible
///             | n "+" n [ "(" code ")" ]
///                                    lead-rep set: the first reps in the card's variation, the
///                                    rest in the competition lift or the variation named: 1+2,
///                                    1+2(feet_up)
///     cap     = "max" n              reps at which the set ends in any case: AMRAP max 10
///     part    = target | "tempo" n-n-n | "pause" n | "rest" time
///     target  = "@" rpe [ "-" rpe ]  RPE 1 to 10 in halves, at the last rep: @8, @7-8
///             | r [ "-" r ] "RIR"    reps in reserve, 0 to 9 in halves: 2RIR, 1-2RIR
///             | share "%"            of the day's estimated max of the variation: 75%
///             | load ( "kg" | "lb" ) on the bar: 100kg, 225lb
///             | "-" n ( "%" | "kg" | "lb" )
///                                    drop from the top set, the heaviest line above on the card
///     time    = n "s" | n "min" | n ":" nn
///
/// Tempo counts lowering-pause-lifting, 0 lifting as fast as possible; it and a pause stand in for
/// those of the variation. sets = 1 to 30, reps = 1 to 50, other numbers have at most two decimals.
///
/// Each part may be there once, in any order; a note runs to the end of its row, so that a "then"
/// in it is a word of the note. Spaces may stand anywhere between the parts, but not inside 4-6 and
/// 1+2, so that 3 -10% is a drop and 5+ 75% needs no second thought. Upper case reads as lower
/// case, and the multiplication sign as x. Decimals take a point or a comma in every locale, so
/// that a line means the same on every coach's machine, and are written back with a point. Blank
/// lines say nothing.
namespace core {

inline constexpr int kMostSets = 30;
inline constexpr int kMostReps = 50;
inline constexpr double kMostPercent = 150.0;
inline constexpr double kMostLoadKg = 1000.0;
inline constexpr double kMostReserve = 9.0;
inline constexpr int kMostCounts = 20; ///< of a pause or a part of a tempo
inline constexpr int kMostRestSeconds = 3600;

struct RpeTarget
{
    double rpe = 8.0;
    std::optional<double> to = {}; ///< a range: from rpe to this, above it
    friend bool operator==(const RpeTarget &, const RpeTarget &) = default;
};
struct ReserveTarget
{
    double rir = 2.0;
    std::optional<double> to = {}; ///< a range: from rir to this, above it
    friend bool operator==(const ReserveTarget &, const ReserveTarget &) = default;
};
struct ShareTarget
{
    double percent = 75.0;
    friend bool operator==(const ShareTarget &, const ShareTarget &) = default;
};
struct LoadTarget
{
    double loadKg = 0.0;
    bool inPounds = false; ///< as written, so that print is the inverse of parse
    friend bool operator==(const LoadTarget &, const LoadTarget &) = default;
};
struct DropTarget
{
    enum class In { percent, kilogram, pound };

    double amount = 10.0; ///< > 0, in `in`
    In in = In::percent;
    friend bool operator==(const DropTarget &, const DropTarget &) = default;
};
using Target =
    std::variant<std::monostate, RpeTarget, ReserveTarget, ShareTarget, LoadTarget, DropTarget>;

struct Pause
{
    int counts = 2;
    friend bool operator==(const Pause &, const Pause &) = default;
};
/// How the rep is done, where that is not the variation's own way.
using Manner = std::variant<std::monostate, Tempo, Pause>;

struct SetLine
{
    int sets = 1;
    int reps = 1; ///< a set, lead reps included; the fewest of a range or of as many as possible
    Target target = {};
    /// Above reps: the upper end of a range, or the cap on as many as possible (then >= reps).
    std::optional<int> mostReps = {};
    bool asManyAsPossible = false;
    int leadReps = 0;      ///< < reps; the rest is done in restCode. Never with mostReps or as many
    QString restCode = {}; ///< catalogue code; empty = the competition lift
    Manner manner = {};
    std::optional<int> restSeconds = {}; ///< between the sets
    QString note = {};                   ///< one row, without blanks at its ends

    friend bool operator==(const SetLine &, const SetLine &) = default;
};

struct SetLineError
{
    int line = 1;   ///< row, from 1
    int column = 1; ///< character, from 1
    QString words;  ///< what is wrong and what to write instead
};

struct ParsedSetLines
{
    std::vector<SetLine> lines;        ///< complete when there is no error
    std::optional<SetLineError> error; ///< the first one
};

/// Blank text is a card without sets yet: no lines, no error.
[[nodiscard]] ParsedSetLines parseSetLines(const QString &text);

/// Canonical form: parse(setLineText(x)) == x.
[[nodiscard]] QString setLineText(const SetLine &line);
[[nodiscard]] QString setLineText(const std::vector<SetLine> &lines);

/// The set lines of a card on as few rows as can be: "1x1 @8 then 3x3 -10%". What follows a note
/// begins a row of its own. As written, without needless blanks, where they cannot be read.
[[nodiscard]] QString onOneRow(const QString &setLines);

/// The reps alone: "3", "4-6", "5+ max 10", "1+2".
[[nodiscard]] QString printReps(const SetLine &line);

/// Reps that a set is expected to hold: the middle of a range, rounded down, else `reps`.
[[nodiscard]] int expectedReps(const SetLine &line);

} // namespace core
