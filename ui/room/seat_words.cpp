#include "ui/room/seat_words.h"

#include "core/loads/resolved_cards.h"
#include "ui/look/text.h"

#include <algorithm>
#include <utility>

namespace ui {

namespace {

bool isToDo(const LogLine &line)
{
    return line.planned && !line.done && line.state != LineState::leftOut;
}

/// Alike sets in a row as one line; a variation is named where it begins.
QStringList leftAfter(const std::vector<LogLine> &lines, size_t next)
{
    std::vector<std::pair<const LogLine *, int>> runs;
    for (size_t at = next + 1; at < lines.size(); ++at) {
        if (!isToDo(lines[at]))
            continue;
        if (!runs.empty() && runs.back().first->variation == lines[at].variation
            && runs.back().first->asked == lines[at].asked)
            ++runs.back().second;
        else
            runs.emplace_back(&lines[at], 1);
    }
    QStringList left;
    QString named = lines[next].variation;
    for (const auto &[line, sets] : runs) {
        const QString words =
            sets > 1 ? Text::tr("%1 sets of %2").arg(sets).arg(line->asked) : line->asked;
        left << (line->variation == named ? words : Text::tr("%1: %2").arg(line->variation, words));
        named = line->variation;
    }
    return left;
}

} // namespace

std::optional<size_t> nextLine(const std::vector<LogLine> &lines)
{
    for (size_t at = 0; at < lines.size(); ++at)
        if (isToDo(lines[at]))
            return at;
    return std::nullopt;
}

SeatWords seatWords(const std::vector<LogLine> &lines, const std::vector<core::DaySet> &planned,
    const core::Lifter &lifter)
{
    SeatWords words;
    const auto count = [&lines](auto what) { return std::ranges::count_if(lines, what); };
    const auto plannedCount = count([](const LogLine &line) { return line.planned.has_value(); });
    const auto doneCount = count([](const LogLine &line) { return line.done.has_value(); });
    words.progress = plannedCount > 0
        ? Text::tr("%1 of %2 sets")
              .arg(count([](const LogLine &line) { return line.planned && line.done; }))
              .arg(plannedCount)
        : Text::tr("sets logged: %1").arg(doneCount);

    const auto last = std::find_if(
        lines.rbegin(), lines.rend(), [](const LogLine &line) { return line.done.has_value(); });
    if (last != lines.rend())
        words.last = Text::tr("%1, %2: %3").arg(last->variation, last->did, last->said);

    const std::optional<size_t> next = nextLine(lines);
    if (!next) {
        words.next = plannedCount > 0 ? Text::tr("Nothing is left to do.")
                                      : Text::tr("Nothing is planned today.");
        return words;
    }
    const LogLine &line = lines[*next];
    const core::DaySet &set = planned[*line.planned];
    words.next = line.variation;
    words.asked = line.asked;
    if (set.loadKg)
        words.plates = Text::tr("each side %1")
                           .arg(core::platesWords(
                               core::platesOf(lifter).round(*set.loadKg).plates, lifter.unit));
    words.said = !set.withheld.isEmpty() ? set.withheld : !set.loadKg ? set.why : set.eased;
    words.left = leftAfter(lines, *next);
    return words;
}

} // namespace ui
