#include "core/exchange/return_basis.h"

#include "core/domain/week.h"
#include "core/storage/roster_store.h"

#include <QSet>

namespace core {

namespace {

/// Whom and when the sheets speak of; those with problems speak of nothing.
struct Mentioned
{
    explicit Mentioned(std::span<const ReturnSheet> sheets)
    {
        for (const ReturnSheet &sheet : sheets) {
            if (!sheet.problems.isEmpty())
                continue;
            numbers << sheet.lifterId;
            names << sheet.lifter.toCaseFolded();
            mondays << sheet.monday;
            for (const ReturnedSet &set : sheet.sets)
                days << set.day;
            for (const CheckIn &said : sheet.checkIns)
                days << said.day;
        }
    }

    [[nodiscard]] bool contains(const Lifter &lifter) const
    {
        return numbers.contains(lifter.id) || names.contains(lifter.name.toCaseFolded());
    }

    QSet<LifterId> numbers;
    QSet<QString> names; ///< folded
    QSet<QDate> mondays;
    QSet<QDate> days;
};

} // namespace

ReturnBasis basisFor(
    std::span<const ReturnSheet> sheets, const RosterReader &roster, const Watch &watch)
{
    const Mentioned mentioned(sheets);
    const auto take = [&mentioned](const auto &rows, auto &into) {
        std::ranges::copy_if(rows, std::back_inserter(into),
            [&mentioned](const auto &row) { return mentioned.days.contains(row.day); });
    };
    ReturnBasis basis{roster.lifters(), roster.variations(), {}, {}, {}, {}};
    std::vector<Lifter> lifters;
    std::vector<LoggedSession> log;
    double done = 0.0;
    for (const Lifter &lifter : basis.lifters) {
        if (!watch.goesOn(done++ / double(basis.lifters.size())))
            break;
        if (!mentioned.contains(lifter))
            continue;
        for (const QDate monday : mentioned.mondays)
            for (Card &card : roster.cards(lifter.id, monday, monday.addDays(kWeekDays - 1)))
                basis.cards.push_back(std::move(card));
        std::vector<LoggedSession> sessions = roster.sessions(lifter.id);
        take(sessions, basis.sessions);
        take(roster.checkIns(lifter.id), basis.checkIns);
        lifters.push_back(lifter);
        std::ranges::move(sessions, std::back_inserter(log));
    }
    if (!log.empty())
        basis.estimates = estimateAll(
            lifters, basis.variations, log, std::ranges::max(log, {}, &LoggedSession::day).day);
    return basis;
}

} // namespace core
