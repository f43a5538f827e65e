#pragma once

#include "core/domain/card.h"
#include "core/domain/lifter.h"
#include "core/domain/session.h"
#include "core/domain/variation.h"

#include <utility>
#include <vector>

/// One coach action as data: the rows as they were and as they are to be. The roster file applies
/// an Edit in one transaction, and its inverse is the undo step, so that each kind of action needs
/// no code of its own for either. Planning functions are pure: rows in, Edit out.
namespace core {

/// Rows of one kind. An id only in `before` is removed, only in `after` added, in both replaced.
template <class Row> struct RowChange
{
    std::vector<Row> before;
    std::vector<Row> after;

    [[nodiscard]] bool isEmpty() const { return before.empty() && after.empty(); }
    friend bool operator==(const RowChange &, const RowChange &) = default;
};

struct Edit
{
    RowChange<Lifter> lifters;
    RowChange<Variation> variations;
    RowChange<Card> cards;
    RowChange<LoggedSession> sessions;

    [[nodiscard]] bool isEmpty() const
    {
        return lifters.isEmpty() && variations.isEmpty() && cards.isEmpty() && sessions.isEmpty();
    }
    friend bool operator==(const Edit &, const Edit &) = default;
};

/// Both edits as one action: the same for many lifters is one undo step. They may not touch the
/// same rows.
[[nodiscard]] inline Edit joined(Edit edit, const Edit &other)
{
    const auto join = [](auto &rows, const auto &more) {
        rows.before.insert(rows.before.end(), more.before.begin(), more.before.end());
        rows.after.insert(rows.after.end(), more.after.begin(), more.after.end());
    };
    join(edit.lifters, other.lifters);
    join(edit.variations, other.variations);
    join(edit.cards, other.cards);
    join(edit.sessions, other.sessions);
    return edit;
}

/// The edit that takes `edit` back.
[[nodiscard]] inline Edit inverse(Edit edit)
{
    std::swap(edit.lifters.before, edit.lifters.after);
    std::swap(edit.variations.before, edit.variations.after);
    std::swap(edit.cards.before, edit.cards.after);
    std::swap(edit.sessions.before, edit.sessions.after);
    return edit;
}

} // namespace core
