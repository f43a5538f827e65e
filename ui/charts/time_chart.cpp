#include "ui/charts/time_chart.h"

#include "ui/charts/thin.h"
#include "ui/look/colours.h"
#include "ui/look/metrics.h"

#include <QAbstractSeries>
#include <QCategoryAxis>
#include <QFontMetricsF>
#include <QKeyEvent>
#include <QLabel>
#include <QRubberBand>
#include <QValueAxis>
#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr double kZoomStep = 1.25;  ///< of one key press or one notch of the wheel
constexpr double kPanShare = 0.1;   ///< of the span, one key press
constexpr double kMarkReach = 10.0; ///< a mark nearer than this is read before the line, px
constexpr double kNotch = 120.0;    ///< eighths of a degree, as Qt counts a usual wheel
constexpr int kShortestPick = 6;    ///< a rubber band below this was a click, px
constexpr int kPixelsPerTimeTick = 88;
constexpr int kPixelsPerValueTick = 36;

} // namespace

TimeChart::TimeChart(TimeWindow &window, QWidget *parent)
    : QChartView(parent)
    , m_window(window)
    , m_time(new QCategoryAxis(this))
    , m_box(new QLabel(this))
    , m_band(new QRubberBand(QRubberBand::Rectangle, this))
{
    setRenderHint(QPainter::Antialiasing);
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    setMinimumSize(320, 160);

    chart()->setMargins({});
    chart()->setBackgroundRoundness(0);
    chart()->legend()->hide();
    chart()->setLocalizeNumbers(true);
    m_time->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    m_time->setTruncateLabels(false);
    chart()->addAxis(m_time, Qt::AlignBottom);
    m_left.axis = new QValueAxis(this);
    chart()->addAxis(m_left.axis, Qt::AlignLeft);
    m_stretches = new BarsItem(chart());
    m_marks = new MarksItem(chart());
    m_cursor = new CursorItem(chart());

    m_box->setObjectName(QStringLiteral("valueBox"));
    m_box->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_box->setAutoFillBackground(true);
    m_box->setFrameShape(QFrame::Box);
    m_box->setMargin(space::tight);
    m_box->setTextFormat(Qt::PlainText);
    m_box->hide();

    connect(&window, &TimeWindow::spanChanged, this, &TimeChart::refresh);
    connect(&window, &TimeWindow::seasonChanged, this, &TimeChart::refresh);
}

void TimeChart::addRightAxis()
{
    m_right.axis = new QValueAxis(this);
    m_right.axis->setGridLineVisible(false);
    chart()->addAxis(m_right.axis, Qt::AlignRight);
}

void TimeChart::addSeries(QAbstractSeries *series, Side side)
{
    chart()->addSeries(series);
    series->attachAxis(m_time);
    series->attachAxis(axisOf(side).axis);
}

void TimeChart::setAxisTitle(Side side, const QString &title)
{
    axisOf(side).axis->setTitleText(title);
}

void TimeChart::setScale(Side side, const ValueScale &scale)
{
    Axis &target = side == Side::left ? m_left : m_right;
    target.scale = scale;
    // Qt Charts hides a label that would stand out above the plot.
    const double room = QFontMetricsF(target.axis->labelsFont()).height() / 2.0 + 1.0;
    target.scale.to += (scale.to - scale.from) * room / std::max(m_plot.height() - room, 1.0);
    target.axis->setTickType(QValueAxis::TicksDynamic);
    target.axis->setTickAnchor(scale.from);
    target.axis->setTickInterval(scale.step);
    target.axis->setRange(scale.from, target.scale.to);
    target.axis->setLabelFormat(QStringLiteral("%.%1f").arg(scale.decimals()));
}

const TimeChart::Axis &TimeChart::axisOf(Side side) const
{
    return side == Side::left ? m_left : m_right;
}

PlotMap TimeChart::map(Side side) const
{
    return {m_plot, m_window.span(), axisOf(side).scale};
}

