#include "core/log/outcome.h"

#include "core/domain/week.h"
#include "core/log/trained_days.h"

#include <algorithm>

namespace core {

namespace {

DayOutcome outcomeOf(const TrainedDay &day, std::span<const Variation> catalogue, bool isOver)
{
    DayOutcome outcome;
    const std::vector<DaySet> planned = daySets(day.cards, catalogue, Unit::kilogram);
    for (const DaySet &set : planned) {
        if (outcome.cards.empty() || outcome.cards.back().card != set.card)
            outcome.cards.push_back({set.card, isOver ? Outcome::leftOut : Outcome::open, 0, 0});
        ++outcome.cards.back().sets;
    }
    for (const SessionRow &row : sessionRows(planned, day.done, catalogue)) {
        if (!row.planned) {
            ++outcome.extra;
            outcome.missed += day.done[*row.done].failed;
            continue;
        }
        if (!row.done)
            continue;
        const DaySet &set = planned[*row.planned];
        const SetEntry &entry = day.done[*row.done];
        CardOutcome &card = *std::ranges::find(outcome.cards, set.card, &CardOutcome::card);
        const bool isWhole = entry.repsDone >= set.reps;
        card.done += isWhole;
        const bool isMissed = !isWhole && entry.failed;
        outcome.missed += isMissed;
        if (isMissed)
            card.outcome = Outcome::missed;
        else if (card.outcome != Outcome::missed)
            card.outcome = card.done == card.sets ? Outcome::done : Outcome::partly;
    }
    return outcome;
}

} // namespace

std::map<QDate, DayOutcome> outcomes(const DoneInput &input, QDate from, QDate to)
{
    std::map<QDate, DayOutcome> found;
    for (const auto &[date, day] : trainedDays(input.cards, input.sessions, from, to))
        found.emplace(date, outcomeOf(day, input.catalogue, date < input.today));
    for (const CheckIn &checkIn : input.checkIns)
        if (const auto day = found.find(checkIn.day); day != found.end())
            day->second.hasPain = checkIn.pain.has_value();
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

std::pair<QDate, QDate> daysOfLate(QDate today)
{
    const QDate monday = mondayOf(today);
    return {monday.addDays(-kAdherenceWeeks * kWeekDays), monday.addDays(-1)};
}

Adherence adherenceOfLate(const DoneInput &input)
{
    const auto [from, to] = daysOfLate(input.today);
    return adherence(outcomes(input, from, to), input.today);
}

std::map<QDate, WeekOutcome> finishedWeeks(const DoneInput &input, QDate from)
{
    const QDate first = mondayOf(from), last = mondayOf(input.today).addDays(-1);
    std::map<QDate, std::map<QDate, DayOutcome>> days;
    for (auto &[date, day] : outcomes(input, first, last))
        days[mondayOf(date)].emplace(date, day);
    std::map<QDate, WeekOutcome> weeks;
    for (const auto &[monday, ofWeek] : days) {
        WeekOutcome &week = weeks[monday];
        week.adherence = adherence(ofWeek, input.today);
        for (const auto &[date, day] : ofWeek)
            week.missed += day.missed;
    }
    for (const CheckIn &checkIn : input.checkIns)
        if (checkIn.pain && checkIn.day >= first && checkIn.day <= last)
            weeks[mondayOf(checkIn.day)].hasPain = true;
    return weeks;
}

} // namespace core
