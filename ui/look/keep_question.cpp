#include "ui/look/keep_question.h"

#include "ui/look/colours.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"

#include <QAccessible>
#include <QEvent>
#include <QPushButton>

namespace ui {

KeepQuestion::KeepQuestion(Keys keys, QWidget *parent)
    : QFrame(parent)
    , m_keys(keys)
    , m_words(named("question", new FieldNote(FieldNote::Kind::caution)))
    , m_change(named("change", new QPushButton(keys == Keys::field ? tr("Change") : tr("&Change"))))
{
    setObjectName(QStringLiteral("keepQuestion"));
    setFrameShape(QFrame::Box);
    setAutoFillBackground(true);
    m_words->setFont(font());
    auto *keep =
        named("keep", new QPushButton(keys == Keys::field ? tr("Keep (Enter)") : tr("&Keep")));
    for (QPushButton *button : {keep, m_change}) {
        button->setAutoDefault(keys == Keys::own);
        if (keys == Keys::field)
            button->setFocusPolicy(Qt::NoFocus);
    }
    fill(this,
        columnLayout({m_words, rowLayout({keep, m_change, Stretch{}}, space::tight)}, space::tight),
        {space::gap, space::tight, space::gap, space::tight});
    connect(keep, &QPushButton::clicked, this, [this] {
        hide();
        Q_EMIT kept();
    });
    connect(m_change, &QPushButton::clicked, this, [this] {
        hide();
        Q_EMIT changeWanted();
    });
    recolour();
    hide();
}

void KeepQuestion::ask(const QString &words)
{
    m_words->say(words);
    setAccessibleName(words);
    show();
    if (m_keys == Keys::own)
        m_change->setFocus();
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void KeepQuestion::changeEvent(QEvent *event)
{
    QFrame::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        recolour();
}

void KeepQuestion::recolour()
{
    const QColor wanted = colours(palette()).cautionGround;
    if (palette().color(QPalette::Window) == wanted)
        return;
    QPalette own; // one role only, so that the others go on following the scheme
    own.setColor(QPalette::Window, wanted);
    setPalette(own);
}

} // namespace ui
