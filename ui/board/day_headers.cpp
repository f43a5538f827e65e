#include "ui/board/day_headers.h"

#include "ui/board/week_plan.h"
#include "ui/look/colours.h"
#include "ui/look/metrics.h"

#include <QContextMenuEvent>
#include <QPainter>

namespace ui {

namespace {

/// Lifts and tonnage in a row where they fit, else in two.
QString totals(const DayView &day, const QFontMetrics &metrics, int width)
{
    if (day.lifts.isEmpty() || day.tonnage.isEmpty())
        return day.lifts + day.tonnage;
    const QString row = day.lifts + QStringLiteral(" \u00b7 ") + day.tonnage;
    return metrics.horizontalAdvance(row) <= width ? row : day.lifts + u'\n' + day.tonnage;
}

} // namespace

DayHeaders::DayHeaders(WeekPlan &plan, QWidget *parent)
    : QWidget(parent)
    , m_plan(plan)
{
    connect(&plan, &WeekPlan::changed, this, qOverload<>(&QWidget::update));
}

QSize DayHeaders::sizeHint() const
{
    const int name = QFontMetrics(ui::font(Type::strong, font())).height();
    const int total = QFontMetrics(ui::font(Type::small, font())).height();
    return {400, space::tight + name + 3 * total + space::tight};
}

void DayHeaders::contextMenuEvent(QContextMenuEvent *event)
{
    const auto columns = boardColumns(width(), height());
    for (int day = 0; day < core::kWeekDays; ++day)
        if (columns[size_t(day)].contains(event->pos()))
            Q_EMIT menuWanted(day, event->globalPos());
}

void DayHeaders::paintEvent(QPaintEvent *)
{
    const Colours &look = colours(palette());
    const QFont strong = ui::font(Type::strong, font());
    const QFont small = ui::font(Type::small, font());
    QPainter painter(this);
    const auto columns = boardColumns(width(), height());
    for (size_t day = 0; day < core::kWeekDays; ++day) {
        const DayView &view = m_plan.view().days[day];
        const bool today = view.day == m_plan.today();
        QRect row = columns[day].adjusted(space::tight, space::tight, -space::tight, 0);

        painter.setFont(strong);
        painter.setPen(today ? look.accent : look.text);
        row.setHeight(painter.fontMetrics().height());
        painter.drawText(row, Qt::AlignLeft | Qt::AlignVCenter, view.name);
        const int nameWidth = painter.fontMetrics().horizontalAdvance(view.name + u' ');
        painter.setFont(small);
        painter.setPen(today ? look.accent : look.mutedText);
        const QRect beside = row.adjusted(nameWidth, 0, 0, 0);
        QString date = today ? tr("%1, today").arg(view.date) : view.date;
        if (today && painter.fontMetrics().horizontalAdvance(date) > beside.width())
            date = tr("today");
        painter.drawText(beside, Qt::AlignLeft | Qt::AlignVCenter, date);

        painter.setPen(look.mutedText);
        row = QRect(row.left(), row.bottom() + 1, row.width(), height() - row.bottom());
        const QString sums = totals(view, painter.fontMetrics(), row.width());
        const QString done =
            painter.fontMetrics().elidedText(view.done, Qt::ElideRight, row.width());
        painter.drawText(row, Qt::AlignLeft | Qt::AlignTop,
            sums.isEmpty() || done.isEmpty() ? sums + done : sums + u'\n' + done);
    }
}

} // namespace ui
