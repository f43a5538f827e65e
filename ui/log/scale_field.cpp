#include "ui/log/scale_field.h"

#include "ui/look/form_parts.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QPainter>
#include <QStyleOptionFocusRect>
#include <QToolButton>
#include <algorithm>

namespace ui {

ScaleField::ScaleField(const QString &name, QStringList steps, QWidget *parent)
    : QWidget(parent)
    , m_name(name)
    , m_steps(std::move(steps))
    , m_words(label(Type::small))
{
    setFocusPolicy(Qt::StrongFocus);
    QHBoxLayout *row = rowLayout({}, space::hair);
    fill(this, row, {space::hair, space::hair, space::hair, space::hair});
    for (int step = 1; step <= int(m_steps.size()); ++step) {
        auto *button = new QToolButton;
        button->setText(QString::number(step));
        button->setCheckable(true);
        button->setFocusPolicy(Qt::NoFocus); // the field has it
        button->setToolTip(m_steps[step - 1]);
        button->setAccessibleName(tr("%1: %2, %3").arg(m_name).arg(step).arg(m_steps[step - 1]));
        connect(button, &QToolButton::clicked, this, [this, step] {
            setFocus(Qt::MouseFocusReason);
            take(m_answer == step ? std::nullopt : std::optional(step));
        });
        row->addWidget(button);
        m_buttons.push_back(button);
    }
    row->addSpacing(space::tight);
    row->addWidget(m_words, 1);
    setAnswer({});
}

void ScaleField::setAnswer(std::optional<int> answer)
{
    m_answer = answer;
    for (int step = 1; step <= int(m_buttons.size()); ++step)
        m_buttons[size_t(step - 1)]->setChecked(m_answer == step);
    m_words->setText(m_answer ? m_steps[*m_answer - 1] : QString());
    setAccessibleName(m_answer ? tr("%1: %2, %3").arg(m_name).arg(*m_answer).arg(m_words->text())
                               : tr("%1: no answer").arg(m_name));
}

void ScaleField::take(std::optional<int> answer)
{
    const bool isNew = answer != m_answer;
    setAnswer(answer);
    if (isNew)
        Q_EMIT answered();
}

void ScaleField::keyPressEvent(QKeyEvent *event)
{
    const int most = int(m_steps.size());
    const int digit = event->key() - Qt::Key_0;
    if (digit >= 1 && digit <= most)
        take(digit);
    else if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace)
        take({});
    else if (event->key() == Qt::Key_Left)
        take(std::max(m_answer.value_or(2) - 1, 1));
    else if (event->key() == Qt::Key_Right)
        take(std::min(m_answer.value_or(0) + 1, most));
    else
        QWidget::keyPressEvent(event);
}

void ScaleField::paintEvent(QPaintEvent *)
{
    if (!hasFocus())
        return;
    QPainter painter(this);
    QStyleOptionFocusRect option;
    option.initFrom(this);
    style()->drawPrimitive(QStyle::PE_FrameFocusRect, &option, &painter, this);
}

void ScaleField::focusInEvent(QFocusEvent *event)
{
    QWidget::focusInEvent(event);
    update();
}

void ScaleField::focusOutEvent(QFocusEvent *event)
{
    QWidget::focusOutEvent(event);
    update();
}

} // namespace ui
