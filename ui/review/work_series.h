#pragma once

#include "core/domain/session.h"
#include "core/domain/units.h"
#include "core/domain/variation.h"

#include <QList>
#include <QPointF>
#include <span>
#include <vector>

/// What the work chart shows, as values.
namespace ui {

/// The work of one week in one lift.
struct WeekWork
{
    double monday = 0.0;    ///< days since 1970-01-01
    double tonnageKg = 0.0; ///< sum of load times reps done
    int lifts = 0;          ///< reps done; missed ones do not count (common practice, no source)
    int sets = 0;
    int missed = 0; ///< sets that ended in a missed rep

    friend bool operator==(const WeekWork &, const WeekWork &) = default;
};

/// Week by week without gaps from the first to the last week with a set of the lift; weeks off are
/// zero. Empty without sets.
[[nodiscard]] std::vector<WeekWork> weeklyWork(std::span<const core::LoggedSession> sessions,
    std::span<const core::Variation> variations, core::Lift lift);

/// Tonnage for the axis: tonnes for a kg lifter, thousands of pounds for a lb lifter.
[[nodiscard]] double axisTonnage(double kg, core::Unit unit);

/// The outline of bars that stand on zero, each over its week, as one line.
/// @param gap  days left free on each side of a bar, 0 to 3; without gaps the bars grow together
/// @return x in days, y as axisTonnage()
[[nodiscard]] QList<QPointF> barOutline(
    std::span<const WeekWork> weeks, core::Unit unit, double gap);

} // namespace ui
