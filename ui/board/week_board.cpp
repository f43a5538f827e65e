#include "ui/board/week_board.h"

#include "ui/board/day_headers.h"
#include "ui/board/week_commands.h"
#include "ui/board/week_grid.h"
#include "ui/look/form_parts.h"

#include <QEvent>

namespace ui {

namespace {
constexpr int kLeastDay = 92; ///< px; the date and its number still stand beside each other
} // namespace

WeekBoard::WeekBoard(WeekPlan &plan, QWidget *parent)
    : QScrollArea(parent)
    , m_grid(new WeekGrid(plan))
    , m_commands(new WeekCommands(plan, *m_grid))
    , m_headers(new DayHeaders(plan, this))
{
    setFocusPolicy(Qt::NoFocus);
    setMinimumWidth(core::kWeekDays * kLeastDay);
    setUpForScrolling(*this, m_grid);
    setViewportMargins(0, m_headers->sizeHint().height(), 0, 0);
    connect(m_headers, &DayHeaders::menuWanted, m_grid, &WeekGrid::openDayMenu);
    connect(m_grid, &WeekGrid::lookAt, this, [this](const QRect &rect) {
        ensureVisible(rect.center().x(), rect.top(), 0, 0);
        ensureVisible(rect.center().x(), rect.bottom(), 0, 0);
    });
}

void WeekBoard::resizeEvent(QResizeEvent *event)
{
    QScrollArea::resizeEvent(event);
    placeHeaders();
}

bool WeekBoard::viewportEvent(QEvent *event)
{
    if (event->type() == QEvent::Resize)
        placeHeaders();
    return QScrollArea::viewportEvent(event);
}

void WeekBoard::placeHeaders()
{
    const QRect view = viewport()->geometry();
    const int height = m_headers->sizeHint().height();
    m_headers->setGeometry(view.x(), view.y() - height, view.width(), height);
}

} // namespace ui