int TimeChart::mostValueSteps() const
{
    return std::clamp(int(m_plot.height()) / kPixelsPerValueTick, 2, 10);
}

void TimeChart::setStops(std::vector<Stop> stops)
{
    m_stops = std::move(stops);
    read(std::nullopt);
}

void TimeChart::refresh()
{
    if (m_plot.isEmpty())
        return;
    drawTimeAxis();
    drawSeason();
    redraw();
}

void TimeChart::drawSeason()
{
    const Colours &look = colours(palette());
    const PlotMap pixels = map(Side::left);
    std::vector<QRectF> bands;
    std::vector<DayLine> lines;
    for (const Season::Stretch &block : m_window.season().blocks) {
        const double left = std::max(pixels.xOf(block.from), m_plot.left());
        const double right = std::min(pixels.xOf(block.to), m_plot.right());
        if (left >= right)
            continue;
        bands.emplace_back(QPointF(left, m_plot.top()), QPointF(right, m_plot.bottom()));
        if (pixels.time.contains(block.from))
            lines.push_back({pixels.xOf(block.from), block.name});
    }
    for (const Season::Day &meet : m_window.season().meets)
        if (pixels.time.contains(meet.day))
            lines.push_back({pixels.xOf(meet.day), meet.name});
    m_stretches->setBars(std::move(bands), look.sunken);
    m_marks->setDayLines(std::move(lines), look.text, ui::font(Type::small, font()));
}

void TimeChart::drawTimeAxis()
{
    for (const QString &label : m_time->categoriesLabels())
        m_time->remove(label);
    const TimeSpan &span = m_window.span();
    m_time->setRange(span.from, span.to);
    m_time->setStartValue(span.from);
    for (const TimeTick &tick : timeTicks(span, std::max(1, columns() / kPixelsPerTimeTick)))
        m_time->append(tick.label, tick.day);
}

void TimeChart::layOut()
{
    // The same margins in every chart of a window, so that a day stands at the same place in all.
    const QFontMetricsF metrics(font());
    const double side = metrics.horizontalAdvance(QStringLiteral("0000.0")) + metrics.height() + 24;
    const double below = metrics.height() + 16;
    m_plot = QRectF(rect()).adjusted(side, metrics.height(), -side, -below);
    if (m_plot.width() < 1 || m_plot.height() < 1)
        m_plot = {};
    chart()->setPlotArea(m_plot);
    m_stretches->setPlot(m_plot);
    m_marks->setPlot(m_plot);
    m_cursor->setPlot(m_plot);
}

