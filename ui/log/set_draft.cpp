#include "ui/log/set_draft.h"

#include <algorithm>

namespace ui {

void SetDraft::begin(const std::vector<LogLine> &lines, const std::vector<core::SetEntry> &done)
{
    if (isTouched())
        return;
    planned.reset();
    edited.reset();
    if (isExtra || line >= lines.size())
        return;
    planned = lines[line].planned;
    if (lines[line].done)
        edited = done[*lines[line].done];
}

void SetDraft::settle(const std::vector<LogLine> &lines, const std::vector<core::SetEntry> &done)
{
    if (isOffered && !isTouched())
        *this = {.line = lineToBegin(lines)}; // the plan has come, or the log
    const auto wasBegunOn = [&](const LogLine &other) {
        return edited ? other.done && done[*other.done] == *edited
                      : !other.done && other.planned == planned;
    };
    if (isTouched() && !isExtra && (line >= lines.size() || !wasBegunOn(lines[line])))
        line = size_t(std::find_if(lines.begin(), lines.end(), wasBegunOn) - lines.begin());
    if (line >= lines.size() && !isExtra)
        isExtra = isOffered = true;
    line = std::min(line, lines.size());
}

} // namespace ui
