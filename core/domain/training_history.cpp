#include "core/domain/training_history.h"

#include "core/domain/week.h"

namespace core {

std::vector<WeekLoad> weeksBefore(QDate monday, int weeks, std::span<const LoggedSession> sessions,
    std::span<const Variation> catalogue, Lift lift)
{
    std::vector<WeekLoad> loads;
    for (int back = weeks; back > 0; --back)
        loads.push_back({monday.addDays(-kWeekDays * back), 0, 0, 0.0});
    for (const LoggedSession &session : sessions) {
        const qint64 daysBefore = session.day.daysTo(monday);
        if (daysBefore < 1 || daysBefore > kWeekDays * weeks)
            continue;
        WeekLoad &week = loads[size_t(weeks - 1 - (daysBefore - 1) / kWeekDays)];
        for (const SetEntry &set : session.sets) {
            const Variation *variation = find(catalogue, set.variation);
            if (!variation || variation->lift != lift)
                continue;
            ++week.sets;
            week.lifts += set.repsDone;
            week.tonnageKg += set.loadKg * set.repsDone;
        }
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
