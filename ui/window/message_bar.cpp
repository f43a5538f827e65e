#include "ui/window/message_bar.h"

#include "ui/look/colours.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"

#include <QAccessible>
#include <QMessageBox>
#include <QPainter>
#include <QPushButton>

namespace ui {

MessageBar::MessageBar(QWidget *parent)
    : QWidget(parent)
    , m_words(named("words", new FieldNote(FieldNote::Kind::problem)))
    , m_more(new QPushButton(tr("De&tails")))
{
    setObjectName(QStringLiteral("messageBar"));
    m_words->setFont(font());
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto *close = named("dismiss", new QPushButton(tr("Dis&miss")));

    fill(this, rowLayout({{m_words, 1}, m_more, close}),
        {space::group, space::gap, space::group, space::gap});
    connect(m_more, &QPushButton::clicked, this, &MessageBar::showDetail);
    connect(close, &QPushButton::clicked, this, &QWidget::hide);
    hide();
}

void MessageBar::say(const QString &words, const QString &detail)
{
    m_words->say(words);
    m_detail = detail;
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

void MessageBar::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.fillRect(rect(), colours(palette()).dangerGround);
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
