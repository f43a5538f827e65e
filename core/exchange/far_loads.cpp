#include "core/exchange/far_loads.h"

#include "core/domain/text.h"
#include "core/loads/far_above_max.h"

#include <QLocale>
#include <algorithm>

namespace core {

namespace {

bool isOf(const LoggedSession &session, const Lifter &lifter)
{
    return session.lifter == lifter.id;
}

/// The lifters who have a log and whose log changes.
std::vector<Lifter> whoTrained(std::span<const LoggedSession> after, const RosterRows &roster)
{
    std::vector<Lifter> found;
    for (const Lifter &lifter : roster.lifters) {
        const auto isOwn = [&lifter](
                               const LoggedSession &session) { return isOf(session, lifter); };
        if (std::ranges::any_of(after, isOwn) && std::ranges::any_of(roster.sessions, isOwn))
            found.push_back(lifter);
    }
    return found;
}

QDate lastDay(std::span<const LoggedSession> after, const RosterRows &roster)
{
    QDate last;
    for (const auto &sessions : {after, std::span<const LoggedSession>(roster.sessions)})
        for (const LoggedSession &session : sessions)
            last = last.isValid() ? std::max(last, session.day) : session.day;
    return last;
}

} // namespace

QStringList farLoads(std::span<const LoggedSession> before, std::span<const LoggedSession> after,
    const RosterRows &roster)
{
    QStringList said;
    const std::vector<Lifter> lifters = whoTrained(after, roster);
    if (lifters.empty())
        return said;
    const LiftEstimates estimates =
        estimateAll(lifters, roster.variations, roster.sessions, lastDay(after, roster));
    for (const LoggedSession &session : after) {
        const auto lifter = std::ranges::find(lifters, session.lifter, &Lifter::id);
        if (lifter == lifters.end())
            continue;
        const auto had = std::ranges::find(before, session.id, &LoggedSession::id);
        for (const SetEntry &set : session.sets) {
            const Variation *variation = find(roster.variations, set.variation);
            const bool isKnown =
                had != before.end() && std::ranges::find(had->sets, set) != had->sets.end();
            if (!variation || isKnown)
                continue;
            const auto estimate = estimates.find({lifter->id, variation->lift});
            const QString why = whyFarAboveMax(set, *variation, session.day,
                estimate == estimates.end() ? nullptr : &estimate->second, *lifter);
            if (!why.isEmpty())
                said << Text::tr("%1, %2: %3")
                            .arg(lifter->name,
                                QLocale().toString(session.day, QLocale::ShortFormat), why);
            if (said.size() == kMostFarLoads)
                return said;
        }
    }
    return said;
}

} // namespace core
