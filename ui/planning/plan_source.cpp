#include "ui/planning/plan_source.h"

#include "core/domain/week.h"
#include "ui/look/text.h"
#include "ui/roster/estimates.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/today.h"

#include <algorithm>

namespace ui {

namespace {
constexpr int kFewestSourceWeeks = 4;
constexpr int kMostSourceWeeks = 12;
} // namespace

PlanSource::PlanSource(OpenRoster &roster, const Estimates &estimates, const LifterHistory &history,
    core::LifterId lifter)
    : m_roster(roster)
    , m_estimates(estimates)
    , m_history(history)
    , m_lifter(*roster.lifter(lifter))
{
}

const std::vector<core::Variation> &PlanSource::catalogue() const
{
    return m_roster.variations();
}

std::vector<core::Card> PlanSource::cards(QDate from, QDate to) const
{
    return m_roster.cards(m_lifter.id, from, to);
}

std::vector<core::ResolvedCard> PlanSource::resolved(std::vector<core::Card> cards) const
{
    return core::resolveCards(std::move(cards),
        {m_lifter, m_roster.variations(),
            [this](core::Lift lift) { return m_estimates.of(m_lifter.id, lift); },
            m_history.checkIns(), m_history.given(), m_roster.today().date()});
}

core::WhatIfComparison PlanSource::compare(const core::Edit &edit, QDate until) const
{
    core::WhatIfComparison comparison;
    const core::LiftEstimate *estimate = m_estimates.of(m_lifter.id, core::Lift::bench);
    if (!estimate) {
        comparison.current.why = Text::tr("The estimate is being worked out.");
        return comparison;
    }
    // The first day that is not done yet.
    QDate from = m_roster.today().date();
    if (!m_history.sessions().empty())
        from = std::max(from, m_history.sessions().back().day.addDays(1));
    const int weeks = std::clamp(int(core::mondayOf(from).daysTo(until)) / core::kWeekDays + 1,
        kFewestSourceWeeks, kMostSourceWeeks);
    std::vector<core::Card> current =
        cards(from, core::mondayOf(from).addDays(core::kWeekDays * weeks - 1));
    std::vector<core::Card> changed = current;
    for (const core::Card &gone : edit.cards.before)
        std::erase(changed, gone);
    for (const core::Card &added : edit.cards.after)
        if (added.lifter == m_lifter.id)
            changed.push_back(added);
    return core::whatIf(
        {m_roster.variations(), m_history.sessions(), *estimate, core::Lift::bench, from, weeks},
        resolved(std::move(current)), resolved(std::move(changed)));
}

} // namespace ui
