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
    return std::exchange(m_gap, gap) != gap;
}

void DropTarget::leave()
{
    m_dragged = {};
    m_gap.reset();
}

QString DropTarget::landing() const
{
    if (!m_gap)
        return {};
    if (std::holds_alternative<core::VariationId>(m_dragged))
        return m_plan.landing(m_newCards[size_t(m_gap->day)], *m_gap);
    if (const auto *card = std::get_if<core::CardId>(&m_dragged))
        if (const auto from = m_plan.places().placeOf(*card))
            return m_plan.landing(*card, placeAfterMove(*from, *m_gap));
    return {};
}

core::CardId DropTarget::drop(Drop how)
{
    const Dragged dragged = std::exchange(m_dragged, {});
    const std::optional<BoardPlace> gap = std::exchange(m_gap, std::nullopt);
    if (!gap)
        return {};
    if (std::holds_alternative<core::VariationId>(dragged))
        return m_plan.add(m_newCards[size_t(gap->day)], *gap);
    const auto *card = std::get_if<core::CardId>(&dragged);
    const auto from = card ? m_plan.places().placeOf(*card) : std::nullopt;
    if (!from)
        return {};
    if (how == Drop::copy)
        return m_plan.duplicate(*card, *gap);
    m_plan.move(*card, placeAfterMove(*from, *gap));
    return *card;
}

} // namespace ui
