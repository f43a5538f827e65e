#include "ui/board/card_editor.h"

#include "ui/look/colours.h"
#include "ui/look/keep_question.h"
#include "ui/look/metrics.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QTextBlock>
#include <algorithm>

namespace ui {

namespace {
constexpr int kReasonWidth = 240;
constexpr int kMostOffers = 7;
constexpr int kOffersWidth = 340;
} // namespace

CardEditor::CardEditor(
    Check check, Keep keep, const QString &accessibleName, QWidget *parent, QWidget *area)
    : QPlainTextEdit(parent)
    , m_check(std::move(check))
    , m_keep(std::move(keep))
    , m_reason(new QLabel(area))
    , m_question(new KeepQuestion(KeepQuestion::Keys::field, area))
    , m_offers(new QListWidget(area))
{
    m_offers->setFocusPolicy(Qt::NoFocus);
    m_offers->setAccessibleName(tr("What may follow; Tab takes the marked one"));
    m_offers->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_offers->hide();
    connect(m_offers, &QListWidget::itemClicked, this, &CardEditor::complete);
    connect(this, &QPlainTextEdit::cursorPositionChanged, this, &CardEditor::offer);
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
        m_question->hide();
        if (m_reason->isVisible())
            showRefusal();
        offer();
    });
    connect(m_question, &KeepQuestion::kept, this, &CardEditor::keep);
    connect(m_question, &KeepQuestion::changeWanted, this, [this] { setFocus(); });
}

void CardEditor::setCompletions(Completions completions)
{
    m_completions = std::move(completions);
}

CardEditor::~CardEditor()
{
    delete m_reason;
    delete m_question;
    delete m_offers;
}

void CardEditor::open(const QString &kept, const QString &typed)
{
    m_kept = kept;
    setPlainText(typed.isEmpty() ? kept : typed);
    moveCursor(QTextCursor::End);
    show();
    raise();
    setFocus();
    offer();
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
        if (refusal->mayKeep) {
            ask(refusal->words);
            return false;
        }
        QTextCursor cursor = textCursor();
        cursor.setPosition(std::min(refusal->position, int(text.size())));
        setTextCursor(cursor);
        showRefusal();
        QAccessible::updateAccessibility(
            std::make_unique<QAccessibleEvent>(this, QAccessible::Alert).get());
        return false;
    }
    return store();
}

void CardEditor::ask(const QString &words)
{
    m_offers->hide();
    m_question->setFixedWidth(kReasonWidth);
    m_question->ask(words);
    m_question->adjustSize();
    m_question->move(below(m_question));
    m_question->raise();
}

void CardEditor::keep()
{
    if (m_done || store())
        Q_EMIT left();
}

bool CardEditor::settle()
{
    if (!m_done && toPlainText() == m_kept)
        finish();
    if (take())
        return true;
    setFocus();
    return false;
}

bool CardEditor::store()
{
    m_done = true; // what it changes may ask for the text again
    if (m_keep(toPlainText())) {
        finish();
        return true;
    }
    m_done = false;
    showReason(tr("Not saved. What you typed stays here: try again."));
    return false;
}

void CardEditor::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && !event->modifiers().testFlag(Qt::ShiftModifier)) {
        if (m_question->isVisible())
            keep();
        else if (take())
            Q_EMIT left();
    } else if (event->key() == Qt::Key_Escape) {
        finish();
        Q_EMIT left();
    } else if (m_offers->isVisible() && event->key() == Qt::Key_Tab) {
        complete();
    } else if (m_offers->isVisible() && blockCount() == 1
        && (event->key() == Qt::Key_Down || event->key() == Qt::Key_Up)) {
        const int by = event->key() == Qt::Key_Down ? 1 : -1;
        m_offers->setCurrentRow(std::clamp(m_offers->currentRow() + by, 0, m_offers->count() - 1));
    } else {
        QPlainTextEdit::keyPressEvent(event);
    }
}

void CardEditor::offer()
{
    m_offered.clear();
    if (m_completions && !m_done && isVisible() && !m_reason->isVisible()
        && !m_question->isVisible())
        m_offered = m_completions(toPlainText(), textCursor().position());
    m_offers->clear();
    for (const core::Completion &each : m_offered)
        m_offers->addItem(tr("%1    %2").arg(each.insert.trimmed(), each.explanation));
    m_offers->setVisible(!m_offered.empty());
    if (m_offered.empty())
        return;
    m_offers->setCurrentRow(0);
    const int rows = std::min(int(m_offered.size()), kMostOffers);
    m_offers->setFixedSize(
        kOffersWidth, rows * m_offers->sizeHintForRow(0) + 2 * m_offers->frameWidth());
    m_offers->move(below(m_offers));
    m_offers->raise();
}

void CardEditor::complete()
{
    const int row = m_offers->currentRow();
    if (row < 0 || row >= int(m_offered.size()))
        return;
    const core::Completion chosen = m_offered[size_t(row)];
    QTextCursor cursor = textCursor();
    cursor.movePosition(QTextCursor::Left, QTextCursor::KeepAnchor, chosen.replaces);
    cursor.insertText(chosen.insert);
    setTextCursor(cursor);
    setFocus();
}

/// Where a note of the area's lies below the field, or above it where there is no room.
QPoint CardEditor::below(const QWidget *note) const
{
    const QWidget *area = note->parentWidget();
    QPoint at = area->mapFromGlobal(mapToGlobal(QPoint(0, height() + space::hair)));
    if (at.y() + note->height() > area->height())
        at.setY(area->mapFromGlobal(mapToGlobal(QPoint())).y() - note->height() - space::hair);
    at.setX(std::clamp(at.x(), 0, std::max(0, area->width() - note->width())));
    at.setY(std::max(at.y(), 0)); // over the text, where there is room neither below nor above
    return at;
}

void CardEditor::focusOutEvent(QFocusEvent *event)
{
    QPlainTextEdit::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason)
        take();
}

bool CardEditor::focusNextPrevChild(bool next)
{
    return m_offers->isVisible() ? false : QPlainTextEdit::focusNextPrevChild(next);
}

void CardEditor::moveEvent(QMoveEvent *event)
{
    QPlainTextEdit::moveEvent(event);
    if (m_reason->isVisible())
        showRefusal();
    if (m_question->isVisible())
        m_question->move(below(m_question));
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
    if (!refusal || refusal->mayKeep) {
        m_reason->hide();
        setAccessibleDescription({});
        return;
    }
    const int column = refusal->position - document()->findBlock(refusal->position).position() + 1;
    showReason(tr("Column %1: %2").arg(column).arg(refusal->words));
}

void CardEditor::showReason(const QString &words)
{
    setAccessibleDescription(words);
    m_reason->setText(words);
    m_reason->setFixedWidth(kReasonWidth);
    m_reason->adjustSize();
    m_offers->hide();
    m_reason->move(below(m_reason));
    m_reason->show();
    m_reason->raise();
}

void CardEditor::finish()
{
    m_done = true;
    m_reason->hide();
    m_question->hide();
    m_offers->hide();
    hide();
    deleteLater();
}

} // namespace ui
