#include "ui/board/day_slot.h"

#include "ui/board/week_view.h"

namespace ui {

DaySlot::DaySlot(QWidget *board)
    : QToolButton(board)
{
    setText(tr("+ add"));
    setToolTip(tr("Add a variation here (Insert)"));
    setAutoRaise(true);
    setFocusPolicy(Qt::ClickFocus);
}

void DaySlot::show(const DayView &day)
{
    QStringList said{day.name, day.date};
    for (const QString &total : {day.lifts, day.tonnage})
        if (!total.isEmpty())
            said << total;
    said << tr("add a variation");
    setAccessibleName(said.join(QStringLiteral(", ")));
}

} // namespace ui
