#include "core/log/day_plan.h"

#include <algorithm>

namespace core {

namespace {

PlanSources sourcesOf(const DayInputs &day)
{
    return {day.lifter, day.catalogue, day.estimateOf, day.given, day.today};
}

std::vector<DaySet> plannedSets(const DayInputs &day, const ReadinessAdvice &advice,
    std::span<const ResolvedCard> resolved)
{
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
    plan.cards = resolveCards({day.cards.begin(), day.cards.end()}, sourcesOf(day));
    for (const ResolvedCard &card : plan.cards)
        if (card.parsed.error) {
            const Variation *variation = find(day.catalogue, card.card.variation);
            plan.unreadable << (variation ? variation->name : card.card.setLine);
        }
    plan.planned = plannedSets(day, plan.advice, plan.cards);
    plan.rows = sessionRows(plan.planned, day.done, day.catalogue);
    return plan;
}

std::vector<GivenDay> giveDay(const DayInputs &day, const DayPlan &plan, const Giving &giving)
{
    return give(plan.cards, sourcesOf(day), day.given, giving);
}

DaySet swapped(const DayInputs &day, const DayPlan &plan, size_t planned, VariationId variation)
{
    DaySet set = plan.planned[planned];
    std::vector<Card> cards(day.cards.begin(), day.cards.end());
    for (Card &card : cards)
        if (card.id == set.card)
            card.variation = variation;
    const std::vector<DaySet> sets =
        plannedSets(day, plan.advice, resolveCards(std::move(cards), sourcesOf(day)));
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
