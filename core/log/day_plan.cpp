#include "core/log/day_plan.h"

#include <algorithm>

namespace core {

namespace {

std::vector<DaySet> plannedSets(const DayInputs &day, const ReadinessAdvice &advice,
    std::vector<Card> cards, QStringList *unreadable = nullptr)
{
    const std::vector<ResolvedCard> resolved =
        resolveCards(std::move(cards), {day.lifter, day.catalogue, day.estimateOf});
    if (unreadable)
        for (const ResolvedCard &card : resolved)
            if (card.parsed.error) {
                const Variation *variation = find(day.catalogue, card.card.variation);
                *unreadable << (variation ? variation->name : card.card.setLine);
            }
    return adjusted(daySets(resolved, day.catalogue), day.checkIn, advice, day.shiftLoads,
        day.catalogue, platesOf(day.lifter));
}

} // namespace

DayPlan dayPlan(const DayInputs &day)
{
    DayPlan plan;
    if (day.checkIn.id.isValid())
        plan.advice =
            adviseOnReadiness(day.checkIn, day.readiness, day.lifter, day.cards, day.catalogue);
    plan.planned =
        plannedSets(day, plan.advice, {day.cards.begin(), day.cards.end()}, &plan.unreadable);
    plan.rows = sessionRows(plan.planned, day.done, day.catalogue);
    return plan;
}

DaySet swapped(const DayInputs &day, const DayPlan &plan, size_t planned, VariationId variation)
{
    DaySet set = plan.planned[planned];
    std::vector<Card> cards(day.cards.begin(), day.cards.end());
    for (Card &card : cards)
        if (card.id == set.card)
            card.variation = variation;
    const std::vector<DaySet> sets = plannedSets(day, plan.advice, std::move(cards));
    if (!set.lead && planned < sets.size())
        return sets[planned];
    set.lead.reset();
    set.variation = variation;
    set.loadKg.reset();
    return set;
}

QString whyWithheld(const DayInputs &day, const DayPlan &plan, const SetEntry &extra)
{
    DaySet asked;
    asked.variation = extra.variation;
    asked.lead = extra.lead;
    asked.reps = std::max(extra.repsDone, 1);
    asked.rpe = extra.rpe;
    return adjusted({asked}, day.checkIn, plan.advice, false, day.catalogue, platesOf(day.lifter))
        .front()
        .withheld;
}

} // namespace core
