#include "ui/review/measure_panel.h"

#include "ui/look/form_parts.h"
#include "ui/look/words_label.h"
#include "ui/review/measure_chart.h"
#include "ui/review/review_legend.h"

#include <QClipboard>
#include <QComboBox>
#include <QEvent>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>

namespace ui {

namespace {

/// A line's dashes with its mark.
QPixmap lineSwatch(size_t line, const QPalette &palette, double scale)
{
    return swatch(QSize(26, 14), scale, [&](QPainter &painter, const QRectF &box) {
        const QColor ink = lineColour(line, palette);
        painter.setPen(QPen(ink, 2.0, lineDashes(line)));
        painter.drawLine(QPointF(0, 7), QPointF(box.width(), 7));
        painter.fillPath(markPath(QRectF(9, 3, 8, 8), lineShape(line)), ink);
    });
}

} // namespace

MeasurePanel::MeasurePanel(TimeWindow &window, QWidget *parent)
    : QWidget(parent)
    , m_choice(named("measure", new QComboBox))
    , m_legend(new QHBoxLayout)
    , m_why(plainWords())
    , m_nothing(named("measureNothing", centredWords()))
    , m_stack(new QStackedWidget)
    , m_chart(new MeasureChart(window))
{
    m_choice->setAccessibleName(tr("Measure"));
    for (int i = 0; i < kMeasures; ++i) {
        m_choice->addItem(words(Measure(i)).name);
        m_choice->setItemData(i, words(Measure(i)).explanation, Qt::ToolTipRole);
    }
    auto *copy = new QPushButton(tr("Copy as CSV"));
    copy->setToolTip(tr("The lines of this chart as a table, for a spreadsheet"));
    connect(copy, &QPushButton::clicked, this, &MeasurePanel::copyCsv);

    m_why->setFont(ui::font(Type::small, font()));
    m_stack->addWidget(m_chart);
    m_stack->addWidget(m_nothing);
    fill(this,
        columnLayout(
            {rowLayout({m_choice, Stretch{1}, copy}, space::gap), m_legend, {m_stack, 1}, m_why},
            space::hair));
    connect(m_choice, &QComboBox::currentIndexChanged, this, &MeasurePanel::showMeasure);
}

void MeasurePanel::setSource(Source source)
{
    m_source = std::move(source);
    showMeasure();
}

void MeasurePanel::choose(Measure measure)
{
    if (m_choice->currentIndex() == int(measure))
        showMeasure();
    else
        m_choice->setCurrentIndex(int(measure));
}

void MeasurePanel::copyCsv() const
{
    QGuiApplication::clipboard()->setText(QString::fromUtf8(measureCsv(m_content)));
}

void MeasurePanel::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        showLegend();
}

void MeasurePanel::showMeasure()
{
    const Measure measure = Measure(m_choice->currentIndex());
    m_content = m_source ? m_source(measure) : MeasureContent{};
    m_why->setText(words(measure).explanation);
    m_nothing->setText(m_content.nothing);
    m_stack->setCurrentIndex(m_content.lines.empty() ? 1 : 0);
    m_chart->setContent(words(measure).name, m_content);
    showLegend();
}

void MeasurePanel::showLegend()
{
    while (QLayoutItem *item = m_legend->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    if (m_content.lines.size() < 2)
        return;
    for (size_t line = 0; line < m_content.lines.size(); ++line) {
        auto *mark = new QLabel(this);
        mark->setPixmap(lineSwatch(line, palette(), devicePixelRatioF()));
        m_legend->addWidget(mark);
        m_legend->addWidget(new ElidedLabel(m_content.lines[line].name), 1);
    }
}

} // namespace ui
