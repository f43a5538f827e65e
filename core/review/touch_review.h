#pragma once

#include "core/domain/edit.h"
#include "core/loads/lift_estimate.h"
#include "core/strength/touch_hold.h"

#include <QString>
#include <map>
#include <optional>
#include <span>
#include <vector>

/// The touch on the chest, from the log to words.
namespace core {

/// Touch scores of a lifter with the share of that day's estimated max of the variation, by what
/// was known then; in the first week by what is known now.
/// @param only  of this variation; empty = of all of the lift
[[nodiscard]] std::vector<strength::TouchReading> touchReadings(
    const LiftEstimate &lift, std::optional<VariationId> only = {});

/// "holds to 87 % (84 to 90) of the max", or why nothing can be said and what would help.
/// @param wanted  the hardest score that is as wanted
[[nodiscard]] QString words(const strength::TouchHold &hold, int wanted);

struct TouchSuggestion
{
    std::optional<TouchStyle> style; ///< empty = the scores do not say
    QString why;                     ///< one sentence or two
};

/// Which touch style the scores speak for. Soft: a light touch is kept to 85 % and more, by the low
/// end of its interval. Sinking: the bar sinks from 80 % or less on, by the high end. Undecided
/// in between (common practice, no source). Never more than a suggestion: the coach has the lifter
/// in sight.
[[nodiscard]] TouchSuggestion suggestTouchStyle(std::span<const strength::TouchReading> readings,
    const strength::TouchRoster &roster, QDate day);

/// What confirming does: one lifter row. Empty where nothing changes.
[[nodiscard]] Edit confirmTouchStyle(const Lifter &lifter, TouchStyle style);

} // namespace core
