#include "tests/benchmarks/chances.h"

#include "tests/simulators/bench_variations.h"
#include "tests/simulators/program_coach.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace benchmarks {

namespace {

using simulators::idOfRow;

constexpr int kWeeks = 52;
constexpr int kFrom = simulators::kFirstDay + 7 * kWeeks / 2;

/// The session as the program's log has it: every set answers the planned one in its place.
core::LoggedSession logged(
    const strength::TrainingSession &session, std::span<const core::ResolvedCard> cards)
{
    core::LoggedSession log;
    log.id = {session.day};
    log.lifter = {1};
    log.day = simulators::dateOf(session.day);
    auto set = session.sets.begin();
    for (const core::ResolvedCard &card : cards)
        for (int i = 0; i < core::setCount(card.parsed.lines); ++i, ++set) {
            core::SetEntry entry;
            entry.variation = idOfRow(set->variation);
            entry.loadKg = set->loadKg;
            entry.repsPlanned = set->repsPlanned;
            entry.repsDone = set->reps;
            entry.rpe = set->rpe;
            entry.failed = set->missed;
            if (set->leadReps > 0)
                entry.lead = core::LeadReps{idOfRow(set->leadVariation), set->leadReps};
            entry.answers = core::PlannedSetRef{card.card.id, i};
            log.sets.push_back(entry);
        }
    return log;
}

/// Cards with the chances of other lines taken out.
enum class Keep { firstOfSession, others };
std::vector<core::ResolvedCard> only(Keep keep, std::vector<core::ResolvedCard> cards)
{
    for (core::ResolvedCard &card : cards)
        for (size_t line = 0; line < card.lines.size(); ++line)
            if ((keep == Keep::firstOfSession) != (card.card.position == 0 && line == 0))
                card.lines[line].firstMade.reset();
    return cards;
}

Chances scored(const std::vector<core::ResolvedCard> &given, const strength::LifterLog &log)
{
    std::map<QDate, std::vector<core::ResolvedCard>> days;
    for (const core::ResolvedCard &card : given)
        days[card.card.day].push_back(card);
    std::vector<core::LoggedSession> sessions;
    for (const strength::TrainingSession &session : log.sessions)
        if (const auto day = days.find(simulators::dateOf(session.day)); day != days.end())
            sessions.push_back(logged(session, day->second));
    const auto &catalogue = simulators::benchCatalogue();
    return {core::scoreGiven(only(Keep::firstOfSession, given), sessions, catalogue),
        core::scoreGiven(only(Keep::others, given), sessions, catalogue)};
}

strength::RosterPriors learntBefore(int day, std::vector<strength::LifterLog> logs)
{
    for (strength::LifterLog &log : logs)
        std::erase_if(log.sessions, [day](const auto &session) { return session.day >= day; });
    return strength::learnRoster(logs, simulators::benchVariations());
}

} // namespace

Chances chancesGiven(const simulators::Truth &truth, std::uint64_t seed, int lifters)
{
    // Up to the day from which on the program has them, the lifters are the same both times.
    const strength::RosterPriors learnt =
        learntBefore(kFrom, simulators::simulateRoster(truth, seed, lifters, kWeeks).logs());
    simulators::Random luck(seed);
    std::vector<std::vector<core::ResolvedCard>> given(static_cast<size_t>(lifters));
    const simulators::SimulatedRoster roster = simulators::simulateRoster(
        truth, seed, lifters, kWeeks, [&](int lifter, simulators::Makeup &makeup) {
            makeup.coach = simulators::coachByProgram(
                std::move(makeup.coach), {kFrom, learnt, &given[size_t(lifter)]}, luck.fork());
        });
    Chances sum;
    for (size_t i = 0; i < given.size(); ++i) {
        const Chances own = scored(given[i], roster.lifters[i].log);
        sum.first = sum.first + own.first;
        sum.later = sum.later + own.later;
    }
    return sum;
}

double worstTenth(const core::GivenScore &score)
{
    double worst = 0.0;
    for (const core::GivenTenth &tenth : score)
        if (tenth.sets >= kFewestJudged)
            worst = std::max(worst, 100.0 * std::abs(tenth.made - tenth.chance) / tenth.sets);
    return worst;
}

} // namespace benchmarks
