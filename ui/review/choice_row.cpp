#include "ui/review/choice_row.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QToolButton>

namespace ui {

ChoiceRow::ChoiceRow(const QString &name, const QStringList &choices, QWidget *parent)
    : QWidget(parent)
    , m_buttons(new QButtonGroup(this))
{
    auto *across = new QHBoxLayout(this);
    across->setContentsMargins({});
    for (const QString &words : choices) {
        auto *button = new QToolButton(this);
        button->setText(words);
        button->setCheckable(true);
        button->setAccessibleName(tr("%1: %2").arg(name, words));
        m_buttons->addButton(button, int(m_buttons->buttons().size()));
        across->addWidget(button);
    }
    connect(m_buttons, &QButtonGroup::idClicked, this, &ChoiceRow::chosen);
}

void ChoiceRow::setChosen(std::optional<int> choice)
{
    m_buttons->setExclusive(false); // an exclusive group does not let its last button up
    for (QAbstractButton *button : m_buttons->buttons())
        button->setChecked(m_buttons->id(button) == choice);
    m_buttons->setExclusive(true);
}

} // namespace ui
