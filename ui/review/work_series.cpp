#include "ui/review/work_series.h"

#include "core/plan/lift_estimate.h"

#include <algorithm>
#include <set>

namespace ui {

namespace {

int mondayOf(QDate day)
{
    return core::engineDay(day.addDays(1 - day.dayOfWeek()));
}

} // namespace

std::vector<WeekWork> weeklyWork(std::span<const core::LoggedSession> sessions,
    std::span<const core::Variation> variations, core::Lift lift)
{
    std::set<core::VariationId> ofLift;
    for (const core::Variation &variation : variations)
        if (variation.lift == lift)
            ofLift.insert(variation.id);

    std::map<int, WeekWork> worked;
    for (const core::LoggedSession &session : sessions)
        for (const core::SetEntry &set : session.sets) {
            if (!ofLift.contains(set.variation))
                continue;
            WeekWork &week = worked[mondayOf(session.day)];
            week.tonnageKg += set.loadKg * set.repsDone;
            week.lifts += set.repsDone;
            week.sets += 1;
            week.missed += set.failed;
        }

    std::vector<WeekWork> weeks;
    if (worked.empty())
        return weeks;
    for (int monday = worked.begin()->first; monday <= worked.rbegin()->first; monday += 7) {
        const auto week = worked.find(monday);
        weeks.push_back(week == worked.end() ? WeekWork{} : week->second);
        weeks.back().monday = monday;
    }
    return weeks;
}

double axisTonnage(double kg, core::Unit unit)
{
    return core::fromKg(kg, unit) / 1000.0;
}

QList<QPointF> barOutline(std::span<const WeekWork> weeks, core::Unit unit, double gap)
{
    QList<QPointF> outline;
    outline.reserve(qsizetype(weeks.size()) * 4);
    for (const WeekWork &week : weeks) {
        const double left = week.monday + gap;
        const double right = week.monday + 7.0 - gap;
        const double height = axisTonnage(week.tonnageKg, unit);
        outline << QPointF(left, 0.0) << QPointF(left, height) << QPointF(right, height)
                << QPointF(right, 0.0);
    }
    return outline;
}

} // namespace ui
