#include "tests/ui/review/sample_season.h"

#include <cmath>

namespace sample {

namespace {

core::Variation variation(core::VariationId id, const char *name, core::Serves serves, double ratio)
{
    core::Variation v;
    v.id = id;
    v.code = QStringLiteral("v%1").arg(id.value);
    v.name = QString::fromUtf8(name);
    v.serves = serves;
    v.ratio = ratio;
    v.competition = id == kCompetition;
    return v;
}

core::SetEntry set(
    core::VariationId id, double loadKg, int reps, std::optional<double> rpe, bool failed = false)
{
    core::SetEntry entry;
    entry.variation = id;
    entry.loadKg = std::round(loadKg / 2.5) * 2.5;
    entry.repsDone = reps;
    entry.rpe = rpe;
    entry.failed = failed;
    return entry;
}

} // namespace

std::vector<core::Variation> catalogue()
{
    return {variation(kCompetition, "Competition bench", core::Serves::both, 1.0),
        variation(kOffChest, "Off-chest pause bench", core::Serves::soft, 1.0),
        variation(kSink, "Long pause bench", core::Serves::sinking, 0.95),
        variation(kFeetUp, "Feet-up bench", core::Serves::both, 0.92)};
}

Season season(QDate lastSunday, int weeks, double startKg, double risePerWeek)
{
    Season made;
    core::LiftEstimate &lift = made.lift;
    for (const core::Variation &v : catalogue()) {
        lift.rows.push_back(v.id);
        lift.priors.push_back({v.ratio, v.competition ? 0.0 : 0.04, 1.0});
        strength::VariationEstimate estimate;
        estimate.ratio = {v.ratio, v.ratio * 0.97, v.ratio * 1.03};
        lift.estimate.variations.push_back(estimate);
    }
    lift.estimate.standing = strength::Standing::enough;
    lift.estimate.curve = {0.0405, 0.9};
    for (int w = 0; w < weeks; ++w) {
        const QDate sunday = lastSunday.addDays(-7 * (weeks - 1 - w));
        const double max = startKg + risePerWeek * w;
        const double then = max * (1.0 + 0.01 * std::sin(w));
        lift.estimate.weeks.push_back({core::engineDay(sunday), {then, then * 0.97, then * 1.03},
            {max, max * 0.98, max * 1.02}, 6});
        const double form = 1.0 + 0.015 * std::sin(w * 2.3);
        core::LoggedSession session;
        session.id = core::SessionId{w + 1};
        session.day = sunday.addDays(-4);
        session.sets = {set(kCompetition, max * form * 0.86, 3, 8.0),
            set(kOffChest, max * form * 0.86, 3, 8.0), set(kSink, max * form * 0.80, 3, 8.5),
            set(kFeetUp, max * form * 0.72, 5, 7.5), set(kCompetition, max * form * 0.75, 5, {}),
            set(kCompetition, max * form * 0.97, w % 4 == 0 ? 1 : 2, 9.0, w % 4 == 0)};
        made.sessions.push_back(session);
        lift.readings.push_back(session);
    }
    return made;
}

} // namespace sample
