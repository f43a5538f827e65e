#include "core/log/day_plan.h"

#include "core/domain/check_in_on.h"
#include "core/domain/text.h"
#include "core/loads/effort.h"

#include <algorithm>
#include <cmath>

namespace core {

namespace {

PlanSources sourcesOf(const DayInputs &day)
{
    return {day.lifter, day.catalogue, day.estimateOf, day.checkIns, day.given, day.today};
}

/// Whether any set of the card would be heavier in the variation, as far as loads are known.
bool isHeavier(const DayInputs &day, Card card, VariationId in)
{
    const auto loadsOf = [&day](const Card &one) {
        std::vector<double> loads;
        for (const ResolvedCard &resolved : resolveCards({one}, sourcesOf(day)))
            for (const ResolvedLine &line : resolved.lines)
                loads.push_back(line.load ? line.load->loadKg : 0.0);
        return loads;
    };
    const std::vector<double> planned = loadsOf(card);
    card.variation = in;
    const std::vector<double> swapped = loadsOf(card);
    for (size_t line = 0; line < planned.size() && line < swapped.size(); ++line)
        if (planned[line] > 0.0 && swapped[line] > planned[line])
            return true;
    return false;
}

/// The misses of a lift on a day, as they come.
class Misses
{
public:
    explicit Misses(std::span<const Variation> catalogue)
        : m_catalogue(catalogue)
    {
    }

    void add(const SetEntry &done)
    {
        if (!done.failed)
            return;
        ++m_count[liftOf(done.variation)];
        double &lightest = m_lightestKg.try_emplace(done.variation, done.loadKg).first->second;
        lightest = std::min(lightest, done.loadKg);
    }

    [[nodiscard]] bool concern(VariationId variation) const
    {
        return m_count.contains(liftOf(variation));
    }

    /// What is left of a planned load.
    [[nodiscard]] double eased(VariationId variation, double loadKg, const PlateTable &plates) const
    {
        const auto count = m_count.find(liftOf(variation));
        if (count == m_count.end())
            return loadKg;
        double target = loadKg * std::pow(kAfterMiss, count->second);
        if (const auto missed = m_lightestKg.find(variation); missed != m_lightestKg.end())
            target = std::min(target, missed->second * kAfterMiss);
        // The empty bar may be all there is.
        return std::min(plates.round(target, Rounding::down).loadKg, loadKg);
    }

private:
    /// Variations that the catalogue lacks stand for themselves.
    [[nodiscard]] std::optional<Lift> liftOf(VariationId id) const
    {
        const Variation *variation = find(m_catalogue, id);
        return variation ? std::optional(variation->lift) : std::nullopt;
    }

    std::span<const Variation> m_catalogue;
    std::map<std::optional<Lift>, int> m_count;
    std::map<VariationId, double> m_lightestKg;
};

void easeAfterMisses(DayPlan &plan, const DayInputs &day)
{
    const PlateTable plates = platesOf(day.lifter);
    Misses misses(day.catalogue);
    for (const SessionRow &row : plan.rows) {
        if (row.done) {
            misses.add(day.done[*row.done]);
            continue;
        }
        DaySet &set = plan.planned[*row.planned];
        if (!set.loadKg || !misses.concern(set.variation))
            continue;
        set.loadKg = misses.eased(set.variation, *set.loadKg, plates);
        set.eased = Text::tr("lighter after the miss");
    }
}

} // namespace

DayPlan dayPlan(const DayInputs &day)
{
    DayPlan plan;
    plan.limits = limitsOn(day.lifter, day.day, day.checkIns);
    const CheckIn *said = checkInOn(day.checkIns, day.lifter.id, day.day);
    if (said || !plan.limits.pains.empty())
        plan.advice = adviseOnReadiness(said ? *said : CheckIn(), plan.limits, day.readiness,
            day.lifter, day.cards, day.catalogue,
            [&day](const Card &card, VariationId in) { return isHeavier(day, card, in); });
    plan.cards = resolveCards({day.cards.begin(), day.cards.end()}, sourcesOf(day));
    for (const ResolvedCard &card : plan.cards)
        if (card.parsed.error) {
            const Variation *variation = find(day.catalogue, card.card.variation);
            plan.unreadable << (variation ? variation->name : card.card.setLine);
        }
    plan.planned = daySets(plan.cards, day.catalogue, day.lifter.unit);
    plan.shiftsLoads = day.shiftLoads.value_or(plan.advice.loadFactor <= 1.0);
    if (plan.shiftsLoads)
        plan.planned =
            shifted(std::move(plan.planned), plan.advice, day.catalogue, platesOf(day.lifter));
    plan.rows = sessionRows(plan.planned, day.done, day.catalogue);
    easeAfterMisses(plan, day);
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
    std::vector<DaySet> sets =
        daySets(resolveCards(std::move(cards), sourcesOf(day)), day.catalogue, day.lifter.unit);
    if (plan.shiftsLoads)
        sets = shifted(std::move(sets), plan.advice, day.catalogue, platesOf(day.lifter));
    if (set.lead || planned >= sets.size()) {
        set.lead.reset();
        set.variation = variation;
        set.loadKg.reset();
        return set;
    }
    const CheckIn *said = checkInOn(day.checkIns, day.lifter.id, day.day);
    const bool isCareful =
        !plan.limits.mayGoMaximal() || !set.eased.isEmpty() || (said && !soreAreas(*said).empty());
    DaySet &swap = sets[planned];
    if (const std::optional<double> most = set.loadKg ? set.loadKg : set.planKg;
        isCareful && most && swap.loadKg)
        swap.loadKg = std::min(*swap.loadKg, *most);
    swap.eased = set.eased;
    return swap;
}

double easedKg(const DayInputs &day, VariationId variation, double loadKg)
{
    Misses misses(day.catalogue);
    for (const SetEntry &done : day.done)
        misses.add(done);
    return misses.eased(variation, loadKg, platesOf(day.lifter));
}

QString whyWithheld(const DayInputs &day, const DayPlan &plan, const SetEntry &extra)
{
    const Variation *variation = find(day.catalogue, extra.variation);
    SetEffort effort;
    effort.variation = variation;
    if (extra.lead)
        effort.lead = find(day.catalogue, extra.lead->variation);
    effort.reps = extra.repsDone;
    effort.rpe = extra.rpe;
    if (variation && extra.loadKg > 0.0)
        effort.shareOfMax =
            shareOfMax(extra.loadKg, extra.variation, day.day, day.estimateOf(variation->lift));
    return whyWithheld(plan.limits, effort);
}

} // namespace core
