#include "ui/charts/time_chart.h"

#include "ui/charts/season_overlay.h"
#include "ui/charts/value_box.h"
#include "ui/look/colours.h"
#include "ui/look/metrics.h"

#include <QFontMetricsF>
#include <QKeyEvent>
#include <QRubberBand>

namespace ui {

TimeChart::TimeChart(TimeWindow &window, QWidget *parent)
    : QChartView(parent)
    , m_window(window)
    , m_axes(*chart())
    , m_control(window)
    , m_stretches(new BarsItem(chart()))
    , m_marks(new MarksItem(chart()))
    , m_cursor(new CursorItem(chart()))
    , m_box(new ValueBox(this))
    , m_band(new QRubberBand(QRubberBand::Rectangle, this))
{
    setRenderHint(QPainter::Antialiasing);
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    setMinimumSize(320, 110);

    chart()->setMargins({});
    chart()->setBackgroundRoundness(0);
    chart()->legend()->hide();
    chart()->setLocalizeNumbers(true);

    connect(&window, &TimeWindow::spanChanged, this, &TimeChart::refresh);
    connect(&window, &TimeWindow::seasonChanged, this, &TimeChart::refresh);
}

void TimeChart::setStops(std::vector<Stop> stops)
{
    m_stops = std::move(stops);
    read(std::nullopt);
}

void TimeChart::refresh()
{
    if (plotArea().isEmpty())
        return;
    m_axes.setSpan(m_window.span());
    drawSeason();
    redraw();
}

void TimeChart::drawSeason()
{
    const Colours &look = colours(palette());
    const PlotMap pixels = map(Side::left);
    m_stretches->setBars(blockBands(m_window.season(), pixels), look.sunken);
    m_marks->setDayLines(
        seasonLines(m_window.season(), pixels), look.text, ui::font(Type::small, font()));
}

void TimeChart::layOut()
{
    // The same margins in every chart of a window, so that a day stands at the same place in all.
    const QFontMetricsF metrics(font());
    const double side = metrics.horizontalAdvance(QStringLiteral("0000.0")) + metrics.height() + 24;
    const double below = metrics.height() + 16;
    QRectF plot = QRectF(rect()).adjusted(side, metrics.height(), -side, -below);
    if (plot.width() < 1 || plot.height() < 1)
        plot = {};
    m_axes.setPlot(plot);
    m_control.setPlot(plot);
    for (PlotItem *item : std::initializer_list<PlotItem *>{m_stretches, m_marks, m_cursor})
        item->setPlot(plot);
}

void TimeChart::applyLook()
{
    const Colours &look = colours(palette());
    chart()->setBackgroundBrush(look.surface);
    chart()->setBackgroundPen(Qt::NoPen);
    setBackgroundBrush(look.surface);
    m_axes.applyLook(palette(), font());
    m_cursor->setColour(look.text);
    m_box->applyLook(palette());
}

void TimeChart::showHairline(std::optional<double> day)
{
    if (day && !m_window.span().contains(*day))
        day.reset();
    m_cursor->place(day ? std::optional(map(Side::left).xOf(*day)) : std::nullopt, std::nullopt);
}

QString TimeChart::shownValues() const
{
    return m_read ? wordsOf(m_stops[*m_read]) : QString();
}

QPointF TimeChart::pixelOf(const Stop &stop) const
{
    return map(stop.side).at(stop.day, stop.value);
}

void TimeChart::readNear(const QPointF &mouse)
{
    if (!plotArea().contains(mouse)) {
        read(std::nullopt);
        return;
    }
    std::vector<QPointF> pixels;
    pixels.reserve(m_stops.size());
    for (const Stop &stop : m_stops)
        pixels.push_back(pixelOf(stop));
    read(stopNear(m_stops, pixels, mouse));
}

void TimeChart::read(std::optional<size_t> stop)
{
    if (!stop && !m_read)
        return;
    m_read = stop;
    if (!stop) {
        m_box->hide();
        m_cursor->place(std::nullopt, std::nullopt);
        Q_EMIT dayRead(std::nullopt);
        return;
    }
    const Stop &shown = m_stops[*stop];
    const QPointF at = pixelOf(shown);
    m_cursor->place(at.x(), at);
    m_box->showBeside(at, wordsOf(shown));
    setAccessibleDescription(m_box->text()); // a screen reader says what the box shows
    Q_EMIT dayRead(shown.day);
}

void TimeChart::resizeEvent(QResizeEvent *event)
{
    QChartView::resizeEvent(event);
    layOut();
    refresh();
}

void TimeChart::changeEvent(QEvent *event)
{
    QChartView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        applyLook();
        layOut();
        refresh();
    }
}

void TimeChart::wheelEvent(QWheelEvent *event)
{
    m_control.turnWheel(
        event->angleDelta(), event->modifiers().testFlag(Qt::ShiftModifier), event->position().x());
    event->accept();
}

void TimeChart::mousePressEvent(QMouseEvent *event)
{
    if (event->button() != Qt::LeftButton)
        return;
    read(std::nullopt);
    m_control.press(event->position(), event->modifiers().testFlag(Qt::ShiftModifier));
}

void TimeChart::mouseMoveEvent(QMouseEvent *event)
{
    if (!m_control.drag(event->position())) {
        readNear(event->position());
    } else if (m_control.picked()) {
        m_band->setGeometry(*m_control.picked());
        m_band->show();
    } else {
        setCursor(Qt::ClosedHandCursor);
    }
}

void TimeChart::mouseReleaseEvent(QMouseEvent *event)
{
    if (event->button() != Qt::LeftButton)
        return;
    m_control.release();
    m_band->hide();
    unsetCursor();
}

void TimeChart::mouseDoubleClickEvent(QMouseEvent *event)
{
    if (event->button() == Qt::LeftButton)
        m_window.showAll();
}

void TimeChart::leaveEvent(QEvent *event)
{
    QChartView::leaveEvent(event);
    read(std::nullopt);
}

void TimeChart::focusOutEvent(QFocusEvent *event)
{
    QChartView::focusOutEvent(event);
    read(std::nullopt);
}

void TimeChart::keyPressEvent(QKeyEvent *event)
{
    const int key = event->key();
    if ((key == Qt::Key_Left || key == Qt::Key_Right)
        && event->modifiers().testFlag(Qt::ControlModifier)) {
        if (const auto next = stopBeside(m_stops, m_read, key == Qt::Key_Right ? 1 : -1))
            read(next);
    } else if (key == Qt::Key_Escape && m_read) {
        read(std::nullopt);
    } else if (!m_control.pressKey(key)) {
        event->ignore();
    }
}

} // namespace ui
