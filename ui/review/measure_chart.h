#pragma once

#include "ui/charts/time_chart.h"
#include "ui/review/measure_series.h"

class QAreaSeries;
class QLineSeries;

namespace ui {

/// Shape, colour and dashes of a line by its place, in the chart and in its legend.
[[nodiscard]] MarkShape lineShape(size_t line);
[[nodiscard]] QColor lineColour(size_t line, const QPalette &palette);
[[nodiscard]] Qt::PenStyle lineDashes(size_t line);

/// One measure over time, up to kMostLines lines. A line on its own has its interval as a band;
/// with several, the interval stands in the values that are read.
class MeasureChart : public TimeChart
{
    Q_OBJECT

public:
    explicit MeasureChart(TimeWindow &window, QWidget *parent = nullptr);

    void setContent(const QString &title, MeasureContent content);

protected:
    void redraw() override;
    void applyLook() override;
    [[nodiscard]] QString wordsOf(const Stop &stop) const override;

private:
    struct Place
    {
        size_t line, point;
    };
    void drawLines();
    void drawMarks();

    QString m_title;
    MeasureContent m_content;
    std::vector<Place> m_places; ///< what the stops' indices mean
    std::vector<QLineSeries *> m_lines;
    QLineSeries *m_low;
    QLineSeries *m_high;
    QAreaSeries *m_band;
};

} // namespace ui
