#include "core/log/roster_adherence.h"

#include "core/log/given_score.h"

#include <algorithm>
#include <iterator>

namespace core {

namespace {

/// Of each lifter, in order.
template <class Row>
std::map<LifterId, std::vector<Row>> byLifter(const std::vector<Row> &rows, QDate from, QDate to)
{
    std::map<LifterId, std::vector<Row>> found;
    for (const Row &row : rows)
        if (row.day >= from && row.day <= to)
            found[row.lifter].push_back(row);
    return found;
}

std::vector<ResolvedCard> ofLift(
    std::span<const ResolvedCard> cards, Lift lift, std::span<const Variation> catalogue)
{
    std::vector<ResolvedCard> found;
    std::ranges::copy_if(cards, std::back_inserter(found), [lift, catalogue](const auto &card) {
        const Variation *variation = find(catalogue, card.card.variation);
        // The readings of an estimate hold no assistance work.
        return variation && countsFor(*variation, lift);
    });
    return found;
}

} // namespace

std::map<LifterId, Adherence> adherenceOfAll(const RosterDone &roster)
{
    const auto [from, to] = daysOfLate(roster.today);
    auto cards = byLifter(roster.cards, from, to);
    const auto given = byLifter(roster.given, from, to);
    std::map<LifterId, Adherence> all;
    for (const Lifter &lifter : roster.lifters) {
        const auto known = given.find(lifter.id);
        const std::vector<ResolvedCard> planned = asGiven(std::move(cards[lifter.id]), lifter,
            roster.catalogue, known == given.end() ? std::span<const GivenDay>() : known->second);
        for (const Lift lift : {Lift::bench, Lift::squat, Lift::deadlift})
            if (const LiftEstimate *log = roster.estimateOf(lifter.id, lift)) {
                const std::vector<ResolvedCard> own = ofLift(planned, lift, roster.catalogue);
                all[lifter.id] +=
                    adherenceOfLate({own, log->readings, {}, roster.catalogue, roster.today});
            }
    }
    return all;
}

} // namespace core
