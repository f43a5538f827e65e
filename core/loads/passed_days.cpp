#include "core/loads/passed_days.h"

#include "core/strength/pooling.h"

#include <algorithm>
#include <map>
#include <set>

namespace core {

namespace {

/// Estimates of the lifts by the sets before `day` alone.
LiftEstimates knownOn(QDate day, const std::set<Lift> &lifts, const PassedDays &passed)
{
    LearntLifts learnt;
    for (const auto &[lift, roster] : passed.learnt)
        if (lifts.contains(lift))
            learnt.emplace(lift, roster);
    std::vector<LoggedSession> before;
    std::ranges::copy_if(passed.sessions, std::back_inserter(before),
        [day](const LoggedSession &session) { return session.day < day; });
    return fitSome(
        {passed.lifter}, {passed.variations.begin(), passed.variations.end()}, before, learnt, day);
}

} // namespace

std::vector<GivenDay> givePassedDays(
    const PassedDays &passed, const Giving &giving, const std::stop_token &stop)
{
    std::map<QDate, std::vector<Card>> days;
    for (const Card &card : passed.cards)
        days[card.day].push_back(card);
    std::vector<GivenDay> rows;
    for (const auto &[day, cards] : days) {
        if (stop.stop_requested())
            throw strength::Stopped();
        std::set<Lift> lifts;
        for (const Card &card : cards)
            if (const Variation *variation = find(passed.variations, card.variation))
                lifts.insert(variation->lift);
        const LiftEstimates estimates = knownOn(day, lifts, passed);
        const PlanSources sources{passed.lifter, passed.variations,
            [&](Lift lift) -> const LiftEstimate * {
                const auto found = estimates.find({passed.lifter.id, lift});
                return found == estimates.end() ? nullptr : &found->second;
            },
            noCheckIns(), passed.given, day}; // what was withheld is judged when it is shown
        for (GivenDay &row : give(resolveCards(cards, sources), sources, passed.given, giving))
            rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace core
