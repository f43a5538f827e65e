#include "ui/review/review_side.h"

#include "core/loads/estimate_words.h"
#include "ui/look/form_parts.h"
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
    QLabel *small = plainWords(words);
    small->setFont(ui::font(Type::small, small->font()));
    return small;
}

} // namespace

ReviewSide::ReviewSide(QWidget *parent)
    : QScrollArea(parent)
    , m_standing(named("standing", plainWords()))
    , m_advice(plainWords())
    , m_trend(named("trend", plainWords()))
    , m_adherence(named("adherence", plainWords()))
    , m_score(named("givenScore", plainWords()))
    , m_knowledge(new QButtonGroup(this))
    , m_legend(new ReviewLegend)
    , m_touch(new TouchPanel)
{
    m_standing->setFont(ui::font(Type::strong, font()));
    QVBoxLayout *down = columnLayout(
        {m_standing, m_advice, m_trend, space::gap, heading(tr("The line shows what is"))});
    for (const Knowledge knowledge : {Knowledge::now, Knowledge::then}) {
        auto *choice = new QRadioButton(words(knowledge));
        choice->setAccessibleDescription(explanation(knowledge));
        m_knowledge->addButton(choice, int(knowledge));
        down->addWidget(choice);
        down->addWidget(smallWords(explanation(knowledge)));
    }
    connect(m_knowledge, &QButtonGroup::idClicked, this,
        [this](int id) { Q_EMIT knowledgeChosen(Knowledge(id)); });
    for (const Part &part :
        std::initializer_list<Part>{space::gap, heading(tr("Marks")), m_legend, space::gap,
            heading(tr("Done beside planned")), m_adherence, m_score, m_touch, Stretch{1},
            smallWords(
                tr("Wheel or + and - zoom; drag or arrow keys move; Shift with a drag picks a "
                   "span; Ctrl with the arrow keys reads values; Home shows all."))})
        part.addTo(*down);
    setUpForScrolling(*this, boxed(down, {0, 0, space::gap, 0}));
    setFixedWidth(kWidth);
}

void ReviewSide::setStanding(const QString &lifter, const strength::LifterEstimate &estimate)
{
    m_standing->setText(tr("%1: %2").arg(lifter, core::words(estimate)));
    m_advice->setText(core::advice(estimate));
}

void ReviewSide::setTrend(const QString &words)
{
    m_trend->setText(words);
}

void ReviewSide::setDone(const QString &adherence, const QString &score)
{
    m_adherence->setText(adherence);
    m_score->setText(score);
}

void ReviewSide::setKnowledge(Knowledge knowledge)
{
    m_knowledge->button(int(knowledge))->setChecked(true);
}

} // namespace ui
