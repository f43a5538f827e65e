#include "ui/log/advice_box.h"

#include "core/domain/variation.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"

#include <QCheckBox>
#include <QLocale>
#include <QPushButton>
#include <QSignalBlocker>
#include <cmath>

namespace ui {

AdviceBox::AdviceBox(QWidget *parent)
    : QWidget(parent)
    , m_stop(named("stop", new FieldNote(FieldNote::Kind::problem)))
    , m_words(named("advice", new FieldNote(FieldNote::Kind::explanation)))
    , m_shift(named("shiftLoads", new QCheckBox))
    , m_swaps(new QVBoxLayout)
{
    m_stop->setFont(ui::font(Type::strong, font()));
    m_words->setFont(font());
    fill(this, columnLayout({m_stop, m_words, m_shift, m_swaps}, space::tight));
    connect(m_shift, &QCheckBox::toggled, this, &AdviceBox::shiftWanted);
}

void AdviceBox::show(const core::ReadinessAdvice &advice, bool shiftsLoads,
    const std::vector<core::Variation> &catalogue)
{
    QStringList words = advice.words;
    m_stop->say(advice.stop && !words.isEmpty() ? words.takeFirst() : QString());
    m_words->say(words.join(u'\n'));

    const double percent = 100.0 * (advice.loadFactor - 1.0);
    const QSignalBlocker quiet(m_shift);
    m_shift->setVisible(percent != 0.0);
    m_shift->setChecked(shiftsLoads);
    m_shift->setText((percent < 0.0 ? tr("&Today's bench loads %1 % lighter, to the plates")
                                    : tr("&Today's bench loads %1 % heavier, to the plates"))
                         .arg(QLocale().toString(std::abs(percent), 'f', 1)));

    if (advice.swaps != m_advice.swaps) {
        while (QLayoutItem *item = m_swaps->takeAt(0)) {
            item->widget()->deleteLater();
            delete item;
        }
        for (const core::SoreSwap &swap : advice.swaps) {
            const core::Variation *spares = core::find(catalogue, swap.spares);
            auto *button = new QPushButton(
                tr("Plan %1 instead").arg(spares ? spares->name : QStringLiteral("?")));
            button->setToolTip(swap.words);
            button->setAutoDefault(false);
            button->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
            connect(button, &QPushButton::clicked, this, [this, swap] { Q_EMIT swapWanted(swap); });
            m_swaps->addWidget(button);
        }
    }
    m_advice = advice;
    setVisible(!advice.words.isEmpty());
}

} // namespace ui
