#pragma once

#include "ui/board/board_drag.h"
#include "ui/board/week_plan.h"

namespace ui {

/// A drag over the week, from its entering to its drop. What is dragged is asked once; so are, of a
/// variation, the sets it would have.
class DropTarget
{
public:
    explicit DropTarget(WeekPlan &plan)
        : m_plan(plan)
    {
    }

    /// False for what cannot be put on the week.
    [[nodiscard]] bool enter(const QMimeData *mime);
    /// False when the gap is the one of before.
    bool moveTo(BoardPlace gap);
    void leave();

    /// Where it would land; nothing while nothing is dragged over the week.
    [[nodiscard]] std::optional<BoardPlace> gap() const { return m_gap; }
    /// What would stand there: the sets with the loads of that day; empty where there is nothing to
    /// say.
    [[nodiscard]] const QString &landing() const { return m_landing.words; }

    enum class Drop { move, copy };
    /// Puts it into the gap, as landing() told unless a card is copied.
    /// @return the card that landed; invalid when none did
    core::CardId drop(Drop how);

private:
    [[nodiscard]] Landing landingAt(BoardPlace gap) const;

    WeekPlan &m_plan;
    Dragged m_dragged;
    DayCards m_newCards; ///< what a variation would be
    std::optional<BoardPlace> m_gap;
    Landing m_landing; ///< at the gap
};

} // namespace ui
