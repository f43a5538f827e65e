#pragma once

#include "ui/review/measure_series.h"

#include <QWidget>
#include <functional>

class QComboBox;
class QHBoxLayout;
class QLabel;
class QStackedWidget;

namespace ui {

class MeasureChart;
class TimeWindow;

/// A measure that the coach chooses, with its legend and its chart.
class MeasurePanel final : public QWidget
{
    Q_OBJECT

public:
    using Source = std::function<MeasureContent(Measure)>;

    explicit MeasurePanel(TimeWindow &window, QWidget *parent = nullptr);

    /// What the measures of the lifter shown come from; asked when a measure is shown.
    void setSource(Source source);
    void choose(Measure measure);
    [[nodiscard]] MeasureChart &chart() { return *m_chart; }
    void copyCsv() const;

protected:
    void changeEvent(QEvent *event) override;

private:
    void showMeasure();
    void showLegend();

    Source m_source;
    MeasureContent m_content;
    QComboBox *m_choice;
    QHBoxLayout *m_legend;
    QLabel *m_why;
    QLabel *m_nothing;
    QStackedWidget *m_stack;
    MeasureChart *m_chart;
};

} // namespace ui
