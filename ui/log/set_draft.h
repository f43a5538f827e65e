#pragma once

#include "core/domain/session.h"
#include "ui/log/log_lines.h"

namespace ui {

/// What is half typed on a line of the day: of a planned set, of a logged one that is changed, or
/// of one that is added.
struct SetDraft
{
    size_t line = 0;
    bool isExtra = false;             ///< the line is a set that is being added
    bool isOffered = false;           ///< an extra one because nothing else is to do
    core::VariationId variation = {}; ///< swapped for; invalid = as it stands
    QString text = {};
    // The set it was begun on, since lines move when the log does.
    std::optional<size_t> planned = {};
    std::optional<core::SetEntry> edited = {};

    [[nodiscard]] bool hasText() const { return !text.trimmed().isEmpty(); }
    [[nodiscard]] bool isTouched() const { return hasText() || variation.isValid(); }

    /// To be called before it is touched: an untouched one notes the set that it stands on.
    /// @param done  the sets that `lines` speak of
    void begin(const std::vector<LogLine> &lines, const std::vector<core::SetEntry> &done);
    /// Goes to where its set is among the lines as they are now. Where that has gone it is a set to
    /// add; an untouched offer gives way to what there is to do.
    void settle(const std::vector<LogLine> &lines, const std::vector<core::SetEntry> &done);
    /// As it stands, with nothing typed.
    [[nodiscard]] SetDraft emptied() const { return {.line = line}; }

    friend bool operator==(const SetDraft &, const SetDraft &) = default;
};

} // namespace ui
