#include "core/advice/plan_checks.h"

#include "core/advice/plan_checks_rules.h"
#include "core/domain/training_history.h"
#include "core/domain/visible_text.h"
#include "core/domain/week.h"
#include "core/loads/effort_words.h"

#include <algorithm>
#include <cassert>
#include <utility>

namespace core {

namespace {

using WeekLoads = std::map<std::pair<QDate, Lift>, WeekLoad>;

WeekLoad &weekOf(WeekLoads &loads, QDate day, Lift lift)
{
    const QDate monday = mondayOf(day);
    return loads.try_emplace({monday, lift}, WeekLoad{monday}).first->second;
}

/// What is planned on a day that the log already covers was done as logged, or missed.
WeekLoads weekLoads(const PlanToCheck &plan)
{
    WeekLoads loads;
    QDate logEnd;
    for (const LoggedSession &session : plan.sessions) {
        logEnd = logEnd.isValid() ? std::max(logEnd, session.day) : session.day;
        for (const SetEntry &set : session.sets)
            if (const Variation *variation = find(plan.catalogue, set.variation);
                variation && !variation->assistance)
                weekOf(loads, session.day, variation->lift).add(set);
    }
    for (const ResolvedCard &card : plan.cards) {
        const Variation *variation = find(plan.catalogue, card.card.variation);
        if (!variation || variation->assistance || (logEnd.isValid() && card.card.day <= logEnd))
            continue;
        WeekLoad &week = weekOf(loads, card.card.day, variation->lift);
        week.sets += setCount(card.parsed.lines);
        week.lifts += liftCount(card.lines);
        week.tonnageKg += tonnageKg(card.lines);
    }
    return loads;
}

CheckedPlan checkedPlan(const PlanToCheck &plan)
{
    CheckedPlan checked{plan, {}, {}, weekLoads(plan)};
    for (const ResolvedCard &card : plan.cards) {
        const Variation *variation = find(plan.catalogue, card.card.variation);
        if (!variation || card.parsed.error)
            continue;
        checked.cards.push_back({card, *variation, mondayOf(card.card.day)});
        checked.mondays.push_back(mondayOf(card.card.day));
    }
    std::ranges::sort(checked.mondays);
    checked.mondays.erase(
        std::unique(checked.mondays.begin(), checked.mondays.end()), checked.mondays.end());
    return checked;
}

} // namespace

WeekLoad CheckedPlan::load(QDate monday, Lift lift) const
{
    const auto week = loads.find({monday, lift});
    return week == loads.end() ? WeekLoad{monday} : week->second;
}

Finding CheckedPlan::finding(CheckRule rule, Severity severity, const CheckedCard &card,
    double measure, const QString &words, const QString &remedy) const
{
    const FindingKey key{
        rule, plan.lifter.id, card.resolved.card.id, card.monday, card.variation.lift};
    return {key, severity, words, remedy, measure, {}};
}

Finding CheckedPlan::finding(CheckRule rule, Severity severity, QDate monday, Lift lift,
    double measure, const QString &words, const QString &remedy) const
{
    return {{rule, plan.lifter.id, {}, monday, lift}, severity, words, remedy, measure, {}};
}

std::optional<double> shareOfMax(
    const ResolvedLine &line, const CheckedCard &card, const PlanToCheck &plan)
{
    return shareOfMax(line, card.variation, card.resolved.card.day,
        plan.estimateOf(card.variation.lift), plan.catalogue);
}

namespace {

/// What the coach let stand, as long as it has not got worse since.
void waveThrough(std::vector<Finding> &findings, std::span<const Waiver> waivers)
{
    constexpr double kRounding = 1e-9;
    for (Finding &finding : findings)
        for (const Waiver &waiver : waivers)
            if (waiver.key == finding.key && finding.measure <= waiver.measure + kRounding
                && !(needsNote(finding) && !hasVisibleText(waiver.note)))
                finding.wavedThrough = waiver.note;
}

} // namespace

bool needsNote(const Finding &finding)
{
    return finding.severity == Severity::stop;
}

std::vector<Finding> checkPlan(const PlanToCheck &plan)
{
    const CheckedPlan checked = checkedPlan(plan);
    std::vector<Finding> found;
    for (const QDate monday : checked.mondays) {
        for (const CheckedCard &card : checked.cards)
            if (card.monday == monday)
                checkCard(checked, card, found);
        checkWeek(checked, monday, found);
    }
    waveThrough(found, plan.waivers);
    return found;
}

Edit waive(const Finding &finding, const QString &note, std::span<const Waiver> waivers,
    const std::function<WaiverId()> &newId)
{
    assert(!needsNote(finding) || hasVisibleText(note));
    Edit edit = takeUp(finding, waivers);
    const WaiverId id = edit.waivers.before.empty() ? newId() : edit.waivers.before.front().id;
    edit.waivers.after = {{id, finding.key, finding.measure, note}};
    return edit;
}

Edit takeUp(const Finding &finding, std::span<const Waiver> waivers)
{
    Edit edit;
    for (const Waiver &waiver : waivers)
        if (waiver.key == finding.key)
            edit.waivers.before = {waiver};
    return edit;
}

} // namespace core
