#include "ui/board/drop_target.h"

#include <utility>

namespace ui {

bool DropTarget::enter(const QMimeData *mime)
{
    leave();
    if (!m_plan.lifter())
        return false;
    m_dragged = draggedIn(mime);
    if (const auto *variation = std::get_if<core::VariationId>(&m_dragged))
        m_newCards = m_plan.newCards(*variation);
    return !std::holds_alternative<std::monostate>(m_dragged);
}

bool DropTarget::moveTo(BoardPlace gap)
{
    if (std::exchange(m_gap, gap) == gap)
        return false;
    m_landing = landingAt(gap);
    return true;
}

void DropTarget::leave()
{
    m_dragged = {};
    m_gap.reset();
    m_landing = {};
}

Landing DropTarget::landingAt(BoardPlace gap) const
{
    if (std::holds_alternative<core::VariationId>(m_dragged))
        return m_plan.landing(m_newCards[size_t(gap.day)], gap);
    if (const auto *card = std::get_if<core::CardId>(&m_dragged))
        if (const auto from = m_plan.places().placeOf(*card))
            return m_plan.landing(*card, placeAfterMove(*from, gap));
    return {};
}

core::CardId DropTarget::drop(Drop how)
{
    const Dragged dragged = m_dragged;
    const std::optional<BoardPlace> gap = m_gap;
    const Landing landing = m_landing;
    leave();
    const auto *card = std::get_if<core::CardId>(&dragged);
    if (card && gap && how == Drop::copy)
        return m_plan.duplicate(*card, *gap);
    return m_plan.land(landing);
}

} // namespace ui
