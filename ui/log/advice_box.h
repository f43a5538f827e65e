#pragma once

#include "core/advice/readiness_advice.h"

#include <QWidget>
#include <vector>

class QCheckBox;
class QPushButton;
class QVBoxLayout;

namespace ui {

class FieldNote;

/// What the check-in says about the day's plan: pain first, then the loads and the swaps.
class AdviceBox : public QWidget
{
    Q_OBJECT

public:
    explicit AdviceBox(QWidget *parent = nullptr);

    void show(const core::ReadinessAdvice &advice, bool shiftsLoads,
        const std::vector<core::Variation> &catalogue);
    using QWidget::show;

Q_SIGNALS:
    void shiftWanted(bool shifts);
    void swapWanted(const core::SoreSwap &swap);

private:
    FieldNote *m_stop;
    FieldNote *m_words;
    QCheckBox *m_shift;
    QVBoxLayout *m_swaps;
    core::ReadinessAdvice m_advice;
};

} // namespace ui
