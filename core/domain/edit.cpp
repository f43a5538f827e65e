#include "core/domain/edit.h"

namespace core {

namespace {

/// Those of `rows` whose id is not among `others`.
template <class Row>
std::vector<Row> without(const std::vector<Row> &rows, const std::vector<Row> &others)
{
    std::vector<Row> left;
    std::ranges::copy_if(rows, std::back_inserter(left), [&others](const Row &row) {
        return std::ranges::none_of(
            others, [&row](const Row &other) { return other.id == row.id; });
    });
    return left;
}

/// `first`, and those of `second` that `between` does not hold.
template <class Row> std::vector<Row> with(
    std::vector<Row> first, const std::vector<Row> &second, const std::vector<Row> &between)
{
    const std::vector<Row> more = without(second, between);
    first.insert(first.end(), more.begin(), more.end());
    return first;
}

} // namespace

Edit followedBy(const Edit &first, const Edit &second)
{
    Edit both;
    forEachRowKind([&](auto kind) {
        const auto &one = first.*kind;
        const auto &two = second.*kind;
        auto &all = both.*kind;
        all.before = with(one.before, two.before, one.after);
        all.after = with(two.after, one.after, two.before);
        const auto unchanged = [](const auto &others) {
            return [&others](const auto &row) { return std::ranges::count(others, row) > 0; };
        };
        const auto before = all.before;
        std::erase_if(all.before, unchanged(all.after));
        std::erase_if(all.after, unchanged(before));
    });
    return both;
}

} // namespace core