void TimeChart::applyLook()
{
    const Colours &look = colours(palette());
    chart()->setBackgroundBrush(look.surface);
    chart()->setBackgroundPen(Qt::NoPen);
    setBackgroundBrush(look.surface);
    for (QAbstractAxis *axis : chart()->axes()) {
        axis->setLabelsBrush(look.text);
        axis->setTitleBrush(look.mutedText);
        axis->setLabelsFont(ui::font(Type::small, font()));
        axis->setTitleFont(ui::font(Type::small, font()));
        axis->setLinePen(QPen(look.controlBorder));
        axis->setGridLinePen(QPen(look.chartGrid));
    }
    m_cursor->setColour(look.text);
    QPalette box = palette();
    box.setColor(QPalette::Window, look.surface);
    box.setColor(QPalette::WindowText, look.text);
    m_box->setPalette(box);
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

void TimeChart::readNear(const QPointF &at)
{
    if (!m_plot.contains(at)) {
        read(std::nullopt);
        return;
    }
    std::vector<QPointF> all, onLine;
    std::vector<size_t> lineStops;
    for (size_t i = 0; i < m_stops.size(); ++i) {
        all.push_back(pixelOf(m_stops[i]));
        if (m_stops[i].onLine) {
            onLine.push_back(all.back());
            lineStops.push_back(i);
        }
    }
    if (const auto near = nearestPoint(all, at, kMarkReach))
        read(size_t(*near));
    else if (const auto inTime = nearestInTime(onLine, at.x()))
        read(lineStops[size_t(*inTime)]);
    else
        read(std::nullopt);
}

void TimeChart::readNext(int direction)
{
    const double here = m_read ? m_stops[*m_read].day : direction > 0 ? -HUGE_VAL : HUGE_VAL;
    std::optional<size_t> next;
    for (size_t i = 0; i < m_stops.size(); ++i) {
        const double ahead = (m_stops[i].day - here) * direction;
        if (m_stops[i].onLine && ahead > 0
            && (!next || (m_stops[i].day - m_stops[*next].day) * direction < 0))
            next = i;
    }
    if (next)
        read(next);
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
    m_box->setText(wordsOf(shown));
    m_box->adjustSize();
    m_box->move(placeBeside(at, m_box->sizeHint(), rect()).topLeft().toPoint());
    m_box->show();
    m_box->raise();
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
    const QPoint turn = event->angleDelta();
    const bool sideways = std::abs(turn.x()) > std::abs(turn.y());
    if (sideways || event->modifiers() & Qt::ShiftModifier) {
        const double notches = (sideways ? turn.x() : turn.y()) / kNotch;
        m_window.pan(-notches * kPanShare * m_window.span().days());
    } else {
        m_window.zoom(
            std::pow(kZoomStep, -turn.y() / kNotch), map(Side::left).dayAt(event->position().x()));
    }
    event->accept();
}

void TimeChart::mousePressEvent(QMouseEvent *event)
{
    if (event->button() != Qt::LeftButton)
        return;
    read(std::nullopt);
    if (event->modifiers() & Qt::ShiftModifier)
        m_pickFrom = event->position();
    else
        m_grip = event->position();
}

void TimeChart::mouseMoveEvent(QMouseEvent *event)
{
    const QPointF at = event->position();
    if (m_pickFrom) {
        const double left = std::max(std::min(m_pickFrom->x(), at.x()), m_plot.left());
        const double right = std::min(std::max(m_pickFrom->x(), at.x()), m_plot.right());
        m_band->setGeometry(
            QRectF(left, m_plot.top(), std::max(0.0, right - left), m_plot.height()).toRect());
        m_band->show();
    } else if (m_grip) {
        setCursor(Qt::ClosedHandCursor);
        const PlotMap pixels = map(Side::left);
        m_window.pan(pixels.dayAt(m_grip->x()) - pixels.dayAt(at.x()));
        m_grip = at;
    } else {
        readNear(at);
    }
}

void TimeChart::mouseReleaseEvent(QMouseEvent *event)
{
    if (event->button() != Qt::LeftButton)
        return;
    if (m_pickFrom && m_band->isVisible() && m_band->width() >= kShortestPick) {
        const PlotMap pixels = map(Side::left);
        const QRect picked = m_band->geometry();
        m_window.show({pixels.dayAt(picked.left()), pixels.dayAt(picked.left() + picked.width())});
    }
    m_band->hide();
    m_pickFrom.reset();
    m_grip.reset();
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
    const TimeSpan span = m_window.span();
    const double middle = (span.from + span.to) / 2.0;
    const bool reading = event->modifiers() & Qt::ControlModifier;
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal: // the plus of keyboards that have it under Shift
        m_window.zoom(1.0 / kZoomStep, middle);
        return;
    case Qt::Key_Minus:
        m_window.zoom(kZoomStep, middle);
        return;
    case Qt::Key_Left:
    case Qt::Key_Right: {
        const int direction = event->key() == Qt::Key_Right ? 1 : -1;
        if (reading)
            readNext(direction);
        else
            m_window.pan(direction * kPanShare * span.days());
        return;
    }
    case Qt::Key_Home:
        m_window.showAll();
        return;
    case Qt::Key_End:
        m_window.showLast(span.days());
        return;
    case Qt::Key_Escape:
        if (m_read) {
            read(std::nullopt);
            return;
        }
        break;
    default:
        break;
    }
    event->ignore();
}

} // namespace ui
