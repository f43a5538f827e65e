#include "ui/review/touch_panel.h"

#include "core/domain/touch_score.h"
#include "core/domain/variation.h"
#include "ui/look/form_parts.h"
#include "ui/look/text.h"

#include <QPushButton>
#include <algorithm>

namespace ui {

namespace {

QString holdOf(std::span<const strength::TouchReading> readings,
    const strength::TouchRoster &roster, int wanted, int day)
{
    return core::words(strength::touchHold(readings, roster, wanted, {day}), wanted);
}

} // namespace

QStringList holdLines(const core::Lifter &lifter, const core::LiftEstimate &lift,
    const strength::TouchRoster &roster, std::span<const core::Variation> catalogue)
{
    const int wanted = core::wantedTouch(lifter.touchStyle);
    const std::vector<strength::TouchReading> all = core::touchReadings(lift);
    QStringList lines{
        Text::tr("All bench work: %1").arg(holdOf(all, roster, wanted, lift.estimate.asOf))};
    std::vector<std::pair<size_t, QString>> byVariation;
    for (const core::VariationId id : lift.rows) {
        const std::vector<strength::TouchReading> own = core::touchReadings(lift, id);
        const core::Variation *variation = core::find(catalogue, id);
        if (!own.empty() && variation)
            byVariation.emplace_back(own.size(),
                Text::tr("%1: %2").arg(
                    variation->name, holdOf(own, roster, wanted, lift.estimate.asOf)));
    }
    if (byVariation.size() < 2)
        return lines; // the line of all says the same
    std::stable_sort(byVariation.begin(), byVariation.end(),
        [](const auto &a, const auto &b) { return a.first > b.first; });
    for (const auto &[sets, line] : byVariation)
        lines << line;
    return lines;
}

TouchPanel::TouchPanel(QWidget *parent)
    : QWidget(parent)
    , m_holds(named("holds", plainWords()))
    , m_why(plainWords())
    , m_confirm(named("confirmTouch", new QPushButton))
{
    fill(this,
        columnLayout(
            {heading(tr("Touch on the chest")), m_holds, m_why, {m_confirm, 0, Qt::AlignLeft}}));
    connect(m_confirm, &QPushButton::clicked, this, [this] { Q_EMIT confirmed(m_suggested); });
}

void TouchPanel::show(const core::Lifter &lifter, const core::LiftEstimate &lift,
    const strength::TouchRoster &roster, std::span<const core::Variation> catalogue)
{
    m_holds->setText(holdLines(lifter, lift, roster, catalogue).join(u'\n'));
    const std::vector<strength::TouchReading> readings = core::touchReadings(lift);
    const core::TouchSuggestion suggestion =
        core::suggestTouchStyle(readings, roster, core::fromEngineDay(lift.estimate.asOf));
    m_why->setText(suggestion.why);
    m_why->setVisible(!suggestion.why.isEmpty());
    const bool isNews = suggestion.style && *suggestion.style != lifter.touchStyle;
    m_confirm->setVisible(isNews);
    if (isNews) {
        m_suggested = *suggestion.style;
        m_confirm->setText(tr("Set to %1").arg(core::words(m_suggested)));
    }
}

} // namespace ui
