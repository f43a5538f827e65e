#pragma once

#include "core/domain/training_history.h"
#include "ui/review/strength_chart.h"

#include <QSplitter>

namespace ui {

class MeasurePanel;
class WorkChart;

/// The charts of the review one below the other, over one window: the estimated max, the weekly
/// work, and a measure that the coach chooses. The day that is read in one stands in all.
class ReviewCharts final : public QSplitter
{
    Q_OBJECT

public:
    explicit ReviewCharts(TimeWindow &window, QWidget *parent = nullptr);

    void setContent(StrengthContent content, std::vector<core::WeekLoad> work);
    [[nodiscard]] MeasurePanel &measures() { return *m_measures; }

    /// All charts as one picture, into the clipboard.
    void copyPicture();

private:
    void add(const QString &title, QWidget *chart, int share);

    StrengthChart *m_strength;
    WorkChart *m_work;
    MeasurePanel *m_measures;
};

} // namespace ui
