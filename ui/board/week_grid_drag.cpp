#include "ui/board/board_drag.h"
#include "ui/board/card_widget.h"
#include "ui/board/week_grid.h"
#include "ui/look/metrics.h"

#include <QDrag>
#include <QDropEvent>
#include <QLabel>
#include <QMimeData>

// The mouse half of the week grid: what is dragged over it, and where it lands.

namespace ui {

namespace {
constexpr int kScrollMargin = 40; ///< around the pointer, so that a long day scrolls under a drag
}

void WeekGrid::drag(core::CardId card)
{
    CardWidget *widget = m_cards.at(card);
    auto *drag = new QDrag(this);
    drag->setMimeData(mimeOf(card).release());
    drag->setPixmap(widget->grab());
    drag->setHotSpot(widget->mapFromGlobal(QCursor::pos()));
    Q_EMIT cardDragged(true);
    drag->exec(Qt::MoveAction | Qt::CopyAction, Qt::MoveAction);
    Q_EMIT cardDragged(false);
}

void WeekGrid::dragEnterEvent(QDragEnterEvent *event)
{
    if (m_plan.lifter() && draggedIn(event->mimeData()).index() != 0)
        event->acceptProposedAction();
}

void WeekGrid::dragMoveEvent(QDragMoveEvent *event)
{
    const QPoint at = event->position().toPoint();
    const BoardPlace gap = gapAt(m_layout, at);
    if (gap != m_gap)
        showGap(gap, landing(event->mimeData(), gap));
    Q_EMIT lookAt(
        QRect(at, QSize(1, 1)).adjusted(0, -kScrollMargin, 0, kScrollMargin).intersected(rect()));
    event->acceptProposedAction();
}

void WeekGrid::dragLeaveEvent(QDragLeaveEvent *)
{
    showGap({});
}

void WeekGrid::dropEvent(QDropEvent *event)
{
    const BoardPlace gap = gapAt(m_layout, event->position().toPoint());
    showGap({});
    const Dragged dragged = draggedIn(event->mimeData());
    core::CardId landed;
    if (const auto *variation = std::get_if<core::VariationId>(&dragged)) {
        landed = m_plan.add(*variation, gap);
    } else if (const auto *card = std::get_if<core::CardId>(&dragged)) {
        const auto from = m_plan.placeOf(*card);
        if (!from)
            return;
        if (event->dropAction() == Qt::CopyAction) {
            landed = m_plan.duplicate(*card, gap);
        } else {
            m_plan.move(*card, placeAfterMove(*from, gap));
            landed = *card;
        }
    }
    event->acceptProposedAction();
    focusCard(landed);
}

QString WeekGrid::landing(const QMimeData *mime, BoardPlace gap) const
{
    const Dragged dragged = draggedIn(mime);
    if (const auto *variation = std::get_if<core::VariationId>(&dragged))
        return m_plan.landing(*variation, gap);
    if (const auto *card = std::get_if<core::CardId>(&dragged))
        if (const auto from = m_plan.placeOf(*card))
            return m_plan.landing(*card, placeAfterMove(*from, gap));
    return {};
}

void WeekGrid::showGap(std::optional<BoardPlace> gap, const QString &landing)
{
    m_gap = gap;
    m_landingNote->setVisible(gap && !landing.isEmpty());
    if (m_landingNote->isVisible()) {
        // Below the pointer's line, over whatever card is there: it is gone with the next move.
        const QRect marker = gapMarker(m_layout, *gap);
        m_landingNote->setText(landing);
        m_landingNote->setFixedWidth(marker.width());
        m_landingNote->adjustSize();
        m_landingNote->move(marker.left(), marker.bottom() + space::tight);
        m_landingNote->raise();
    }
    update();
}

} // namespace ui
