#include "core/exchange/return_booking.h"

#include "core/domain/merged_sets.h"
#include "core/domain/text.h"

namespace core {

namespace {

struct SetsBooked
{
    std::vector<SetEntry> sets;
    ReturnBooking::Counts counts;
};

/// Of the sets that nothing told of, the first that `told` says anew. A set that was planned never
/// takes the place of one that the coach logged besides, nor the other way round.
std::optional<size_t> placeOf(
    const SetEntry &told, const std::vector<SetEntry> &sets, const std::vector<bool> &isTold)
{
    for (size_t i = 0; i < isTold.size(); ++i)
        if (!isTold[i] && sets[i].variation == told.variation
            && sets[i].repsPlanned == told.repsPlanned)
            return i;
    return std::nullopt;
}

/// Sets of a session after those of a sheet.
SetsBooked bookSets(const std::vector<SetEntry> &present, const std::vector<SetEntry> &told)
{
    SetsMerged merged = mergeSets(present, told);
    const auto rest = merged.sets.begin() + std::ptrdiff_t(present.size());
    SetsBooked booked{{merged.sets.begin(), rest}, {0, 0, merged.known}};
    for (auto set = rest; set != merged.sets.end(); ++set) {
        const auto place = placeOf(*set, booked.sets, merged.isTold);
        if (!place) {
            booked.sets.push_back(*set);
            ++booked.counts.added;
            continue;
        }
        const SetEntry before = std::exchange(booked.sets[*place], *set);
        booked.sets[*place].velocityMs = before.velocityMs; // no sheet tells it
        if (!set->answers)
            booked.sets[*place].answers = before.answers;
        merged.isTold[*place] = true;
        ++booked.counts.corrected;
    }
    return booked;
}

/// The planned set that the sheet names, while its card stands where it stood.
std::optional<PlannedSetRef> answered(
    const ReturnedSet &returned, LifterId lifter, const ReturnBasis &basis)
{
    for (const Card &card : basis.cards)
        if (card.lifter == lifter && card.day == returned.plannedDay
            && card.position == returned.card - 1) {
            const Variation *variation = find(basis.variations, card.variation);
            if (variation
                && (variation->code == returned.plannedVariation
                    || variation->code == returned.leadVariation))
                return PlannedSetRef{card.id, returned.number - 1};
        }
    return std::nullopt;
}

} // namespace

ReturnBooking::ReturnBooking(const ReturnBasis &basis)
    : m_basis(basis)
{
    for (const Variation &variation : basis.variations)
        m_idOf.emplace(variation.code, variation.id);
}

ProblemList ReturnBooking::unknownCodes(const ReturnSheet &sheet) const
{
    ProblemList problems;
    for (const ReturnedSet &set : sheet.sets)
        if (set.state == ReturnedSet::State::done)
            for (const QString &code : {set.variation, set.leadVariation})
                if (!code.isEmpty() && !m_idOf.contains(code))
                    problems.add({sheet.file, set.line, QStringLiteral("variation"),
                        Text::tr("The catalogue has no variation \"%1\".").arg(code.left(40)),
                        Text::tr("Add it to the catalogue, or ask the lifter what was done.")});
    return problems;
}

ReturnBooking::Counts ReturnBooking::book(
    const ReturnSheet &sheet, LifterId lifter, const ReturnIds &ids)
{
    std::map<QDate, std::vector<SetEntry>> told;
    for (const ReturnedSet &set : sheet.sets)
        if (set.state == ReturnedSet::State::done)
            told[set.day].push_back(entryOf(set, lifter));
    Counts counts;
    for (const auto &[day, sets] : told) {
        LoggedSession &session = sessionFor(lifter, day, sets, ids);
        SetsBooked booked = bookSets(session.sets, sets);
        counts.added += booked.counts.added;
        counts.corrected += booked.counts.corrected;
        counts.known += booked.counts.known;
        session.sets = std::move(booked.sets);
    }
    for (const CheckIn &said : sheet.checkIns)
        book(said, lifter, ids);
    return counts;
}

void ReturnBooking::takeDay(LifterId lifter, QDate day)
{
    if (!m_days.insert({lifter, day}).second)
        return;
    const auto take = [&](const auto &rows, auto &booked) {
        for (const auto &row : rows)
            if (row.lifter == lifter && row.day == day)
                booked.push_back({row, row});
    };
    take(m_basis.sessions, m_sessions);
    take(m_basis.checkIns, m_checkIns);
}

/// The set as the log keeps it; the catalogue has its codes.
SetEntry ReturnBooking::entryOf(const ReturnedSet &returned, LifterId lifter) const
{
    SetEntry entry = returned.set;
    entry.answers = answered(returned, lifter, m_basis);
    entry.variation = m_idOf.at(returned.variation);
    if (returned.leadReps > 0)
        entry.lead = {m_idOf.at(returned.leadVariation), returned.leadReps};
    return entry;
}

/// The session of the day that has most of the sets, or a new one.
LoggedSession &ReturnBooking::sessionFor(
    LifterId lifter, QDate day, const std::vector<SetEntry> &sets, const ReturnIds &ids)
{
    takeDay(lifter, day);
    LoggedSession *best = nullptr;
    int most = -1;
    for (auto &[before, session] : m_sessions) {
        if (session.lifter != lifter || session.day != day)
            continue;
        const SetsBooked tried = bookSets(session.sets, sets);
        if (tried.counts.known > most) {
            most = tried.counts.known;
            best = &session;
        }
    }
    if (best)
        return *best;
    return m_sessions
        .emplace_back(Booked<LoggedSession>{
            std::nullopt, LoggedSession{ids.session(), lifter, day, 1, {}, {}}})
        .after;
}

void ReturnBooking::book(CheckIn said, LifterId lifter, const ReturnIds &ids)
{
    takeDay(lifter, said.day);
    for (auto &[before, known] : m_checkIns)
        if (known.lifter == lifter && known.day == said.day) {
            known = merged(known, said);
            return;
        }
    said.id = ids.checkIn();
    said.lifter = lifter;
    m_checkIns.push_back({std::nullopt, std::move(said)});
}

Edit ReturnBooking::edit() const
{
    const auto add = [](const auto &rows, auto &change) {
        for (const auto &[before, after] : rows) {
            if (before == after)
                continue;
            if (before)
                change.before.push_back(*before);
            change.after.push_back(after);
        }
    };
    Edit edit;
    add(m_sessions, edit.sessions);
    add(m_checkIns, edit.checkIns);
    return edit;
}

} // namespace core
