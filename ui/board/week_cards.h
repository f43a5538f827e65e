#pragma once

#include "core/domain/ids.h"
#include "ui/board/board_layout.h"

namespace ui {

/// Which card lies where in the week: a value.
struct WeekCards
{
    std::array<std::vector<core::CardId>, core::kWeekDays> days; ///< from the top

    [[nodiscard]] CardCounts counts() const;
    /// Invalid on an empty slot.
    [[nodiscard]] core::CardId at(BoardPlace place) const;
    [[nodiscard]] std::optional<BoardPlace> placeOf(core::CardId card) const;
    /// The nearest place that there is; each day ends with its empty slot.
    [[nodiscard]] BoardPlace nearest(BoardPlace place) const;
};

} // namespace ui
