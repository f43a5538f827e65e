#include "core/review/week_measures.h"

#include "core/domain/week.h"
#include "core/loads/implied_max.h"
#include "core/loads/resolve.h"
#include "core/strength/load_metrics.h"

#include <algorithm>
#include <map>

namespace core {

namespace {

struct Gathered
{
    WeekMeasures measures;
    std::array<double, kWeekDays> dailyKg{};
    double maxSum = 0.0; ///< reps x max
    double maxKg = 0.0;  ///< tonnage of the sets with a known max
};

void add(Gathered &week, const LoggedSession &session, const LiftEstimate &lift,
    std::span<const Variation> catalogue)
{
    const std::optional<double> max = knownMaxKg(lift, session.day);
    for (const SetEntry &set : session.sets) {
        const Variation *variation = find(catalogue, set.variation);
        const int row = lift.rowOf(set.variation);
        if (!variation || row < 0)
            continue;
        WeekMeasures &measures = week.measures;
        const double tonnage = tonnageKg(set);
        measures.done.add(set);
        measures.tensionSeconds += set.repsDone * secondsUnderTension(*variation);
        week.dailyKg[size_t(session.day.dayOfWeek() - 1)] += tonnage;
        if (max && size_t(row) < lift.estimate.variations.size()) {
            const double ratio = lift.estimate.variations[size_t(row)].ratio.value;
            measures.zones[zoneOf(set.loadKg / (*max * ratio))] += set.repsDone;
            week.maxSum += set.repsDone * *max;
            week.maxKg += tonnage;
        }
    }
}

} // namespace

size_t zoneOf(double share)
{
    return size_t(
        std::upper_bound(kZoneBounds.begin(), kZoneBounds.end(), share) - kZoneBounds.begin());
}

double secondsUnderTension(const Variation &variation)
{
    constexpr double kLowering = 2.0, kLifting = 1.0;
    const Tempo &tempo = variation.tempo;
    return (tempo.lowering > 0 ? tempo.lowering : kLowering) + tempo.pause
        + (tempo.lifting > 0 ? tempo.lifting : kLifting);
}

std::vector<WeekMeasures> weekMeasures(
    const LiftEstimate &lift, std::span<const Variation> catalogue, std::span<const Card> cards)
{
    std::map<QDate, Gathered> weeks;
    for (const LoggedSession &session : lift.readings)
        add(weeks[mondayOf(session.day)], session, lift, catalogue);
    for (const Card &card : cards)
        if (lift.rowOf(card.variation) >= 0)
            weeks[mondayOf(card.day)].measures.plannedLifts +=
                liftCount(parseSetLines(card.setLine).lines);

    std::vector<WeekMeasures> result;
    if (weeks.empty())
        return result;
    for (QDate monday = weeks.begin()->first; monday <= weeks.rbegin()->first;
         monday = monday.addDays(kWeekDays)) {
        const auto found = weeks.find(monday);
        Gathered week = found == weeks.end() ? Gathered{} : found->second;
        week.measures.done.monday = monday;
        if (week.maxSum > 0.0)
            week.measures.averageIntensity = week.maxKg / week.maxSum;
        week.measures.monotony = strength::monotony(week.dailyKg);
        week.measures.strain = strength::strain(week.dailyKg);
        result.push_back(week.measures);
    }
    return result;
}

} // namespace core
