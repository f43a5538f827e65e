#pragma once

#include "core/domain/block.h"
#include "core/domain/block_template.h"
#include "core/domain/card.h"
#include "core/domain/check_in.h"
#include "core/domain/given_day.h"
#include "core/domain/lifter.h"
#include "core/domain/session.h"
#include "core/domain/variation.h"
#include "core/domain/waiver.h"

#include <algorithm>
#include <iterator>
#include <tuple>
#include <type_traits>
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
    RowChange<CheckIn> checkIns;
    RowChange<BlockTemplate> templates;
    RowChange<Block> blocks;
    RowChange<Waiver> waivers;
    RowChange<GivenDay> given;

    [[nodiscard]] bool isEmpty() const;
    friend bool operator==(const Edit &, const Edit &) = default;
};

/// Every kind of row, those that others refer to first. Whatever is done to each of them is a loop
/// over this; what differs between them is a trait of the row, which the compiler asks for.
inline constexpr std::tuple kRowKinds{&Edit::lifters, &Edit::variations, &Edit::cards,
    &Edit::sessions, &Edit::checkIns, &Edit::templates, &Edit::blocks, &Edit::waivers,
    &Edit::given};

inline constexpr size_t kRowKindCount = std::tuple_size_v<decltype(kRowKinds)>;

/// Place of a kind in kRowKinds.
template <class Row> inline constexpr size_t kRowKind =
    []<class... Rows>(const std::tuple<RowChange<Rows> Edit::*...> &) {
        constexpr bool isRow[]{std::is_same_v<Row, Rows>...};
        return size_t(std::find(std::begin(isRow), std::end(isRow), true) - std::begin(isRow));
    }(kRowKinds);

/// Calls f with the pointer to each member of Edit.
template <class F> void forEachRowKind(F f)
{
    std::apply([&f](auto... kind) { (f(kind), ...); }, kRowKinds);
}

inline bool Edit::isEmpty() const
{
    bool isEmpty = true;
    forEachRowKind([&](auto kind) { isEmpty = isEmpty && (this->*kind).isEmpty(); });
    return isEmpty;
}

/// Both edits as one action: the same for many lifters is one undo step. They may not touch the
/// same rows.
[[nodiscard]] inline Edit joined(Edit edit, const Edit &other)
{
    forEachRowKind([&](auto kind) {
        auto &rows = edit.*kind;
        const auto &more = other.*kind;
        rows.before.insert(rows.before.end(), more.before.begin(), more.before.end());
        rows.after.insert(rows.after.end(), more.after.begin(), more.after.end());
    });
    return edit;
}

/// The edit that takes `edit` back.
[[nodiscard]] inline Edit inverse(Edit edit)
{
    forEachRowKind([&edit](auto kind) { std::swap((edit.*kind).before, (edit.*kind).after); });
    return edit;
}

/// Does to rows that are held what an edit did to the stored ones, so that they need not be read
/// again: the rows of `before` go, and those of `after` that are wanted come last.
template <class Row, class IsWanted>
void carryOut(std::vector<Row> &rows, const RowChange<Row> &change, IsWanted isWanted)
{
    std::erase_if(rows, [&change](const Row &row) {
        return std::ranges::any_of(
            change.before, [&row](const Row &gone) { return gone.id == row.id; });
    });
    std::ranges::copy_if(change.after, std::back_inserter(rows), isWanted);
}

/// Both edits as one, where the second begins with what the first left. A row that ends as it began
/// is in neither side.
[[nodiscard]] Edit followedBy(const Edit &first, const Edit &second);

} // namespace core
