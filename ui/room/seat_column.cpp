#include "ui/room/seat_column.h"

#include "ui/look/colours.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"

#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QToolButton>

namespace ui {

namespace {

constexpr int kLeastWidth = 228; ///< four beside each other in the smallest window

QLabel *words(const char *name, Type type = Type::body)
{
    QLabel *words = named(name, plainWords());
    words->setFont(font(type, words->font()));
    return words;
}

QToolButton *tool(const char *name, const QString &text)
{
    auto *button = named(name, new QToolButton);
    button->setText(text);
    button->setFocusPolicy(Qt::NoFocus); // the keys stay in the entry field
    return button;
}

} // namespace

SeatColumn::SeatColumn(QWidget *parent)
    : QWidget(parent)
    , m_name(words("seatName", Type::heading))
    , m_progress(words("seatProgress"))
    , m_rack(tool("seatRack", {}))
    , m_stop(named("seatStop", new FieldNote(FieldNote::Kind::problem)))
    , m_notice(named("seatNotice", new FieldNote(FieldNote::Kind::explanation)))
    , m_next(words("seatNext", Type::strong))
    , m_asked(words("seatAsked", Type::heading))
    , m_plates(words("seatPlates"))
    , m_said(named("seatSaid", new FieldNote(FieldNote::Kind::caution)))
    , m_untaken(named("seatUntaken", new FieldNote(FieldNote::Kind::caution)))
    , m_last(words("seatLast"))
    , m_left(words("seatLeft"))
{
    QToolButton *leave = tool("seatLeave", QStringLiteral("×"));
    leave->setAccessibleName(tr("Take out of the room"));
    leave->setToolTip(tr("Take out of the room (Alt+Delete)"));
    m_rack->setToolTip(tr("Whose rack: one alone, or one that is shared (Alt+K)"));
    setMinimumWidth(kLeastWidth);
    fill(this,
        columnLayout(
            {rowLayout({{m_name, 1}, {leave, 0, Qt::AlignTop}}, space::tight),
                rowLayout({{m_progress, 1}, m_rack}, space::tight), m_stop, m_notice, space::tight,
                m_next, m_asked, m_plates, m_said, m_untaken, space::gap, heading(tr("Last set")),
                m_last, space::gap, heading(tr("After it")), m_left, Stretch{1}},
            space::hair),
        {space::gap, space::gap, space::gap, space::gap});
    connect(leave, &QToolButton::clicked, this, &SeatColumn::leaveWanted);
    connect(m_rack, &QToolButton::clicked, this, &SeatColumn::rackWanted);
}

void SeatColumn::show(const Content &content)
{
    m_isAtHand = content.isAtHand;
    const QString numbered = tr("%1  %2").arg(content.number).arg(content.name);
    m_name->setText(m_isAtHand ? QStringLiteral("▸ ") + numbered : numbered);
    m_progress->setText(content.words.progress);
    m_rack->setText(content.rack == 0 ? tr("own rack") : tr("rack %1").arg(content.rack));
    m_stop->say(content.stop);
    m_notice->say(content.notice);
    m_next->setText(content.words.next);
    m_asked->setText(content.words.asked);
    m_asked->setVisible(!content.words.asked.isEmpty());
    m_plates->setText(content.words.plates);
    m_plates->setVisible(!content.words.plates.isEmpty());
    m_said->say(content.words.said);
    m_untaken->say(
        content.untaken.isEmpty() ? QString() : tr("typed, not saved: %1").arg(content.untaken));
    m_last->setText(content.words.last.isEmpty() ? tr("none yet") : content.words.last);
    m_left->setText(content.words.left.isEmpty() ? tr("nothing") : content.words.left.join(u'\n'));
    setAccessibleName(tr("%1: %2 %3").arg(numbered, content.words.next, content.words.asked));
    update();
}

void SeatColumn::mousePressEvent(QMouseEvent *event)
{
    if (event->button() == Qt::LeftButton)
        Q_EMIT chosen();
    else
        QWidget::mousePressEvent(event);
}

void SeatColumn::paintEvent(QPaintEvent *)
{
    const Colours &look = colours(palette());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double line = m_isAtHand ? 2.0 : 1.0;
    painter.setPen(QPen(m_isAtHand ? look.accent : look.line, line));
    painter.setBrush(look.surface);
    const double half = line / 2.0;
    painter.drawRoundedRect(
        QRectF(rect()).adjusted(half, half, -half, -half), space::radius, space::radius);
}

} // namespace ui
