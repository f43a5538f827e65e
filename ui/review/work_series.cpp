#include "ui/review/work_series.h"

#include "core/loads/lift_estimate.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace ui {

namespace {

constexpr double kWeek = 7.0;
constexpr double kNarrow = 5.0;   ///< a bar of less has no gap, px
constexpr double kGapShare = 0.1; ///< of a bar's width, on each side

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

std::vector<QRectF> barsOf(std::span<const WeekWork> weeks, core::Unit unit, const PlotMap &map)
{
    std::vector<QRectF> bars;
    for (const WeekWork &week : weeks) {
        const double height = axisTonnage(week.tonnageKg, unit);
        if (height <= 0.0 || week.monday >= map.time.to || week.monday + kWeek <= map.time.from)
            continue;
        const double left = std::round(map.xOf(week.monday));
        const double width = std::round(map.xOf(week.monday + kWeek)) - left;
        const double gap = width < kNarrow ? 0.0 : std::round(width * kGapShare);
        const double top = std::round(map.yOf(height));
        bars.emplace_back(
            left + gap, top, std::max(1.0, width - 2.0 * gap), std::round(map.plot.bottom()) - top);
    }
    return bars;
}

} // namespace ui
