#include "core/log/eased_lines.h"

#include "core/domain/text.h"
#include "core/log/day_plan.h"

#include <algorithm>
#include <set>

namespace core {

namespace {

/// What was done of the lift today, in order.
std::vector<SetEntry> doneToday(Lift lift, const PlanSources &sources)
{
    std::vector<SetEntry> done;
    if (const LiftEstimate *estimate = sources.estimateOf(lift))
        for (const LoggedSession &session : estimate->readings)
            if (session.day == sources.today)
                std::ranges::copy(session.sets, std::back_inserter(done));
    return done;
}

bool isCheckedIn(const PlanSources &sources)
{
    return std::ranges::any_of(sources.checkIns, [&sources](const CheckIn &checkIn) {
        return checkIn.lifter == sources.lifter.id && checkIn.day == sources.today
            && readiness(checkIn);
    });
}

void ease(ResolvedCard &card, const DayPlan &plan, const PlateTable &plates)
{
    std::set<size_t> done;
    for (const SessionRow &row : plan.rows)
        if (row.planned && row.done)
            done.insert(*row.planned);
    for (size_t i = 0; i < plan.planned.size(); ++i) {
        const DaySet &set = plan.planned[i];
        if (set.card != card.card.id || !set.loadKg || done.contains(i))
            continue;
        ResolvedLine &line = card.lines[set.line];
        const double shown = line.lighter ? line.lighter->loadKg
            : line.load                   ? line.load->loadKg
                                          : 0.0;
        const BarLoad lighter = plates.round(*set.loadKg, Rounding::nearest);
        if (!line.withheld.isEmpty() || lighter.loadKg >= shown)
            continue;
        line.lighter = lighter;
        line.eased = set.eased.isEmpty() ? Text::tr("Lighter today, by the check-in")
                                         : Text::tr("Lighter today, after the miss");
    }
}

} // namespace

void easeToday(std::span<ResolvedCard> cards, const PlanSources &sources,
    const strength::ReadinessEffect *readiness)
{
    const bool isSaid = isCheckedIn(sources);
    const PlateTable plates = platesOf(sources.lifter);
    // The sets of a lift are paired with its own: how the lifts alternate is not known here.
    for (const Lift lift : {Lift::bench, Lift::squat, Lift::deadlift}) {
        std::vector<Card> ofLift;
        for (const ResolvedCard &card : cards)
            if (const Variation *variation = find(sources.variations, card.card.variation);
                variation && variation->lift == lift && card.card.day == sources.today)
                ofLift.push_back(card.card);
        const std::vector<SetEntry> done = doneToday(lift, sources);
        if (ofLift.empty() || (!isSaid && std::ranges::none_of(done, &SetEntry::failed)))
            continue;
        const DayPlan plan = dayPlan({sources.lifter, sources.today, sources.variations, ofLift,
            sources.given, sources.today, done, sources.checkIns, sources.estimateOf, readiness});
        for (ResolvedCard &card : cards)
            ease(card, plan, plates);
    }
}

} // namespace core
