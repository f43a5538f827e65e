#pragma once

#include <QString>
#include <optional>
#include <variant>
#include <vector>

/// The text form of the sets on a card, such as `4x3 @8`.
///
///     line    = sets "x" reps [target]
///     target  = "@" rpe              RPE 1 to 10 in halves, counted at the last rep: @8, @8.5
///             | share "%"            of the day's estimated max of the variation: 75%
///             | load ("kg" | "lb")   on the bar: 100kg, 225lb
///     sets    = 1 to 30, reps = 1 to 50; other numbers have at most two decimals
///
/// Spaces may stand anywhere between the parts; upper case reads as lower case, and the
/// multiplication sign as x. Decimals take a point in every locale, so that a line means the same
/// on every coach's machine; a comma is refused with words that say so. A line a row; a card may
/// hold several, blank rows between them say nothing.
namespace core {

inline constexpr int kMostSets = 30;
inline constexpr int kMostReps = 50;
inline constexpr double kMostPercent = 150.0;
inline constexpr double kMostLoadKg = 1000.0;

struct RpeTarget
{
    double rpe = 8.0;
    friend bool operator==(const RpeTarget &, const RpeTarget &) = default;
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
using Target = std::variant<std::monostate, RpeTarget, ShareTarget, LoadTarget>;

struct SetLine
{
    int sets = 1;
    int reps = 1;
    Target target;
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

/// Canonical form: parse(print(x)) == x.
[[nodiscard]] QString print(const SetLine &line);
[[nodiscard]] QString print(const std::vector<SetLine> &lines);

} // namespace core
