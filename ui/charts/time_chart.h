#pragma once

#include "ui/charts/chart_overlay.h"
#include "ui/charts/plot_map.h"
#include "ui/charts/time_window.h"

#include <QChartView>
#include <QPointer>
#include <optional>
#include <vector>

class QCategoryAxis;
class QLabel;
class QRubberBand;
class QValueAxis;

namespace ui {

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
    [[nodiscard]] QRectF plotArea() const { return m_plot; }

Q_SIGNALS:
    /// The day that is read here, none when reading has ended.
    void dayRead(std::optional<double> day);

protected:
    enum class Side { left, right };

    /// A point whose values can be read.
    struct Stop
    {
        double day = 0.0;
        double value = 0.0;
        Side side = Side::left;
        bool onLine = true; ///< the arrow keys stop here; the mouse stops everywhere
        int index = 0;      ///< for wordsOf()
    };

    /// Fills the series, the marks, the scales and the stops with what window().span() shows.
    virtual void redraw() = 0;
    /// Colours and fonts for the present palette.
    virtual void applyLook();
    [[nodiscard]] virtual QString wordsOf(const Stop &stop) const = 0;

    /// Redraws when the chart has a size; to be called when the data changed.
    void refresh();
    void setScale(Side side, const ValueScale &scale);
    void setStops(std::vector<Stop> stops);
    /// Puts a series on the time axis and one of the value axes.
    void addSeries(QAbstractSeries *series, Side side);
    /// A value axis on the right besides the one on the left.
    void addRightAxis();
    void setAxisTitle(Side side, const QString &title);

    [[nodiscard]] const TimeWindow &window() const { return m_window; }
    [[nodiscard]] PlotMap map(Side side) const;
    [[nodiscard]] int columns() const { return std::max(1, int(m_plot.width())); }
    [[nodiscard]] int mostValueSteps() const;
    [[nodiscard]] MarksItem &marks() { return *m_marks; }

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
    struct Axis
    {
        QValueAxis *axis = nullptr;
        ValueScale scale;
    };

    void layOut();
    void drawTimeAxis();
    void drawSeason();
    void readNear(const QPointF &at);
    void readNext(int direction);
    void read(std::optional<size_t> stop);
    [[nodiscard]] QPointF pixelOf(const Stop &stop) const;
    [[nodiscard]] const Axis &axisOf(Side side) const;

    TimeWindow &m_window;
    QCategoryAxis *m_time;
    Axis m_left;
    Axis m_right;
    BarsItem *m_stretches; ///< blocks
    MarksItem *m_marks;
    CursorItem *m_cursor;
    QLabel *m_box;
    QRubberBand *m_band;
    QRectF m_plot;
    std::vector<Stop> m_stops;
    std::optional<size_t> m_read;      ///< index into m_stops
    std::optional<QPointF> m_grip;     ///< where the drag was last
    std::optional<QPointF> m_pickFrom; ///< where the rubber band began
};

} // namespace ui
