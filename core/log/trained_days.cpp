#include "core/log/trained_days.h"

namespace core {

std::map<QDate, TrainedDay> trainedDays(std::span<const ResolvedCard> cards,
    std::span<const LoggedSession> sessions, QDate from, QDate to)
{
    const auto isWithin = [from, to](QDate day) { return day >= from && day <= to; };
    std::map<QDate, TrainedDay> days;
    for (const ResolvedCard &card : cards)
        if (isWithin(card.card.day))
            days[card.card.day].cards.push_back(card);
    for (const LoggedSession &session : sessions)
        if (isWithin(session.day)) {
            std::vector<SetEntry> &done = days[session.day].done;
            done.insert(done.end(), session.sets.begin(), session.sets.end());
        }
    return days;
}

} // namespace core
