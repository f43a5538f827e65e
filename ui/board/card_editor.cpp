#include "ui/board/card_editor.h"

#include "ui/look/colours.h"
#include "ui/look/metrics.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QLabel>
#include <QTextBlock>
#include <algorithm>

namespace ui {

namespace {
constexpr int kReasonWidth = 240;
}

CardEditor::CardEditor(Check check, const QString &accessibleName, QWidget *parent, QWidget *area)
    : QPlainTextEdit(parent)
    , m_check(std::move(check))
    , m_reason(new QLabel(area))
{
    setAccessibleName(accessibleName);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setWordWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    setTabChangesFocus(true);
    document()->setDocumentMargin(2);

    const Colours &look = colours(palette());
    QPalette caution = m_reason->palette();
    caution.setColor(QPalette::Window, look.cautionGround);
    caution.setColor(QPalette::WindowText, look.cautionText);
    m_reason->setPalette(caution);
    m_reason->setAutoFillBackground(true);
    m_reason->setFrameShape(QFrame::Box);
    m_reason->setMargin(space::tight);
    m_reason->setWordWrap(true);
    m_reason->hide();
    connect(this, &QPlainTextEdit::textChanged, this, [this] {
        fit();
        if (m_reason->isVisible())
            showRefusal();
    });
}

CardEditor::~CardEditor()
{
    delete m_reason;
}

void CardEditor::open(const QString &text)
{
    setPlainText(text);
    moveCursor(QTextCursor::End);
    show();
    raise();
    setFocus();
}

void CardEditor::moveTo(const QRect &place)
{
    m_place = place;
    fit();
}

bool CardEditor::take()
{
    if (m_done)
        return true;
    const QString text = toPlainText();
    if (const auto refusal = m_check(text)) {
        QTextCursor cursor = textCursor();
        cursor.setPosition(std::min(refusal->position, int(text.size())));
        setTextCursor(cursor);
        showRefusal();
        QAccessible::updateAccessibility(
            std::make_unique<QAccessibleEvent>(this, QAccessible::Alert).get());
        return false;
    }
    finish();
    Q_EMIT taken(text);
    return true;
}

void CardEditor::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && !event->modifiers().testFlag(Qt::ShiftModifier)) {
        if (take())
            Q_EMIT left();
    } else if (event->key() == Qt::Key_Escape) {
        finish();
        Q_EMIT left();
    } else {
        QPlainTextEdit::keyPressEvent(event);
    }
}

void CardEditor::focusOutEvent(QFocusEvent *event)
{
    QPlainTextEdit::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason)
        take();
}

void CardEditor::moveEvent(QMoveEvent *event)
{
    QPlainTextEdit::moveEvent(event);
    if (m_reason->isVisible())
        showRefusal();
}

void CardEditor::fit()
{
    const int rows = std::max(1, int(document()->size().height()));
    const int wanted =
        rows * fontMetrics().lineSpacing() + 2 * (int(document()->documentMargin()) + frameWidth());
    setGeometry(m_place.x(), m_place.y(), m_place.width(), std::max(wanted, m_place.height()));
}

void CardEditor::showRefusal()
{
    const auto refusal = m_check(toPlainText());
    if (!refusal) {
        m_reason->hide();
        setAccessibleDescription({});
        return;
    }
    const int column = refusal->position - document()->findBlock(refusal->position).position() + 1;
    const QString words = tr("Column %1: %2").arg(column).arg(refusal->words);
    setAccessibleDescription(words);
    m_reason->setText(words);
    m_reason->setFixedWidth(kReasonWidth);
    m_reason->adjustSize();
    const QWidget *area = m_reason->parentWidget();
    QPoint at = area->mapFromGlobal(mapToGlobal(QPoint(0, height() + space::hair)));
    if (at.y() + m_reason->height() > area->height())
        at.setY(area->mapFromGlobal(mapToGlobal(QPoint())).y() - m_reason->height() - space::hair);
    at.setX(std::clamp(at.x(), 0, std::max(0, area->width() - kReasonWidth)));
    m_reason->move(at);
    m_reason->show();
    m_reason->raise();
}

void CardEditor::finish()
{
    m_done = true;
    m_reason->hide();
    hide();
    deleteLater();
}

} // namespace ui
