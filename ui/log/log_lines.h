#pragma once

#include "core/domain/units.h"
#include "core/log/session_rows.h"

#include <QString>
#include <optional>
#include <vector>

/// The rows of a day in words.
namespace ui {

enum class LineState { open, withheld, leftOut, asPlanned, different, missed, extra };

struct LogLine
{
    std::optional<size_t> planned; ///< index into the day's planned sets
    std::optional<size_t> done;    ///< index into its logged sets
    QString variation;             ///< as done, else as planned
    QString asked;                 ///< "5 x 102.5 kg, RPE 8"; empty for an extra set
    QString did;                   ///< "5 x 100 kg, RPE 9"; empty where open
    LineState state = LineState::open;
    QString said; ///< state and differences, with the note: never by colour alone

    friend bool operator==(const LogLine &, const LogLine &) = default;
};

/// @param isOver  the day is gone: what is open was left out
[[nodiscard]] std::vector<LogLine> logLines(const std::vector<core::SessionRow> &rows,
    const std::vector<core::DaySet> &planned, const std::vector<core::SetEntry> &done,
    const std::vector<core::Variation> &catalogue, core::Unit unit, bool isOver);

/// The planned set in words, with the effort asked for and expected: "5 x 102.5 kg, RPE 8, as
/// asked", "1+2 reps, load open".
[[nodiscard]] QString askedWords(
    const core::DaySet &set, const std::vector<core::Variation> &catalogue, core::Unit unit);

/// What would be saved, with what is different from the plan.
/// @param planned  null for an extra set
[[nodiscard]] QString entryWords(const core::SetEntry &entry, const core::DaySet *planned,
    const std::vector<core::Variation> &catalogue, core::Unit unit);

/// The first open line from `from` on. What was left out before is not gone back to: Enter once
/// too often would log it.
[[nodiscard]] std::optional<size_t> nextOpen(const std::vector<LogLine> &lines, size_t from);

/// Where logging begins or goes on: the first open line after the last logged one, else behind all.
[[nodiscard]] size_t lineToBegin(const std::vector<LogLine> &lines);

} // namespace ui
