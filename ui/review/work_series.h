#pragma once

#include "core/domain/training_history.h"
#include "core/domain/units.h"
#include "ui/charts/plot_map.h"

#include <QRectF>
#include <span>
#include <vector>

/// What the work chart shows, as values.
namespace ui {

/// Tonnage for the axis: tonnes for a kg lifter, thousands of pounds for a lb lifter.
[[nodiscard]] double axisTonnage(double kg, core::Unit unit);

/// Bars that stand on zero, one a week with work, in whole pixels so that their edges are sharp.
/// Wide ones leave a gap between each other.
/// @param map  whose values are axisTonnage(); weeks outside its time are left out
[[nodiscard]] std::vector<QRectF> barsOf(
    std::span<const core::WeekLoad> weeks, core::Unit unit, const PlotMap &map);

} // namespace ui
