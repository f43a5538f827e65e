#include "ui/window/message_bar.h"

#include "ui/look/colours.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/look/scrolling_room.h"

#include <QAccessible>
#include <QMessageBox>
#include <QPainter>
#include <QPushButton>

namespace ui {

namespace {
constexpr int kMostLines = 4;
}

MessageBar::MessageBar(QWidget *parent)
    : QWidget(parent)
    , m_words(named("words", new FieldNote(FieldNote::Kind::problem)))
    , m_more(new QPushButton(tr("De&tails")))
{
    setObjectName(QStringLiteral("messageBar"));
    m_words->setFont(font());
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto *close = named("dismiss", new QPushButton(tr("Dis&miss")));

    // Words that need many lines are scrolled: the bar leaves the window to what it is about.
    auto *room = new ScrollingRoom(m_words);
    room->setMaximumHeight(kMostLines * fontMetrics().lineSpacing());
    room->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
    fill(this, rowLayout({{room, 1}, m_more, close}),
        {space::group, space::gap, space::group, space::gap});
    connect(m_more, &QPushButton::clicked, this, &MessageBar::showDetail);
    connect(close, &QPushButton::clicked, this, &QWidget::hide);
    hide();
}

void MessageBar::say(const QString &words, const QString &detail)
{
    m_words->say(words);
    m_detail = detail;
    m_isForNow = false;
    setNotice(false);
    m_more->setVisible(!detail.isEmpty());
    show();
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void MessageBar::sayToo(const QString &words)
{
    if (isHidden())
        say(words, {});
    else
        say(m_words->text() + u' ' + words, m_detail);
}

void MessageBar::sayForNow(const QString &words, const QString &detail)
{
    say(words, detail);
    m_isForNow = true;
}

void MessageBar::note(const QString &words)
{
    sayForNow(words, {});
    setNotice(true);
}

void MessageBar::takeSuccess()
{
    if (m_isForNow)
        hide();
}

void MessageBar::setNotice(bool isNotice)
{
    m_isNotice = isNotice;
    m_words->setKind(isNotice ? FieldNote::Kind::explanation : FieldNote::Kind::problem);
    update();
}

void MessageBar::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const Colours &look = colours(palette());
    painter.fillRect(rect(), m_isNotice ? look.sunken : look.dangerGround);
}

void MessageBar::showDetail()
{
    QMessageBox box(
        QMessageBox::Information, tr("Details"), m_words->text(), QMessageBox::Close, this);
    box.setInformativeText(m_detail);
    box.setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    box.exec();
}

} // namespace ui
