#pragma once

#include "core/domain/lifter.h"
#include "ui/log/log_lines.h"

#include <QStringList>

/// What stands of a lifter in the room.
namespace ui {

struct SeatWords
{
    QString next;     ///< variation of the next set; that there is none
    QString asked;    ///< "5 x 102.5 kg, RPE 8"; empty where nothing is next
    QString plates;   ///< "each side 25 + 15"
    QString said;     ///< why it is lighter or held back; mostly empty
    QStringList left; ///< the sets after the next one, alike ones together: "2 more of ..."
    QString last;     ///< "5 x 100 kg, RPE 9: 2.5 kg lighter"
    QString progress; ///< "3 of 12 sets"

    friend bool operator==(const SeatWords &, const SeatWords &) = default;
};

/// The line of the next set to do, whatever line the coach is looking at.
[[nodiscard]] std::optional<size_t> nextLine(const std::vector<LogLine> &lines);

[[nodiscard]] SeatWords seatWords(const std::vector<LogLine> &lines,
    const std::vector<core::DaySet> &planned, const core::Lifter &lifter);

} // namespace ui
