#include "ui/board/card_widget.h"

#include "ui/look/colours.h"
#include "ui/look/metrics.h"
#include "ui/look/touch_mark.h"
#include "ui/look/wrapped_text.h"

#include <QApplication>
#include <QMouseEvent>
#include <QPainter>

namespace ui {

CardWidget::CardWidget(const CardView &card, QWidget *parent)
    : QWidget(parent)
{
    setFocusPolicy(Qt::ClickFocus);
    setCursor(Qt::OpenHandCursor);
    show(card);
}

void CardWidget::show(const CardView &card)
{
    m_card = card;
    setToolTip(card.toolTip);
    describe();
    setAccessibleDescription(tr("Enter edits the sets, Alt with an arrow key moves the card, "
                                "Delete removes it."));
    update();
}

void CardWidget::setChosen(bool chosen)
{
    if (chosen == m_chosen)
        return;
    m_chosen = chosen;
    describe();
    update();
}

void CardWidget::describe()
{
    setAccessibleName(m_chosen ? tr("chosen, %1").arg(m_card.spoken) : m_card.spoken);
}

int CardWidget::heightForWidth(int width) const
{
    return cardLayout(m_card, width, font()).height;
}

QRect CardWidget::setsField() const
{
    return cardLayout(m_card, width(), font()).setsField;
}

QRect CardWidget::noteField() const
{
    return cardLayout(m_card, width(), font()).noteField;
}

bool CardWidget::event(QEvent *event)
{
    switch (event->type()) {
    case QEvent::FocusIn:
    case QEvent::FocusOut:
    case QEvent::Enter:
    case QEvent::Leave:
        update();
        break;
    default:
        break;
    }
    return QWidget::event(event);
}

void CardWidget::paintEvent(QPaintEvent *)
{
    const Colours &look = colours(palette());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool chosen = hasFocus() || m_chosen;
    const qreal edge = chosen ? 2.0 : 1.0;
    painter.setPen(QPen(chosen ? look.accent
            : underMouse()     ? look.controlBorder
                               : look.line,
        edge));
    painter.setBrush(chosen ? look.chosen : look.surface);
    const qreal half = edge / 2.0;
    painter.drawRoundedRect(
        QRectF(rect()).adjusted(half, half, -half, -half), space::radius, space::radius);

    const CardLayout layout = cardLayout(m_card, width(), font());
    paintTouchMark(painter, layout.mark, m_card.serves, palette());
    for (const CardText &text : layout.texts) {
        painter.setFont(text.font);
        switch (text.role) {
        case CardText::Role::caution:
            painter.setPen(m_card.isWithheld ? look.dangerText : look.cautionText);
            break;
        case CardText::Role::effort:
        case CardText::Role::given:
        case CardText::Role::note:
        case CardText::Role::prompt:
            painter.setPen(chosen ? look.onChosen : look.mutedText);
            break;
        default:
            painter.setPen(chosen ? look.onChosen : look.text);
        }
        painter.drawText(QRectF(text.rect), text.text, wrappedTextOption());
    }
    if (m_chosen)
        paintTick(painter, look);
}

/// In the lower right corner, where no text stands: colour alone would not tell.
void CardWidget::paintTick(QPainter &painter, const Colours &look) const
{
    constexpr int kSide = 14;
    const QRectF box(width() - kSide - space::hair, height() - kSide - space::hair, kSide, kSide);
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.accent);
    painter.drawEllipse(box);
    painter.setPen(QPen(look.onAccent, 2.0));
    painter.drawPolyline(QPolygonF{box.topLeft() + QPointF(3.5, 7.5),
        box.topLeft() + QPointF(6.0, 10.0), box.topLeft() + QPointF(10.5, 4.5)});
}

void CardWidget::mousePressEvent(QMouseEvent *event)
{
    Q_EMIT pressed(m_card.id, event->button(), event->modifiers());
    if (event->button() == Qt::LeftButton)
        m_pressed = event->pos();
    else
        QWidget::mousePressEvent(event);
}

void CardWidget::mouseMoveEvent(QMouseEvent *event)
{
    if (event->buttons().testFlag(Qt::LeftButton)
        && (event->pos() - m_pressed).manhattanLength() >= QApplication::startDragDistance())
        Q_EMIT dragged(m_card.id);
}

void CardWidget::mouseDoubleClickEvent(QMouseEvent *event)
{
    if (event->button() == Qt::LeftButton)
        Q_EMIT doubleClicked(m_card.id);
}

} // namespace ui
