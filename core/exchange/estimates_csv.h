#pragma once

#include "core/domain/lifter.h"
#include "core/loads/lift_estimate.h"

#include <QByteArray>
#include <QStringList>

namespace core {

/// Names of all columns.
[[nodiscard]] QStringList estimatesColumns();

/// Estimated bench-press maxima as a file, one line a lifter, a view and a week:
///
///     lifter,date,view,estimate_kg,low90_kg,high90_kg
///
/// `date` is the Sunday that ends the week, `view` is `filtered` (what was known then) or
/// `smoothed` (what is known now), loads are in kg to 10 g with the ends of the 90 % interval.
/// A lifter without a set of late has one line more in each view: the last Sunday up to the day
/// that the estimates are of. Lifters in the order given; one without a bench-press set has no
/// line.
[[nodiscard]] QByteArray writeEstimates(const std::vector<Lifter> &lifters,
    const std::map<std::pair<LifterId, Lift>, LiftEstimate> &estimates);

} // namespace core
