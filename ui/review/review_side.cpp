#include "ui/review/review_side.h"

#include "core/loads/estimate_words.h"
#include "ui/look/form_parts.h"
#include "ui/look/metrics.h"
#include "ui/review/review_legend.h"
#include "ui/review/review_words.h"
#include "ui/review/touch_panel.h"

#include <QButtonGroup>
#include <QRadioButton>

namespace ui {

namespace {

constexpr int kWidth = 264;

QLabel *smallWords(const QString &words)
{
    QLabel *label = plainWords(words);
    label->setFont(ui::font(Type::small, label->font()));
    return label;
}

} // namespace

ReviewSide::ReviewSide(QWidget *parent)
    : QScrollArea(parent)
    , m_standing(heading({}))
    , m_advice(plainWords())
    , m_trend(plainWords())
    , m_knowledge(new QButtonGroup(this))
    , m_legend(new ReviewLegend)
    , m_touch(new TouchPanel)
{
    m_standing->setObjectName(QStringLiteral("standing"));
    m_trend->setObjectName(QStringLiteral("trend"));

    auto *panel = new QWidget;
    auto *down = new QVBoxLayout(panel);
    down->setContentsMargins(0, 0, space::gap, 0);
    down->addWidget(m_standing);
    down->addWidget(m_advice);
    down->addWidget(m_trend);
    down->addSpacing(space::gap);

    down->addWidget(heading(tr("The line shows what is")));
    for (const Knowledge knowledge : {Knowledge::now, Knowledge::then}) {
        auto *choice = new QRadioButton(words(knowledge));
        choice->setAccessibleDescription(explanation(knowledge));
        m_knowledge->addButton(choice, int(knowledge));
        down->addWidget(choice);
        down->addWidget(smallWords(explanation(knowledge)));
    }
    connect(m_knowledge, &QButtonGroup::idClicked, this,
        [this](int id) { Q_EMIT knowledgeChosen(Knowledge(id)); });
    down->addSpacing(space::gap);

    down->addWidget(heading(tr("Marks")));
    down->addWidget(m_legend);
    down->addSpacing(space::gap);
    down->addWidget(m_touch);
    down->addStretch(1);
    down->addWidget(smallWords(
        tr("Wheel or + and - zoom; drag or arrow keys move; Shift with a drag picks a span; "
           "Ctrl with the arrow keys reads values; Home shows all.")));

    setWidget(panel);
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFixedWidth(kWidth);
}

void ReviewSide::setStanding(const QString &lifter, strength::Standing standing)
{
    m_standing->setText(tr("%1: %2").arg(lifter, core::words(standing)));
    m_advice->setText(core::advice(standing));
}

void ReviewSide::setTrend(const QString &words)
{
    m_trend->setText(words);
}

void ReviewSide::setKnowledge(Knowledge knowledge)
{
    m_knowledge->button(int(knowledge))->setChecked(true);
}

} // namespace ui
