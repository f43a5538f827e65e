#include "core/plan/training_history.h"

namespace core {

QDate mondayOf(QDate day)
{
    return day.addDays(1 - day.dayOfWeek());
}

std::vector<WeekLoad> weeksBefore(QDate monday, int weeks, std::span<const LoggedSession> sessions,
    std::span<const Variation> catalogue, Lift lift)
{
    std::vector<WeekLoad> loads;
    for (int back = weeks; back > 0; --back)
        loads.push_back({monday.addDays(-7 * back), 0, 0, 0.0});
    for (const LoggedSession &session : sessions) {
        const qint64 daysBefore = session.day.daysTo(monday);
        if (daysBefore < 1 || daysBefore > 7 * weeks)
            continue;
        WeekLoad &week = loads[size_t(weeks - 1 - (daysBefore - 1) / 7)];
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

const Variation *find(std::span<const Variation> catalogue, VariationId id)
{
    const auto it = std::find_if(
        catalogue.begin(), catalogue.end(), [id](const Variation &v) { return v.id == id; });
    return it == catalogue.end() ? nullptr : &*it;
}

const Variation *competitionOf(std::span<const Variation> catalogue, Lift lift)
{
    const auto it = std::find_if(catalogue.begin(), catalogue.end(),
        [lift](const Variation &v) { return v.lift == lift && v.competition; });
    return it == catalogue.end() ? nullptr : &*it;
}

} // namespace core
