#pragma once

#include "ui/charts/time_chart.h"
#include "ui/review/work_series.h"

class QLineSeries;

namespace ui {

/// Fill of the bars: pale enough for the line of lifts to be read over it.
[[nodiscard]] QColor tonnageFill(const QPalette &palette);

/// Weekly tonnage as bars and the number of lifts as a line with its own axis.
class WorkChart : public TimeChart
{
    Q_OBJECT

public:
    explicit WorkChart(TimeWindow &window, QWidget *parent = nullptr);

    void setContent(std::vector<core::WeekLoad> weeks, core::Unit unit);

protected:
    void redraw() override;
    void applyLook() override;
    [[nodiscard]] QString wordsOf(const Stop &stop) const override;

private:
    /// Dots on the line of lifts, where there is room for them.
    void drawDots();

    std::vector<core::WeekLoad> m_weeks;
    core::Unit m_unit = core::Unit::kilogram;
    BarsItem *m_bars;
    QLineSeries *m_lifts;
};

} // namespace ui
