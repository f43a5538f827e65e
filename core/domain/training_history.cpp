#include "core/domain/training_history.h"

#include "core/domain/week.h"

#include <map>

namespace core {

namespace {

void add(
    WeekLoad &week, const LoggedSession &session, std::span<const Variation> catalogue, Lift lift)
{
    for (const SetEntry &set : session.sets)
        if (const Variation *variation = find(catalogue, set.variation);
            variation && countsFor(*variation, lift))
            week.add(set);
}

} // namespace

void WeekLoad::add(const SetEntry &set)
{
    ++sets;
    lifts += set.repsDone;
    tonnageKg += core::tonnageKg(set);
    missed += set.failed ? 1 : 0;
}

std::vector<WeekLoad> weekLoads(
    std::span<const LoggedSession> sessions, std::span<const Variation> catalogue, Lift lift)
{
    std::map<QDate, WeekLoad> trained;
    for (const LoggedSession &session : sessions)
        add(trained[mondayOf(session.day)], session, catalogue, lift);
    std::erase_if(trained, [](const auto &week) { return week.second.sets == 0; });
    std::vector<WeekLoad> weeks;
    if (trained.empty())
        return weeks;
    for (QDate monday = trained.begin()->first; monday <= trained.rbegin()->first;
         monday = monday.addDays(kWeekDays)) {
        weeks.push_back(trained[monday]);
        weeks.back().monday = monday;
    }
    return weeks;
}

std::vector<WeekLoad> weeksBefore(QDate monday, int weeks, std::span<const LoggedSession> sessions,
    std::span<const Variation> catalogue, Lift lift)
{
    std::vector<WeekLoad> loads;
    for (int back = weeks; back > 0; --back)
        loads.push_back({monday.addDays(-kWeekDays * back)});
    for (const LoggedSession &session : sessions) {
        const qint64 daysBefore = session.day.daysTo(monday);
        if (daysBefore < 1 || daysBefore > kWeekDays * weeks)
            continue;
        add(loads[size_t(weeks - 1 - (daysBefore - 1) / kWeekDays)], session, catalogue, lift);
    }
    return loads;
}

std::optional<QDate> lastDone(
    VariationId variation, QDate day, std::span<const LoggedSession> sessions)
{
    std::optional<QDate> last;
    for (const LoggedSession &session : sessions) {
        if (session.day >= day || (last && session.day <= *last))
            continue;
        for (const SetEntry &set : session.sets)
            if (set.variation == variation || (set.lead && set.lead->variation == variation)) {
                last = session.day;
                break;
            }
    }
    return last;
}

} // namespace core
