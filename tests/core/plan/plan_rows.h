#pragma once

#include "core/csv/catalogue_csv.h"
#include "core/domain/card.h"
#include "core/domain/session.h"

#include <stdexcept>
#include <vector>

/// What the tests of planning share: codes of the built-in catalogue, and sets and cards in a line.
/// The catalogue is a resource, so it must not be asked for before main().
namespace tests {

inline core::VariationId idOf(const char *code)
{
    for (const core::Variation &v : core::builtInCatalogue())
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
