#include "core/log/given_score.h"

#include "core/log/trained_days.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace core {

namespace {

constexpr double kSameLoadKg = 0.5; ///< what a lifter loads may differ by a small plate

/// The chance of each planned set that is the first of its line and was given with one.
std::map<std::pair<CardId, size_t>, double> chancesOf(std::span<const ResolvedCard> cards)
{
    std::map<std::pair<CardId, size_t>, double> chances;
    for (const ResolvedCard &card : cards)
        for (size_t line = 0; card.given && line < card.lines.size(); ++line)
            if (card.lines[line].firstMade)
                chances[{card.card.id, line}] = *card.lines[line].firstMade;
    return chances;
}

void scoreDay(GivenScore &score, const TrainedDay &day, std::span<const Variation> catalogue)
{
    auto chances = chancesOf(day.cards);
    const std::vector<DaySet> planned = daySets(day.cards, catalogue, Unit::kilogram);
    for (const SessionRow &row : sessionRows(planned, day.done, catalogue)) {
        if (!row.planned)
            continue;
        const DaySet &set = planned[*row.planned];
        const auto chance = chances.find({set.card, set.line});
        if (chance == chances.end())
            continue;
        const double given = chance->second;
        chances.erase(chance); // the first set of the line is the one that counts
        if (!row.done)
            continue;
        const SetEntry &entry = day.done[*row.done];
        const bool isAsGiven = entry.variation == set.variation && set.planKg
            && std::abs(entry.loadKg - *set.planKg) <= kSameLoadKg;
        if (!isAsGiven)
            continue;
        GivenTenth &tenth = score[size_t(std::clamp(int(given * 10.0), 0, 9))];
        ++tenth.sets;
        tenth.made += entry.repsDone >= set.reps;
        tenth.chance += given;
    }
}

} // namespace

GivenScore scoreGiven(std::span<const ResolvedCard> cards, std::span<const LoggedSession> sessions,
    std::span<const Variation> catalogue)
{
    GivenScore score{};
    if (!cards.empty())
        for (const auto &[date, day] :
            trainedDays(cards, sessions, cards.front().card.day, cards.back().card.day))
            scoreDay(score, day, catalogue);
    return score;
}

GivenScore operator+(GivenScore a, const GivenScore &b)
{
    for (size_t i = 0; i < a.size(); ++i) {
        a[i].sets += b[i].sets;
        a[i].made += b[i].made;
        a[i].chance += b[i].chance;
    }
    return a;
}

std::vector<ResolvedCard> asGiven(std::vector<Card> cards, const Lifter &lifter,
    std::span<const Variation> catalogue, std::span<const GivenDay> given)
{
    return resolveCards(std::move(cards),
        {lifter, catalogue, [](Lift) { return nullptr; }, noCheckIns(), given, {}});
}

} // namespace core
