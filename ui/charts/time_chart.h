#pragma once

#include "ui/charts/chart_axes.h"
#include "ui/charts/chart_overlay.h"
#include "ui/charts/chart_stops.h"
#include "ui/charts/span_control.h"
#include "ui/charts/time_window.h"

#include <QChartView>
#include <optional>
#include <vector>

class QRubberBand;

namespace ui {

class ValueBox;

/// A chart over time that shares its span with others through a TimeWindow: wheel and + - zoom,
/// dragging and the arrow keys move, Shift with a drag picks a span, Home shows all. The values of
/// the point under the mouse stand in a small box; Ctrl with the arrow keys goes from point to
/// point. A chart fills its series in redraw() with what the span shows.
class TimeChart : public QChartView
{
    Q_OBJECT

public:
    explicit TimeChart(TimeWindow &window, QWidget *parent = nullptr);

    /// The hairline alone, while another chart of the window is being read.
    void showHairline(std::optional<double> day);
    /// The values shown; empty when no point is being read.
    [[nodiscard]] QString shownValues() const;
    [[nodiscard]] const QRectF &plotArea() const { return m_axes.plot(); }

Q_SIGNALS:
    /// The day that is read here, none when reading has ended.
    void dayRead(std::optional<double> day);

protected:
    /// Fills the series, the marks, the scales and the stops with what window().span() shows.
    virtual void redraw() = 0;
    /// Colours and fonts for the present palette.
    virtual void applyLook();
    [[nodiscard]] virtual QString wordsOf(const Stop &stop) const = 0;

    /// Redraws when the chart has a size; to be called when the data changed.
    void refresh();
    void setStops(std::vector<Stop> stops);

    [[nodiscard]] const TimeWindow &window() const { return m_window; }
    [[nodiscard]] ChartAxes &axes() { return m_axes; }
    [[nodiscard]] MarksItem &marks() { return *m_marks; }
    [[nodiscard]] PlotMap map(Side side) const { return m_axes.map(m_window.span(), side); }
    [[nodiscard]] int columns() const { return std::max(1, int(plotArea().width())); }

    void resizeEvent(QResizeEvent *event) override;
    void changeEvent(QEvent *event) override;
    void wheelEvent(QWheelEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;
    void leaveEvent(QEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    void layOut();
    void drawSeason();
    void readNear(const QPointF &mouse);
    void read(std::optional<size_t> stop);
    [[nodiscard]] QPointF pixelOf(const Stop &stop) const;

    TimeWindow &m_window;
    ChartAxes m_axes;
    SpanControl m_control;
    BarsItem *m_stretches; ///< blocks
    MarksItem *m_marks;
    CursorItem *m_cursor;
    ValueBox *m_box;
    QRubberBand *m_band; ///< around the span that is being picked
    std::vector<Stop> m_stops;
    std::optional<size_t> m_read; ///< index into m_stops
};

} // namespace ui
