#pragma once

#include "core/domain/card.h"
#include "core/domain/lifter.h"
#include "core/domain/session.h"
#include "core/domain/variation.h"

#include <stdexcept>
#include <vector>

/// A small catalogue for the tests of planning, with the facts of the trade that these need (common
/// practice, no source).
namespace tests {

inline std::vector<core::Variation> benchCatalogue()
{
    using core::BodyArea;
    using core::Fatigue;
    using core::Lift;
    using core::Serves;
    std::vector<core::Variation> all;
    const auto add = [&all](const char *code, Serves serves, int low, int high, double ratio,
                         Fatigue fatigue) -> core::Variation & {
        core::Variation v;
        v.id = {qint64(all.size()) + 1};
        v.code = v.name = QString::fromLatin1(code);
        v.serves = serves;
        v.repsLow = low;
        v.repsHigh = high;
        v.ratio = ratio;
        v.ratioSpread = 0.03;
        v.fatigue = fatigue;
        all.push_back(v);
        return all.back();
    };
    add("comp", Serves::both, 1, 8, 1.0, Fatigue::moderate).competition = true;
    add("touch_and_go", Serves::both, 3, 10, 1.02, Fatigue::moderate);
    add("off_chest_pause", Serves::soft, 1, 3, 1.0, Fatigue::moderate).tempo = {0, 2, 0};
    add("tempo_4_2_0", Serves::soft, 1, 3, 0.92, Fatigue::high).tempo = {4, 2, 0};
    add("feet_up", Serves::both, 1, 12, 0.95, Fatigue::low).spares = {
        BodyArea::back, BodyArea::legs};
    add("long_pause", Serves::sinking, 1, 5, 0.96, Fatigue::moderate).tempo = {0, 3, 0};
    add("close_grip", Serves::both, 3, 10, 0.95, Fatigue::moderate);
    add("board", Serves::both, 1, 5, 1.06, Fatigue::moderate).spares = {BodyArea::shoulders};
    add("squat", Serves::both, 1, 8, 1.0, Fatigue::high).lift = Lift::squat;
    all.back().competition = true;
    add("deadlift", Serves::both, 1, 6, 1.0, Fatigue::high).lift = Lift::deadlift;
    all.back().competition = true;
    return all;
}

inline core::VariationId idOf(const std::vector<core::Variation> &catalogue, const char *code)
{
    for (const core::Variation &v : catalogue)
        if (v.code == QLatin1String(code))
            return v.id;
    throw std::invalid_argument(code);
}

inline core::SetEntry setOf(
    core::VariationId variation, double loadKg, int reps, std::optional<double> rpe = std::nullopt)
{
    core::SetEntry set;
    set.variation = variation;
    set.loadKg = loadKg;
    set.repsDone = reps;
    set.rpe = rpe;
    return set;
}

inline core::LoggedSession sessionOf(QDate day, std::vector<core::SetEntry> sets)
{
    core::LoggedSession session;
    session.lifter = {1};
    session.day = day;
    session.sets = std::move(sets);
    return session;
}

inline core::Card cardOf(
    qint64 id, QDate day, int position, core::VariationId variation, const QString &setLine)
{
    return {{id}, {1}, day, position, variation, setLine, {}};
}

} // namespace tests
