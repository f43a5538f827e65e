#pragma once

#include "core/strength/estimator.h"
#include "ui/review/strength_series.h"

#include <QScrollArea>

class QButtonGroup;
class QLabel;

namespace ui {

class ReviewLegend;
class TouchPanel;

/// Beside the charts: where the lifter stands in words, what the line and the marks mean, and how
/// the touch holds.
class ReviewSide final : public QScrollArea
{
    Q_OBJECT

public:
    explicit ReviewSide(QWidget *parent = nullptr);

    void setStanding(const QString &lifter, const strength::LifterEstimate &estimate);
    void setTrend(const QString &words);
    /// What was done of the plan, and how far the chances held.
    void setDone(const QString &adherence, const QString &score);
    void setKnowledge(Knowledge knowledge);
    [[nodiscard]] ReviewLegend &legend() { return *m_legend; }
    [[nodiscard]] TouchPanel &touch() { return *m_touch; }

Q_SIGNALS:
    void knowledgeChosen(ui::Knowledge knowledge);

private:
    QLabel *m_standing;
    QLabel *m_advice;
    QLabel *m_trend;
    QLabel *m_adherence;
    QLabel *m_score;
    QButtonGroup *m_knowledge;
    ReviewLegend *m_legend;
    TouchPanel *m_touch;
};

} // namespace ui
