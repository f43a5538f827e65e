#include "ui/review/review_legend.h"

#include "ui/look/colours.h"
#include "ui/look/form_parts.h"
#include "ui/review/review_words.h"
#include "ui/review/strength_chart.h"
#include "ui/review/work_chart.h"

#include <QEvent>
#include <QLabel>
#include <QPainter>
#include <algorithm>
#include <functional>

namespace ui {

namespace {

constexpr QSize kSwatch(20, 14);
} // namespace

QPixmap swatch(const QSize &size, double scale, const Paint &paint)
{
    QPixmap pixmap(size * scale);
    pixmap.setDevicePixelRatio(scale);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    paint(painter, QRectF(QPointF(0, 0), QSizeF(size)));
    return pixmap;
}

ReviewLegend::ReviewLegend(QWidget *parent)
    : QWidget(parent)
    , m_rows(new QVBoxLayout(this))
{
    m_rows->setContentsMargins({});
    m_rows->setSpacing(space::tight);
}

void ReviewLegend::setContent(const StrengthSeries &series, core::Lift lift, Knowledge knowledge)
{
    m_kinds.clear();
    for (int k = 0; k < kReadingKinds; ++k)
        if (std::any_of(series.readings.begin(), series.readings.end(),
                [k](const ReadingPoint &r) { return r.kind == ReadingKind(k); }))
            m_kinds.push_back(ReadingKind(k));
    m_lift = lift;
    m_knowledge = knowledge;
    rebuild();
}

void ReviewLegend::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        rebuild();
}

void ReviewLegend::addRow(const Paint &paint, const QString &words)
{
    auto *mark = new QLabel;
    mark->setPixmap(swatch(kSwatch, devicePixelRatioF(), paint));
    mark->setFixedWidth(kSwatch.width());
    m_rows->addWidget(boxed(
        rowLayout({{mark, 0, Qt::AlignTop}, {plainWords(words), 1, Qt::AlignTop}}, space::gap)));
}

void ReviewLegend::rebuild()
{
    while (QLayoutItem *item = m_rows->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const Colours &look = colours(palette());
    const bool now = m_knowledge == Knowledge::now;
    const QColor line = now ? look.chartEstimate : look.chartFiltered;
    const auto drawAcross = [](QPainter &painter, const QRectF &box) {
        painter.drawLine(
            QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
    };
    addRow(
        [&](QPainter &painter, const QRectF &box) {
            painter.fillRect(box, bandOf(line));
            painter.setPen(QPen(line, 2, now ? Qt::SolidLine : Qt::DashLine));
            drawAcross(painter, box);
        },
        tr("Estimated max and its 90 % interval"));
    for (const ReadingKind kind : m_kinds)
        addRow(
            [&](QPainter &painter, const QRectF &box) {
                QRectF square(0, 0, 10, 10);
                square.moveCenter(box.center());
                painter.fillPath(markPath(square, shapeOf(kind)), colourOf(kind, palette()));
            },
            words(kind, m_lift));
    addRow(
        [&](QPainter &painter, const QRectF &box) {
            painter.fillRect(box.adjusted(5, 1, -5, 0), tonnageFill(palette()));
        },
        tr("Weekly tonnage"));
    addRow(
        [&](QPainter &painter, const QRectF &box) {
            painter.setPen(QPen(look.chartLifts, 2));
            painter.setBrush(look.chartLifts);
            drawAcross(painter, box);
            painter.drawEllipse(box.center(), 2.5, 2.5);
        },
        tr("Number of lifts, weekly"));
}

} // namespace ui
