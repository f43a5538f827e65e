#include "ui/board/board_ground.h"

#include "ui/look/colours.h"
#include "ui/look/metrics.h"
#include "ui/look/text.h"

#include <QPainter>

namespace ui {

void paintGround(QPainter &painter, const BoardLayout &layout, std::optional<BoardPlace> gap,
    const Colours &look)
{
    painter.setPen(Qt::NoPen);
    for (int day = 0; day < core::kWeekDays; ++day) {
        const bool isTarget = gap && gap->day == day;
        painter.setBrush(isTarget ? look.chosen : look.sunken);
        painter.drawRoundedRect(layout.columns[size_t(day)], space::radius, space::radius);
    }
    if (gap) {
        painter.setBrush(look.accent);
        const QRect marker = gapMarker(layout, *gap);
        painter.drawRoundedRect(marker, marker.height() / 2.0, marker.height() / 2.0);
    }
}

void paintInvitation(
    QPainter &painter, const BoardLayout &layout, const QRect &board, const Colours &look)
{
    painter.setPen(look.mutedText);
    painter.setFont(ui::font(Type::heading, painter.font()));
    const int top = layout.slots[0].bottom() + space::page;
    painter.drawText(board.adjusted(space::page, top, -space::page, 0),
        Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap,
        Text::tr("An empty week. Drag a variation from the shelf onto a day, or press Insert."));
}

} // namespace ui
