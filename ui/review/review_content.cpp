#include "ui/review/review_content.h"

#include "core/domain/week.h"
#include "core/loads/lift_estimate.h"
#include "ui/look/text.h"

#include <algorithm>
#include <cmath>

namespace ui {

namespace {
constexpr double kMargin = 4.0;      ///< days left free at both ends of the log
constexpr double kMeetAhead = 120.0; ///< a meet further off would squeeze the log, days
} // namespace

Season seasonOf(const core::Lifter &lifter, std::span<const core::Block> blocks)
{
    Season season;
    if (lifter.meetDate)
        season.meets.push_back({double(core::engineDay(*lifter.meetDate)), Text::tr("Meet")});
    for (const core::Block &block : blocks)
        season.blocks.push_back({double(core::engineDay(block.start)),
            double(core::engineDay(block.end()) + 1), block.name});
    return season;
}

TimeSpan boundsOf(
    const StrengthSeries &series, std::span<const core::WeekLoad> work, const Season &season)
{
    double from = HUGE_VAL, to = -HUGE_VAL;
    const auto include = [&](double day) {
        from = std::min(from, day);
        to = std::max(to, day);
    };
    for (const WeekPoint &week : series.weeks)
        include(week.day);
    for (const core::WeekLoad &week : work) {
        include(core::engineDay(week.monday));
        include(core::engineDay(week.monday) + core::kWeekDays);
    }
    for (const Season::Day &meet : season.meets)
        if (meet.day - to < kMeetAhead)
            to = std::max(to, meet.day);
    return {from - kMargin, to + kMargin};
}

} // namespace ui
