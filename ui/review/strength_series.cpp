#include "ui/review/strength_series.h"

#include "core/loads/implied_max.h"

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

ReadingKind kindOf(const core::SetEntry &set, const core::Variation &variation)
{
    if (set.failed)
        return ReadingKind::missed;
    if (!set.rpe)
        return ReadingKind::unrated;
    if (variation.competition)
        return ReadingKind::competition;
    switch (variation.serves) {
    case core::Serves::soft:
        return ReadingKind::soft;
    case core::Serves::sinking:
        return ReadingKind::sinking;
    case core::Serves::both:
        break;
    }
    return ReadingKind::both;
}

WeekPoint pointOf(const strength::WeekEstimate &week, Knowledge knowledge, core::Unit unit)
{
    const strength::Band &band = knowledge == Knowledge::now ? week.smoothed : week.filtered;
    return {double(week.sunday), core::fromKg(band.kg, unit), core::fromKg(band.low90, unit),
        core::fromKg(band.high90, unit), week.sets};
}

} // namespace

StrengthSeries strengthSeries(const core::LiftEstimate &lift,
    std::span<const core::Variation> variations, Knowledge knowledge, core::Unit unit)
{
    StrengthSeries series;
    series.weeks.reserve(lift.estimate.weeks.size());
    for (const strength::WeekEstimate &week : lift.estimate.weeks)
        series.weeks.push_back(pointOf(week, knowledge, unit));

    std::map<core::VariationId, const core::Variation *> byId;
    for (const core::Variation &variation : variations)
        byId.emplace(variation.id, &variation);
    for (int s = 0; s < int(lift.readings.size()); ++s) {
        const core::LoggedSession &session = lift.readings[size_t(s)];
        for (int i = 0; i < int(session.sets.size()); ++i) {
            const core::SetEntry &set = session.sets[size_t(i)];
            const int row = lift.rowOf(set.variation);
            const auto variation = byId.find(set.variation);
            if (row < 0 || size_t(row) >= lift.estimate.variations.size()
                || variation == byId.end())
                continue;
            series.readings.push_back({double(core::engineDay(session.day)),
                core::fromKg(core::impliedMaxKg(lift, set, row, i), unit),
                kindOf(set, *variation->second), s, i});
        }
    }
    std::stable_sort(series.readings.begin(), series.readings.end(),
        [](const ReadingPoint &a, const ReadingPoint &b) { return a.day < b.day; });
    return series;
}

} // namespace ui
