#pragma once

#include "core/domain/session.h"
#include "core/domain/units.h"
#include "core/domain/variation.h"
#include "ui/charts/plot_map.h"

#include <QRectF>
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

/// Bars that stand on zero, one a week with work, in whole pixels so that their edges are sharp.
/// Wide ones leave a gap between each other.
/// @param map  whose values are axisTonnage(); weeks outside its time are left out
[[nodiscard]] std::vector<QRectF> barsOf(
    std::span<const WeekWork> weeks, core::Unit unit, const PlotMap &map);

} // namespace ui
