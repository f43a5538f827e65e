#include "ui/review/measure_panel.h"

#include "ui/look/metrics.h"
#include "ui/review/measure_chart.h"

#include <QClipboard>
#include <QComboBox>
#include <QEvent>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ui {

namespace {

/// A line's dashes with its mark.
QPixmap swatch(size_t line, const QPalette &palette, double scale)
{
    constexpr QSize kSize(26, 14);
    QPixmap pixmap(kSize * scale);
    pixmap.setDevicePixelRatio(scale);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ink = lineColour(line, palette);
    painter.setPen(QPen(ink, 2.0, lineDashes(line)));
    painter.drawLine(QPointF(0, 7), QPointF(kSize.width(), 7));
    painter.fillPath(markPath(QRectF(9, 3, 8, 8), lineShape(line)), ink);
    return pixmap;
}

} // namespace

MeasurePanel::MeasurePanel(TimeWindow &window, QWidget *parent)
    : QWidget(parent)
    , m_choice(new QComboBox(this))
    , m_legend(new QHBoxLayout)
    , m_why(new QLabel(this))
    , m_nothing(new QLabel(this))
    , m_stack(new QStackedWidget(this))
    , m_chart(new MeasureChart(window))
{
    m_choice->setObjectName(QStringLiteral("measure"));
    m_choice->setAccessibleName(tr("Measure"));
    for (int i = 0; i < kMeasures; ++i) {
        m_choice->addItem(words(Measure(i)));
        m_choice->setItemData(i, explanation(Measure(i)), Qt::ToolTipRole);
    }
    auto *copy = new QPushButton(tr("Copy as CSV"), this);
    copy->setToolTip(tr("The lines of this chart as a table, for a spreadsheet"));
    connect(copy, &QPushButton::clicked, this, &MeasurePanel::copyCsv);

    auto *bar = new QHBoxLayout;
    bar->setSpacing(space::gap);
    bar->addWidget(m_choice);
    bar->addLayout(m_legend);
    bar->addStretch(1);
    bar->addWidget(copy);

    m_why->setFont(ui::font(Type::small, m_why->font()));
    m_why->setWordWrap(true);
    m_nothing->setWordWrap(true);
    m_nothing->setAlignment(Qt::AlignCenter);
    m_nothing->setObjectName(QStringLiteral("measureNothing"));
    m_stack->addWidget(m_chart);
    m_stack->addWidget(m_nothing);
    auto *down = new QVBoxLayout(this);
    down->setContentsMargins({});
    down->setSpacing(space::hair);
    down->addLayout(bar);
    down->addWidget(m_stack, 1);
    down->addWidget(m_why);
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
    m_why->setText(explanation(measure));
    m_nothing->setText(m_content.nothing);
    m_stack->setCurrentIndex(m_content.lines.empty() ? 1 : 0);
    m_chart->setContent(words(measure), m_content);
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
        mark->setPixmap(swatch(line, palette(), devicePixelRatioF()));
        m_legend->addWidget(mark);
        m_legend->addWidget(new QLabel(m_content.lines[line].name, this));
    }
}

} // namespace ui
