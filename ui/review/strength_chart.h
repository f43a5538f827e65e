#pragma once

#include "ui/charts/time_chart.h"
#include "ui/review/strength_series.h"

class QAreaSeries;
class QLineSeries;

namespace ui {

/// What the strength chart draws.
struct StrengthContent
{
    StrengthSeries series;
    std::vector<core::LoggedSession> sessions; ///< the readings' sessions
    std::vector<core::Variation> variations;
    Knowledge knowledge = Knowledge::now;
    core::Unit unit = core::Unit::kilogram;
};

/// Shape and colour of a reading, in the chart and in its legend.
[[nodiscard]] MarkShape shapeOf(ReadingKind kind);
[[nodiscard]] QColor colourOf(ReadingKind kind, const QPalette &palette);

/// Estimated competition max with its interval, and the sets behind it.
class StrengthChart : public TimeChart
{
    Q_OBJECT

public:
    explicit StrengthChart(TimeWindow &window, QWidget *parent = nullptr);

    void setContent(StrengthContent content);

protected:
    void redraw() override;
    void applyLook() override;
    [[nodiscard]] QString wordsOf(const Stop &stop) const override;

private:
    /// Where the value is drawn: at the lower edge, where it is below the axis.
    [[nodiscard]] double shownAt(double value) const;
    void drawBand();
    void drawMarks();

    StrengthContent m_content;
    QLineSeries *m_line;
    QLineSeries *m_low;
    QLineSeries *m_high;
    QAreaSeries *m_band;
};

} // namespace ui
