#pragma once

#include "core/domain/lifter.h"
#include "core/review/touch_review.h"

#include <QWidget>
#include <span>

class QLabel;
class QPushButton;

namespace ui {

/// Up to which share of the max the lifter's touch holds, on all bench work and by variation, and
/// which touch style the scores speak for: a suggestion that the coach confirms.
class TouchPanel : public QWidget
{
    Q_OBJECT

public:
    explicit TouchPanel(QWidget *parent = nullptr);

    /// @param lift  of the bench press
    void show(const core::Lifter &lifter, const core::LiftEstimate &lift,
        const strength::TouchRoster &roster, std::span<const core::Variation> catalogue);
    using QWidget::show;

Q_SIGNALS:
    void confirmed(core::TouchStyle style);

private:
    QLabel *m_holds;
    QLabel *m_why;
    QPushButton *m_confirm;
    core::TouchStyle m_suggested = core::TouchStyle::undecided;
};

/// How the touch holds on the day of the estimate: a line a variation with scores, the one with
/// most first, after that of all bench work.
[[nodiscard]] QStringList holdLines(const core::Lifter &lifter, const core::LiftEstimate &lift,
    const strength::TouchRoster &roster, std::span<const core::Variation> catalogue);

} // namespace ui
