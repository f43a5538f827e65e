#pragma once

#include "core/domain/variation.h"

#include <QString>
#include <optional>
#include <vector>

/// What stands on the variation shelf, in order: a pure function of the catalogue.
namespace ui {

/// A group's head or, with `variation` set, a variation.
struct ShelfRow
{
    QString head;
    std::optional<core::Variation> variation;
};

struct ShelfFilter
{
    QString words;                    ///< all must be found; without case
    std::optional<core::Serves> only; ///< a touch style alone
};

/// Groups by lift and touch style, bench first and in it the style of the lifter; retired
/// variations are left out, and so are groups without rows.
[[nodiscard]] std::vector<ShelfRow> shelfRows(const std::vector<core::Variation> &catalogue,
    core::TouchStyle style, const ShelfFilter &filter);

/// "4-2-0 tempo, 1-3 reps, high fatigue"
[[nodiscard]] QString shelfDetails(const core::Variation &variation);

/// When to use it and what to mind.
[[nodiscard]] QString shelfToolTip(const core::Variation &variation);

} // namespace ui
