#include "core/log/outcome.h"

#include <algorithm>

namespace core {

namespace {

/// All that one day holds of the input.
struct Day
{
    std::vector<ResolvedCard> cards;
    std::vector<SetEntry> done;
    bool hasPain = false;
};

bool isWhole(const DaySet &planned, const SetEntry &done)
{
    return done.repsDone >= planned.reps;
}

DayOutcome outcomeOf(const Day &day, std::span<const Variation> catalogue, bool isOver)
{
    DayOutcome outcome;
    outcome.hasPain = day.hasPain;
    const std::vector<DaySet> planned = daySets(day.cards, catalogue, Unit::kilogram);
    std::vector<bool> isMissed;
    std::vector<bool> isBegun;
    const auto cardOf = [&](CardId id) {
        size_t at = 0;
        while (at < outcome.cards.size() && outcome.cards[at].card != id)
            ++at;
        if (at == outcome.cards.size()) {
            outcome.cards.push_back({id, Outcome::open, 0, 0});
            isMissed.push_back(false);
            isBegun.push_back(false);
        }
        return at;
    };
    for (const DaySet &set : planned)
        ++outcome.cards[cardOf(set.card)].sets;
    for (const SessionRow &row : sessionRows(planned, day.done, catalogue)) {
        if (!row.planned) {
            ++outcome.extra;
            continue;
        }
        if (!row.done)
            continue;
        const DaySet &set = planned[*row.planned];
        const SetEntry &entry = day.done[*row.done];
        const size_t card = cardOf(set.card);
        isBegun[card] = true;
        if (isWhole(set, entry))
            ++outcome.cards[card].done;
        else if (entry.failed)
            isMissed[card] = true;
    }
    for (size_t i = 0; i < outcome.cards.size(); ++i) {
        CardOutcome &card = outcome.cards[i];
        card.outcome = isMissed[i]   ? Outcome::missed
            : card.done == card.sets ? Outcome::done
            : isBegun[i]             ? Outcome::partly
            : isOver                 ? Outcome::leftOut
                                     : Outcome::open;
    }
    return outcome;
}

} // namespace

std::map<QDate, DayOutcome> outcomes(const DoneInput &input, QDate from, QDate to)
{
    const auto isWithin = [from, to](QDate day) { return day >= from && day <= to; };
    std::map<QDate, Day> days;
    for (const ResolvedCard &card : input.cards)
        if (isWithin(card.card.day))
            days[card.card.day].cards.push_back(card);
    for (const LoggedSession &session : input.sessions)
        if (isWithin(session.day)) {
            Day &day = days[session.day];
            day.done.insert(day.done.end(), session.sets.begin(), session.sets.end());
        }
    for (const CheckIn &checkIn : input.checkIns)
        if (const auto day = days.find(checkIn.day); day != days.end())
            day->second.hasPain = checkIn.pain.has_value();
    std::map<QDate, DayOutcome> found;
    for (const auto &[date, day] : days)
        found.emplace(date, outcomeOf(day, input.catalogue, date < input.today));
    return found;
}

Adherence adherence(const std::map<QDate, DayOutcome> &days, QDate today)
{
    Adherence sum;
    for (const auto &[date, day] : days) {
        sum.extra += day.extra;
        for (const CardOutcome &card : day.cards) {
            sum.sets += date < today ? card.sets : card.done;
            sum.done += card.done;
        }
    }
    return sum;
}

} // namespace core
