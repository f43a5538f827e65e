#pragma once

#include "core/domain/lifter.h"
#include "core/domain/variation.h"
#include "ui/log/log_lines.h"

/// Lifters who share a rack, in words.
namespace ui {

struct RackSeat
{
    QString name;
    core::Unit unit = core::Unit::kilogram;
    core::Gear gear;
    std::vector<double> loadsKg; ///< of the sets left, in order, on a rack
    bool hasOpenLoads = false;   ///< sets from the first one without a load on are not among them

    friend bool operator==(const RackSeat &, const RackSeat &) = default;
};

/// Whether such sets need a rack: all but the deadlift's.
[[nodiscard]] bool isOnRack(
    core::VariationId variation, const std::vector<core::Variation> &catalogue);

[[nodiscard]] RackSeat rackSeat(const core::Lifter &lifter, const std::vector<LogLine> &lines,
    const std::vector<core::DaySet> &planned, const std::vector<core::Variation> &catalogue);

/// The order with the fewest plate changes, and what it saves against taking turns; or why there is
/// none.
/// @param onBarKg  see core::fewestPlates()
[[nodiscard]] QString rackWords(int rack, const std::vector<RackSeat> &seats, double onBarKg);

} // namespace ui
